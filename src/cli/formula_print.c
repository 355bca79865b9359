/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "formula.h"

#include <math.h>

#include "output.h"
#include "say.h"

static void text_heading(void *context, const char *title) {
  lw_text_addf(context, "\n%s\n", title);
}

static void text_step(void *context, const lw_step *step) {
  lw_text *text = context;
  lw_text_addf(text, "  %s = %s\n", step->symbol, step->formula);
  if (step->inserted[0] != '\0') lw_text_addf(text, "    with %s\n", step->inserted);
  lw_text_addf(text, "    = %.6g%s%s%s%s\n", step->value, step->unit[0] != '\0' ? " " : "", step->unit,
               step->source[0] != '\0' ? "   " : "", step->source);
}

static void text_row(void *context, const char *row) {
  lw_text_addf(context, "  %s\n", row);
}

lw_working lw_formula_text_working(lw_text *text) {
  return (lw_working){.context = text, .heading = text_heading, .step = text_step, .row = text_row};
}

static void json_heading(void *context, const char *title) {
  lw_json_set_text(lw_json_entry(context), "heading", title);
}

static void json_step(void *context, const lw_step *step) {
  json_t *object = lw_json_entry(context);
  lw_json_set_text(object, "symbol", step->symbol);
  lw_json_set_text(object, "formula", step->formula);
  lw_json_set_text(object, "inserted", step->inserted);
  lw_json_set_text(object, "unit", step->unit);
  lw_json_set_text(object, "source", step->source);
  lw_formula_set(object, "value", step->value, NULL);
}

static void json_row(void *context, const char *row) {
  lw_json_set_text(lw_json_entry(context), "row", row);
}

lw_working lw_formula_json_working(json_t *array) {
  return (lw_working){.context = array, .heading = json_heading, .step = json_step, .row = json_row};
}

void lw_formula_set(json_t *object, const char *key, double value, const char *reason) {
  char name[80];
  if (lw_json_set_real(object, key, (lw_number){value, reason == NULL})) return;
  lw_print(name, sizeof name, "%s_reason", key);
  lw_json_set_text(object, name, reason != NULL ? reason : "not-finite");
}

/* "friction angle" becomes "friction_angle_deg". */
static void key_of(const lw_item *item, lw_kind kind, char *out, size_t size) {
  static const char *const ends[] = {
      [LW_KIND_LENGTH] = "_m",           [LW_KIND_ANGLE] = "_deg", [LW_KIND_PRESSURE] = "_kpa",
      [LW_KIND_LINE_LOAD] = "_kn_per_m", [LW_KIND_FORCE] = "_kn",  [LW_KIND_UNIT_WEIGHT] = "_kn_per_m3",
      [LW_KIND_POST_MOMENT] = NULL,      [LW_KIND_VOLUME] = NULL};
  const char *end = item->type == LW_ITEM_QUANTITY ? ends[kind] : NULL;
  lw_print(out, size, "%s%s", item->name, end != NULL ? end : "");
  for (char *c = out; *c != '\0'; c++) *c = *c == ' ' ? '_' : *c;
}

static void set_value(json_t *object, const char *key, const lw_item *item, const lw_formula_value *value) {
  char word[48];
  if (item->type == LW_ITEM_CHOICE)
    lw_json_set_text(object, key, lw_item_word(item, value->word, word, sizeof word));
  else
    lw_json_set_double(object, key, value->kind == LW_KIND_ANGLE ? value->si * LW_DEG_PER_RAD : value->si);
}

void lw_formula_given_json(const lw_formula_given *given, json_t *object) {
  for (size_t i = 0; i < given->sheet->count; i++) {
    if (!given->value[i].given) continue;
    char key[96];
    const lw_item *item = &given->sheet->item[i].item;
    key_of(item, given->value[i].kind, key, sizeof key);
    set_value(object, key, item, &given->value[i]);
  }
}

int lw_formula_print_json(json_t *value) {
  enum { INDENT = 2 };
  lw_text text = {0};
  if (lw_json_write_exact(value, INDENT, &text) != LW_OK) text.failed = true;
  return lw_output_write(NULL, &text, LW_EXIT_DONE);
}
