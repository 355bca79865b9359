/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "entry.h"

#include <string.h>

#include "base/utf8.h"
#include "likely.h"
#include "said.h"

static void note(const lw_entry *entry, lw_fault_slug slug, const char *wanted, lw_faults *faults) {
  char name[LW_ITEM_NAME_MAX];
  lw_named_print(&(lw_named){entry->item, entry->number, entry->likely}, name, sizeof name);
  lw_faults_add(faults, slug, (lw_cell_place){entry->row, entry->column}, name, entry->value, "%s", wanted);
}

static void store_said(const lw_entry *entry, lw_said_kind kind, double si, lw_case *c, lw_faults *faults) {
  char wanted[80];
  if (entry->likely || lw_said_note(entry, kind, si, c)) return;
  lw_print(wanted, sizeof wanted, "at most %d such answers; leave the other items out", LW_SAID_MAX);
  note(entry, LW_FAULT_TOO_MANY, wanted, faults);
}

/* The value behind `more than`; LW_FAULT_NOT_A_NUMBER where the item takes no such words. */
static lw_fault_slug measure_bound(const lw_entry *entry, lw_bound_word *bound, lw_measured *measured,
                                   char *wanted, size_t size) {
  size_t before = 0;
  lw_entry bare = *entry;
  *bound = lw_says_bound(entry->value, &before);
  bare.value += before;
  bare.length -= before;
  if (*bound == LW_BOUND_NONE || (entry->item->near_is_grave && !entry->likely))
    return lw_measure(&bare, measured, wanted, size);
  lw_print(wanted, size, "a number with its unit, as in %s, or: not known; only a distance may be %s",
           entry->item->example, "`more than 3 m` or `less than 3 m`");
  return LW_FAULT_NOT_A_NUMBER;
}

static void store_quantity(const lw_entry *entry, lw_case *c, lw_faults *faults) {
  lw_measured measured;
  lw_bound_word bound;
  char wanted[160];
  lw_fault_slug slug = measure_bound(entry, &bound, &measured, wanted, sizeof wanted);
  if (slug != LW_FAULT_SLUG_COUNT) {
    note(entry, slug, wanted, faults);
    return;
  }
  if (bound == LW_BOUND_LESS) {
    store_said(entry, LW_SAID_LESS, measured.si, c, faults);
    return;
  }
  int of = bound == LW_BOUND_MORE ? LW_MORE_THAN : -1;
  const lw_quantity q = {measured.si, LW_GIVEN, measured.kind, entry->row, entry->column, of, measured.in};
  if (!entry->likely) {
    *lw_item_quantity(entry->item, entry->number, c) = q;
  } else if (lw_item_set_likely(entry->item, entry->number, &q, c) != LW_OK) {
    lw_print(wanted, sizeof wanted, "at most %d likely values", LW_LIKELY_MAX);
    note(entry, LW_FAULT_TOO_MANY, wanted, faults);
  }
}

static void store_choice(const lw_entry *entry, lw_case *c, lw_faults *faults) {
  char folded[LW_FOLDED_MAX];
  lw_fold(entry->value, entry->length, folded);
  int value = lw_item_word_value(entry->item, folded);
  if (value < 0) {
    char words[128];
    char wanted[160];
    lw_item_list_words(entry->item, words, sizeof words);
    lw_print(wanted, sizeof wanted, "one of: %s", words);
    note(entry, LW_FAULT_UNKNOWN_WORD, wanted, faults);
    return;
  }
  *lw_item_choice(entry->item, entry->number, c) = (lw_choice){value, LW_GIVEN, entry->row, entry->column};
}

static void store_words(const lw_entry *entry, lw_case *c, lw_faults *faults) {
  lw_words *words = lw_item_words(entry->item, entry->number, c);
  if (entry->length >= sizeof words->text) {
    char wanted[64];
    lw_print(wanted, sizeof wanted, "at most %d bytes", LW_WORDS_MAX - 1);
    note(entry, LW_FAULT_CELL_TOO_LONG, wanted, faults);
    return;
  }
  memcpy(words->text, entry->value, entry->length + 1);
  lw_utf8_tame_ascii(words->text, ' ');
  words->origin = LW_GIVEN;
  words->row = entry->row;
  words->column = entry->column;
}

void lw_entry_store(const lw_entry *entry, lw_case *c, lw_faults *faults) {
  if (entry->length == 0) {
    char wanted[160];
    lw_print(wanted, sizeof wanted, "a value, as in %s; or the item left out", entry->item->example);
    note(entry, LW_FAULT_NO_VALUE, wanted, faults);
  } else if (lw_says_not_known(entry->value, entry->length)) {
    store_said(entry, LW_SAID_NOT_KNOWN, 0.0, c, faults);
  } else if (entry->item->type == LW_ITEM_QUANTITY) {
    store_quantity(entry, c, faults);
  } else if (entry->item->type == LW_ITEM_CHOICE) {
    store_choice(entry, c, faults);
  } else {
    store_words(entry, c, faults);
  }
}

bool lw_entry_given(const lw_item *item, int number, lw_case *c, int *row) {
  lw_origin origin;
  if (item->type == LW_ITEM_QUANTITY) {
    const lw_quantity *q = lw_item_quantity(item, number, c);
    origin = q->origin;
    *row = q->row;
  } else if (item->type == LW_ITEM_CHOICE) {
    const lw_choice *choice = lw_item_choice(item, number, c);
    origin = choice->origin;
    *row = choice->row;
  } else {
    const lw_words *words = lw_item_words(item, number, c);
    origin = words->origin;
    *row = words->row;
  }
  return origin == LW_GIVEN && *row != LW_WORKED_OUT_ROW;
}

/* Why a name is none. */
static void unknown(const char *name, size_t length, lw_cell_place at, lw_faults *faults) {
  char stood[80];
  char nearest[160];
  size_t stem = lw_likely_stem(name, length);
  lw_print(stood, sizeof stood, "%.*s", (int)(stem < 79 ? stem : 79), name);
  /* A search through all items: not for one that is told no more. */
  bool near = faults->count < LW_FAULT_MAX && lw_item_nearest(stood, nearest, sizeof nearest);
  lw_print(stood, sizeof stood, "%.*s", (int)(length < 79 ? length : 79), name);
  lw_faults_add(faults, LW_FAULT_UNKNOWN_ITEM, at, "", stood, near ? "an item; %s" : "%s",
                near ? nearest : "an item that `lowwall list items` has");
}

bool lw_entry_item(const char *name, size_t length, lw_cell_place at, lw_named *named, lw_faults *faults) {
  size_t stem = lw_likely_stem(name, length);
  char stood[80];
  *named = (lw_named){.likely = stem < length};
  named->item = lw_item_find(name, stem, &named->number);
  lw_print(stood, sizeof stood, "%.*s", (int)(length < 79 ? length : 79), name);
  if (named->item == NULL) {
    unknown(name, length, at, faults);
  } else if (named->number > named->item->repeats) {
    lw_faults_add(faults, LW_FAULT_TOO_MANY, at, "", stood, "a number from 1 to %d", named->item->repeats);
  } else if (named->likely && named->item->type != LW_ITEM_QUANTITY) {
    lw_faults_add(faults, LW_FAULT_UNKNOWN_ITEM, at, "", stood,
                  "the item without `likely`: only what is measured has a likely value beside it");
  } else if (named->likely && !lw_likely_is_read(named->item)) {
    lw_faults_add(faults, LW_FAULT_UNKNOWN_ITEM, at, "", stood,
                  "the item without `likely`: no check reads it, so nothing would come of a likely value");
  } else {
    return true;
  }
  return false;
}

bool lw_named_given(const lw_named *named, lw_case *c, int *row) {
  if (!named->likely) return lw_entry_given(named->item, named->number, c, row);
  const lw_quantity *q = lw_item_likely(named->item, named->number, c);
  *row = q != NULL ? q->row : 0;
  return q != NULL;
}

bool lw_named_told(const lw_named *named, lw_case *c, int *row) {
  if (lw_named_given(named, c, row)) return true;
  return !named->likely && lw_said_of(named->item, named->number, c) != NULL;
}

void lw_named_forget(const lw_named *named, lw_case *c) {
  if (named->likely) {
    lw_item_set_likely(named->item, named->number, &(lw_quantity){0}, c);
    return;
  }
  lw_entry_forget(named->item, named->number, c);
  lw_said_forget(named->item, named->number, c);
}

void lw_named_print(const lw_named *named, char *out, size_t size) {
  if (named->likely)
    lw_likely_print_name(named->item, named->number, out, size);
  else
    lw_item_print_name(named->item, named->number, out, size);
}

bool lw_entry_unit(const lw_item *item, const char *text, int row, int column, const lw_unit **unit,
                   lw_faults *faults) {
  char units[96] = "none: this item is a word";
  lw_fault_slug slug = LW_FAULT_WRONG_UNIT;
  *unit = NULL;
  if (text[0] == '\0') {
    return true;
  }
  if (item->type == LW_ITEM_QUANTITY) {
    *unit = lw_item_unit(item, text, strlen(text), &slug);
    lw_item_list_units(item, units, sizeof units);
  }
  if (*unit == NULL) {
    lw_faults_add(faults, slug, (lw_cell_place){row, column}, item->name, text, "one of the units %s", units);
  }
  return *unit != NULL;
}

void lw_entry_forget(const lw_item *item, int number, lw_case *c) {
  if (item->type == LW_ITEM_QUANTITY) {
    *lw_item_quantity(item, number, c) = (lw_quantity){0};
  } else if (item->type == LW_ITEM_CHOICE) {
    *lw_item_choice(item, number, c) = (lw_choice){0};
  } else {
    *lw_item_words(item, number, c) = (lw_words){0};
  }
}
