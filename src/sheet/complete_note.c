/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "complete_note.h"

#include <stdarg.h>
#include <string.h>

#include "tables/find.h"
#include "entry.h"
#include "faults.h"
#include "items.h"
#include "base/print.h"

lw_quantity lw_assumed(lw_kind kind, double si) {
  return (lw_quantity){.si = si, .origin = LW_ASSUMED, .kind = kind, .table_row = -1};
}

lw_quantity lw_from_table(lw_kind kind, double si, int table_row) {
  return (lw_quantity){.si = si, .origin = LW_TABLE, .kind = kind, .table_row = table_row};
}

lw_quantity lw_worked_out(lw_kind kind, double si, bool from_given) {
  lw_quantity q = lw_assumed(kind, si);
  q.origin = from_given ? LW_GIVEN : LW_ASSUMED;
  q.row = from_given ? LW_WORKED_OUT_ROW : 0;
  return q;
}

static size_t offset_of(const lw_completing *s, const void *where) {
  return (size_t)((const char *)where - (const char *)s->c);
}

static const lw_item *item_at_place(const lw_completing *s, const void *where, int *number) {
  return lw_item_at_offset(offset_of(s, where), number);
}

double lw_default(const lw_item_group *group, size_t offset) {
  int number;
  const lw_item *item = lw_item_in(group, offset, &number);
  return item != NULL ? item->assumed : NAN;
}

typedef struct place {
  int row, column;
  char stood[LW_WORDS_MAX];
} place;

static place place_of(const lw_completing *s, const lw_item *item, int number) {
  place p = {0, 0, ""};
  if (item->type == LW_ITEM_QUANTITY) {
    const lw_quantity *q = lw_item_quantity(item, number, s->c);
    if (q->origin != LW_ABSENT) {
      p = (place){q->row, q->column, ""};
      if (q->in == LW_UNITS_US && q->kind == item->kind)
        lw_print(p.stood, sizeof p.stood, "%s", lw_exactly(q->in, q->kind, q->si, "").text);
      else
        lw_item_say(item, q->si, p.stood, sizeof p.stood);
    }
  } else if (item->type == LW_ITEM_CHOICE) {
    const lw_choice *choice = lw_item_choice(item, number, s->c);
    if (choice->origin != LW_ABSENT) {
      p = (place){choice->row, choice->column, ""};
      lw_item_word(item, choice->value, p.stood, sizeof p.stood);
    }
  } else {
    const lw_words *words = lw_item_words(item, number, s->c);
    p = (place){words->row, words->column, ""};
    lw_print(p.stood, sizeof p.stood, "%.*s", LW_WORDS_MAX - 1, words->text);
  }
  p.row = p.row == LW_WORKED_OUT_ROW ? 0 : p.row;
  return p;
}

/* In the likely look the cell at fault is that of the likely value. */
static void print_name(const lw_completing *s, const lw_item *item, int number, char *out, size_t size) {
  bool quantity = s->c->look == LW_LOOK_LIKELY && item->type == LW_ITEM_QUANTITY;
  bool likely = quantity && lw_item_likely(item, number, s->c) != NULL;
  lw_named_print(&(lw_named){item, number, likely}, out, size);
}

void lw_complete_fault(lw_completing *s, lw_fault_slug slug, const void *where, const char *wanted_format,
                       ...) {
  int number;
  char name[LW_ITEM_NAME_MAX];
  char wanted[200];
  const lw_item *item = item_at_place(s, where, &number);
  if (item == NULL) {
    return;
  }
  print_name(s, item, number, name, sizeof name);
  va_list arguments;
  va_start(arguments, wanted_format);
  lw_print_list(wanted, sizeof wanted, wanted_format, arguments);
  va_end(arguments);
  place p = place_of(s, item, number);
  lw_faults_add(s->faults, slug, (lw_cell_place){p.row, p.column}, name, p.stood, "%s", wanted);
}

void lw_complete_unknown_row(lw_completing *s, const lw_words *words, const char *list) {
  const char *nearest = lw_tables_nearest(s->tables, list, words->text);
  lw_complete_fault(s, LW_FAULT_UNKNOWN_ROW, words,
                    nearest != NULL ? "a row of `lowwall list %s`; the nearest is \"%s\""
                                    : "a row of `lowwall list %s`%s",
                    list, nearest != NULL ? nearest : "");
}

/* Does this fault explain why the item is not there: it is the item's own, the item was misspelt, or the
 * sheet was not read to its end? */
static bool explains(const lw_fault *fault, const char *name) {
  if (fault->slug == LW_FAULT_UNKNOWN_ITEM) {
    char quoted[LW_ITEM_NAME_MAX + 2];
    lw_print(quoted, sizeof quoted, "\"%s\"", name);
    return strstr(fault->wanted, quoted) != NULL;
  }
  bool unread = fault->slug == LW_FAULT_EMPTY || fault->slug == LW_FAULT_HEADER ||
                fault->slug == LW_FAULT_QUOTING || fault->slug == LW_FAULT_UNREADABLE ||
                fault->slug == LW_FAULT_CELL_TOO_LONG || fault->slug == LW_FAULT_UTF16;
  return unread || strcmp(fault->item, name) == 0;
}

static bool has_fault(const lw_completing *s, const void *where) {
  int number;
  char name[LW_ITEM_NAME_MAX];
  const lw_item *item = where != NULL ? item_at_place(s, where, &number) : NULL;
  if (item == NULL) {
    return false;
  }
  lw_item_print_name(item, number, name, sizeof name);
  for (int i = 0; i < s->faults->count; i++) {
    if (explains(&s->faults->fault[i], name)) {
      return true;
    }
  }
  return false;
}

/* The one row that all given items share, as those of a schedule do; else 0. */
static int common_row(const lw_completing *s) {
  int common = 0;
  lw_item_walk walk = {0};
  for (const lw_item *item = lw_item_next(&walk); item != NULL; item = lw_item_next(&walk)) {
    for (int n = item->repeats > 0 ? 1 : 0; n <= item->repeats; n++) {
      int row;
      if (!lw_entry_given(item, n, s->c, &row) || row <= 0) {
        continue;
      }
      if (common > 0 && row != common) {
        return 0;
      }
      common = row;
    }
  }
  return common;
}

void lw_complete_missing(lw_completing *s, const void *where, const void *instead, const char *why) {
  int number;
  char name[LW_ITEM_NAME_MAX];
  if (has_fault(s, where) || has_fault(s, instead)) {
    return;
  }
  const lw_item *item = item_at_place(s, where, &number);
  lw_item_print_name(item, number, name, sizeof name);
  lw_faults_add(s->faults, LW_FAULT_MISSING_ITEM, (lw_cell_place){common_row(s), 0}, name, "", "%s, as in %s",
                why, item->example);
}

lw_amount lw_complete_exactly(const lw_completing *s, lw_kind kind, double si, const char *metric_unit) {
  return lw_exactly(lw_case_units(s->c), kind, si, metric_unit);
}

lw_amount lw_complete_weight(lw_units units, double kn_per_m3) {
  lw_amount weight;
  lw_print(weight.text, sizeof weight.text, "%.4g %s", lw_in_units(units, LW_KIND_UNIT_WEIGHT, kn_per_m3),
           lw_units_name(units, LW_KIND_UNIT_WEIGHT));
  return weight;
}
