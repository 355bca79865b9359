/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "entry.h"
#include "complete.h"
#include "likely.h"
#include "base/utf8.h"

/* A case need not come from a sheet: what a program put into it is held against the table of items too. */

/* A row of a table may say that there is no value by a 0, which no sheet may. */
static bool none_by_table(const lw_quantity *q) {
  return q->origin == LW_TABLE && fabs(q->si) < 1e-12;
}

static void hold_quantity(lw_completing *s, const lw_item *item, const lw_quantity *q) {
  char wanted[160];
  if (q->origin == LW_ABSENT || q->row == LW_WORKED_OUT_ROW) return;
  if (none_by_table(q) || lw_item_takes_value(item, q->kind, q->si)) return;
  lw_item_say_range(item, lw_case_units(s->c), wanted, sizeof wanted);
  lw_complete_fault(s, LW_FAULT_OUT_OF_RANGE, q, "%s", wanted);
}

static void hold_choice(lw_completing *s, const lw_item *item, const lw_choice *choice) {
  char words[128];
  if (choice->origin == LW_ABSENT || (choice->value >= 0 && choice->value < lw_item_word_count(item))) return;
  lw_item_list_words(item, words, sizeof words);
  lw_complete_fault(s, LW_FAULT_OUT_OF_RANGE, choice, "one of: %s", words);
}

/* As a sheet's words are: they end, and there is nothing in them to be tamed. */
static bool are_tame(const lw_words *words) {
  char tamed[LW_WORDS_MAX];
  const char *end = memchr(words->text, '\0', sizeof words->text);
  if (end == NULL) return false;
  if (lw_utf8_is_plain(words->text, (size_t)(end - words->text))) return true;
  memcpy(tamed, words->text, sizeof tamed);
  lw_utf8_tame(tamed);
  lw_utf8_tame_ascii(tamed, ' ');
  return strcmp(tamed, words->text) == 0;
}

static void hold_words(lw_completing *s, const lw_words *words) {
  if (words->origin == LW_ABSENT || are_tame(words)) return;
  lw_complete_fault(s, LW_FAULT_OUT_OF_RANGE, words, "at most %d bytes of UTF-8 without control characters",
                    LW_WORDS_MAX - 1);
}

static void hold(lw_completing *s, const lw_item *item, int number) {
  if (item->type == LW_ITEM_QUANTITY)
    hold_quantity(s, item, lw_item_quantity(item, number, s->c));
  else if (item->type == LW_ITEM_CHOICE)
    hold_choice(s, item, lw_item_choice(item, number, s->c));
  else
    hold_words(s, lw_item_words(item, number, s->c));
}

static void hold_all(lw_completing *s, bool of_order) {
  lw_item_walk walk = {0};
  for (const lw_item *item = lw_item_next(&walk); item != NULL; item = lw_item_next(&walk)) {
    if (lw_item_is_of_order(item) != of_order) continue;
    for (int n = item->repeats > 0 ? 1 : 0; n <= item->repeats; n++) hold(s, item, n);
  }
}

/* A list that a program put together may hold anything. */
static void hold_likely(lw_completing *s) {
  const lw_case_likely *likely = &s->c->likely;
  bool sound = likely->count >= 0 && likely->count <= LW_LIKELY_MAX;
  if (!sound)
    lw_faults_add(s->faults, LW_FAULT_TOO_MANY, (lw_cell_place){0}, "", "", "at most %d likely values",
                  LW_LIKELY_MAX);
  for (int i = 0; sound && i < likely->count; i++) {
    const lw_likely_value *one = &likely->value[i];
    lw_cell_place at = {one->value.row, one->value.column};
    char name[LW_ITEM_NAME_MAX] = "", stood[48] = "",
         wanted[160] = "the place of a quantity that a check reads";
    int number = 0;
    const lw_item *item = lw_item_at_offset(one->offset, &number);
    bool quantity = item != NULL && lw_likely_is_read(item);
    if (quantity && one->value.origin == LW_GIVEN &&
        lw_item_takes_value(item, one->value.kind, one->value.si))
      continue;
    if (quantity) {
      lw_likely_print_name(item, number, name, sizeof name);
      lw_item_say(item, one->value.si, stood, sizeof stood);
      lw_item_say_range(item, lw_case_units(s->c), wanted, sizeof wanted);
    }
    lw_faults_add(s->faults, LW_FAULT_OUT_OF_RANGE, at, name, stood, "%s", wanted);
  }
}

void lw_complete_ranges(lw_completing *s) {
  hold_all(s, false);
  hold_likely(s);
}

void lw_complete_ranges_of_order(lw_completing *s) {
  hold_all(s, true);
}
