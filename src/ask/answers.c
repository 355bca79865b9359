/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "answers.h"

#include <string.h>

#include "sheet/upright.h"
#include "parts.h"

/* Bytes kept in the text; where they begin. */
static unsigned keep(lw_answers *answers, const char *words) {
  unsigned at = (unsigned)answers->text.length;
  lw_text_add_bytes(&answers->text, words, strlen(words) + 1);
  return at;
}

static const char *words_at(const lw_answers *answers, size_t at) {
  return answers->text.failed || answers->text.data == NULL ? "" : answers->text.data + at;
}

static void take_row(void *context, const lw_upright_row *from) {
  lw_answers *answers = context;
  char value[LW_ANSWER_BYTES];
  if (answers->count == LW_ANSWERS_MAX) {
    answers->too_many = true;
    return;
  }
  lw_print(value, sizeof value, "%s", from->value);
  bool number = from->named != NULL && from->named->item->type == LW_ITEM_QUANTITY;
  char *comma = number && from->comma_is_decimal ? strchr(value, ',') : NULL;
  if (comma) *comma = '.';
  lw_answer_row *row = &answers->row[answers->count++];
  *row = (lw_answer_row){.value = keep(answers, value)};
  row->unit = keep(answers, from->unit);
  row->note = keep(answers, from->note);
  if (from->named) row->named = *from->named;
}

lw_status lw_answers_read(const char *sheet, size_t length, lw_answers *answers, lw_faults *faults) {
  *answers = (lw_answers){.count = 0};
  if (sheet == NULL || length == 0) return LW_OK;
  lw_status status = lw_upright_read(sheet, length, &answers->c, take_row, answers, faults);
  if (status == LW_OK && answers->too_many) {
    lw_faults_add(faults, LW_FAULT_TOO_MANY, (lw_cell_place){LW_ANSWERS_MAX + 2, 1}, "", "",
                  "at most %d rows", LW_ANSWERS_MAX);
    return LW_FAULTS;
  }
  return status == LW_OK && answers->text.failed ? LW_NO_MEMORY : status;
}

void lw_answers_free(lw_answers *answers) {
  lw_text_free(&answers->text);
}

static int find(const lw_answers *answers, const lw_named *named) {
  for (int i = 0; i < answers->count; i++)
    if (answers->row[i].named.item && lw_ask_same(&answers->row[i].named, named)) return i;
  return -1;
}

const char *lw_answers_value(const lw_answers *answers, const lw_named *named) {
  int at = find(answers, named);
  return at < 0 ? NULL : words_at(answers, answers->row[at].value);
}

const char *lw_answers_unit(const lw_answers *answers, const lw_named *named) {
  int at = find(answers, named);
  return at < 0 ? "" : words_at(answers, answers->row[at].unit);
}

/* "900 mm" is a number and its unit; "4 ft 6 in", "1:8" and "more than 3 m" stay in one cell. gives where the
 * unit begins, or NULL */
static const char *unit_in(const lw_item *item, const char *value) {
  double number;
  lw_fault_slug slug;
  const char *blank = strchr(value, ' ');
  if (item->type != LW_ITEM_QUANTITY || !blank) return NULL;
  const char *unit = blank + strspn(blank, " ");
  bool plain = lw_number_read(value, (size_t)(blank - value), &number) &&
               lw_item_unit(item, unit, strlen(unit), &slug) != NULL;
  return plain ? unit : NULL;
}

void lw_answers_set(lw_answers *answers, const lw_named *named, const char *value) {
  int at = find(answers, named);
  char number[LW_ANSWER_BYTES];
  const char *unit = unit_in(named->item, value);
  if (at < 0 && answers->count == LW_ANSWERS_MAX) {
    answers->text.failed = true;
    return;
  }
  if (at < 0) {
    at = answers->count++;
    answers->row[at] = (lw_answer_row){.named = *named, .note = keep(answers, "")};
  }
  size_t length = unit ? strcspn(value, " ") : strlen(value);
  lw_print(number, sizeof number, "%.*s", (int)length, value);
  answers->row[at].value = keep(answers, number);
  answers->row[at].unit = keep(answers, unit ? unit : "");
}

void lw_answers_drop(lw_answers *answers, const lw_named *named) {
  int at = find(answers, named);
  if (at < 0) return;
  answers->count--;
  for (int i = at; i < answers->count; i++) answers->row[i] = answers->row[i + 1];
}

static void add_cell(const char *cell, const char *end, lw_text *out) {
  bool plain = strpbrk(cell, ",;\"\t\r\n") == NULL && strchr(" ", cell[0]) == NULL;
  if (!plain && cell[0] != '\0') lw_text_add(out, "\"");
  for (const char *c = cell; *c != '\0'; c++)
    lw_text_add_bytes(out, *c == '"' ? "\"\"" : c, *c == '"' ? 2 : 1);
  if (!plain && cell[0] != '\0') lw_text_add(out, "\"");
  lw_text_add(out, end);
}

static void add_row(const lw_answers *answers, const lw_answer_row *row, lw_text *out) {
  char name[LW_ITEM_NAME_MAX] = "";
  if (row->named.item) lw_named_print(&row->named, name, sizeof name);
  add_cell(name, ",", out);
  add_cell(words_at(answers, row->value), ",", out);
  add_cell(words_at(answers, row->unit), ",", out);
  add_cell(words_at(answers, row->note), "\n", out);
}

static void add_named(const lw_answers *answers, const lw_item *item, int number, lw_text *out) {
  for (int likely = 0; likely < 2; likely++) {
    int at = find(answers, &(lw_named){item, number, likely == 1});
    if (at >= 0) add_row(answers, &answers->row[at], out);
  }
}

/* The last of the items that repeat together with this one, so that a soil stays in one piece. */
static size_t last_of_part(size_t first) {
  const lw_item *item = lw_item_at(first);
  size_t last = first;
  while (lw_item_at(last + 1) && lw_item_at(last + 1)->repeats == item->repeats &&
         lw_item_at(last + 1)->part == item->part)
    last++;
  return last;
}

lw_status lw_answers_write(const lw_answers *answers, lw_text *out) {
  const lw_item *item;
  if (answers->count == 0) return LW_OK;
  lw_text_add(out, "item,value,unit,note\n");
  for (int i = 0; i < answers->count; i++)
    if (!answers->row[i].named.item) add_row(answers, &answers->row[i], out);
  for (size_t i = 0; (item = lw_item_at(i)) != NULL; i++) {
    size_t last = item->repeats > 0 ? last_of_part(i) : i;
    for (int n = item->repeats > 0 ? 1 : 0; n <= item->repeats; n++)
      for (size_t k = i; k <= last; k++) add_named(answers, lw_item_at(k), n, out);
    i = last;
  }
  return answers->text.failed || out->failed ? LW_NO_MEMORY : LW_OK;
}
