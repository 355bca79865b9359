/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "measures.h"

#include <string.h>

#include "sheet/said.h"

/* Measures: as typed where they have a unit, else in the unit of the question. */

static const char *unit_of(const lw_put *put, int index, char *out, size_t size) {
  const char *list = put->asking->us ? put->question.row->us_units : put->question.row->units;
  lw_ask_part part = lw_ask_nth(list, ';', index);
  return lw_ask_copy(&part, out, size);
}

/* How it reads by itself; LW_FAULT_SLUG_COUNT: well. */
static lw_fault_slug reads(const lw_named *named, const char *typed, char *wanted, size_t size) {
  char name[LW_ITEM_NAME_MAX], argument[LW_ITEM_NAME_MAX + LW_ANSWER_BYTES + 1];
  lw_case c = {0};
  lw_faults faults = {.count = 0};
  lw_named_print(named, name, sizeof name);
  lw_print(argument, sizeof argument, "%s=%s", name, typed);
  if (lw_sheet_override(argument, 1, &c, &faults) == LW_OK) return LW_FAULT_SLUG_COUNT;
  lw_print(wanted, size, "%s", faults.fault[0].wanted);
  return faults.fault[0].slug;
}

/* The unit of the question behind a number without one: 0 is written with it, too. */
static bool complete(const lw_put *put, const lw_ask_walk *walk, char *typed, size_t size) {
  char unit[LW_NAME_MAX], wanted[200], with[LW_ANSWER_BYTES + LW_NAME_MAX];
  double number;
  unit_of(put, walk->index, unit, sizeof unit);
  bool bare = typed[strspn(typed, "0123456789.,+-/ ")] == '\0' && unit[0] != '\0';
  lw_print(with, sizeof with, "%s %s", typed, unit);
  if (bare || lw_number_read(typed, strlen(typed), &number))
    lw_print(typed, size, "%s", unit[0] ? with : typed);
  lw_fault_slug slug = reads(&walk->pair.named, typed, wanted, sizeof wanted);
  if (slug == LW_FAULT_NOT_A_NUMBER && unit[0])
    return lw_put_fault(put, slug, typed, "a number [%s], or one with another unit behind it", unit);
  return slug == LW_FAULT_SLUG_COUNT || lw_put_fault(put, slug, typed, "%s", wanted);
}

static bool known(const char *typed) {
  return typed[0] != '\0' && !lw_says_not_known(typed, strlen(typed));
}

/* The first measure of a question has to be known, unless not knowing answers it; for an order all. */
bool lw_measure_may_be_left(const lw_question_row *row, int index) {
  return row->not_known[0] != '\0' || (index > 0 && row->part != LW_QUESTION_ORDER);
}

static bool may_be_left(const lw_put *put, int index) {
  char words[LW_NOTE_MAX];
  const lw_ask_part label = lw_ask_nth(put->question.row->labels, ';', index);
  return lw_measure_may_be_left(put->question.row, index) ||
         lw_put_fault(put, LW_FAULT_NO_VALUE, "", "a measure, %.120s; or skip the question",
                      lw_ask_copy(&label, words, sizeof words));
}

/* As it goes onto the sheet: "not known", or with its unit. */
static bool read_one(const lw_put *put, const lw_ask_walk *walk, const lw_ask_part *part, char *typed,
                     size_t size) {
  if (part->length + LW_NAME_MAX >= size)
    return lw_put_fault(put, LW_FAULT_CELL_TOO_LONG, "", "a measure, as in %s",
                        walk->pair.named.item->example);
  lw_ask_copy(part, typed, size);
  if (known(typed)) return complete(put, walk, typed, size);
  lw_print(typed, size, "not known");
  return may_be_left(put, walk->index);
}

static bool put_one(const lw_put *put, const lw_ask_walk *walk, const char *answer) {
  char typed[LW_ANSWER_BYTES];
  const lw_ask_part part = lw_ask_nth(answer, ';', walk->index);
  if (!read_one(put, walk, &part, typed, sizeof typed)) return false;
  lw_answers_set(put->answers, &walk->pair.named, typed);
  return true;
}

bool lw_measure_try(const lw_asking_for *asking, int question, int measure, const char *answer,
                    lw_faults *faults) {
  const lw_put put = {
      .asking = asking, .question = lw_question_of(asking->tables, question), .faults = faults};
  const lw_ask_part part = {answer, strlen(answer)};
  char typed[LW_ANSWER_BYTES];
  bool well = true;
  for (lw_ask_walk walk = lw_ask_begin(put.question.row->items); well && lw_ask_step(&walk);)
    if (walk.index == measure) well = read_one(&put, &walk, &part, typed, sizeof typed);
  return well;
}

bool lw_put_measures(const lw_put *put, const char *answer) {
  int wanted = lw_ask_count(put->question.row->items, ';');
  bool well = true;
  if (lw_ask_count(answer, ';') > wanted)
    return lw_put_fault(put, LW_FAULT_TOO_MANY, answer, "%d measure%s, with ; between", wanted,
                        wanted == 1 ? "" : "s");
  for (lw_ask_walk walk = lw_ask_begin(put->question.row->items); well && lw_ask_step(&walk);)
    well = put_one(put, &walk, answer);
  for (int i = 0; well && i < put->question.choice_count; i++)
    lw_put_list(put, put->question.choice[i].writes);
  return well;
}
