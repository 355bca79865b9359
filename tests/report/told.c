/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "told.h"

#include <math.h>
#include <string.h>

#include "evaluate.h"

/* "phi = 30.000 deg, B = 1.2000 m": the names of a formula and what is put in for them. */
static bool bind(const char *text, evaluate_names *names) {
  for (const char *at = text; *at != '\0' && names->count < EVALUATE_NAMES;) {
    evaluate_name *name = &names->of[names->count++];
    size_t length = strcspn(at, " ");
    if (length == 0 || length >= sizeof name->name || strncmp(at + length, " = ", 3) != 0) return false;
    lw_print(name->name, sizeof name->name, "%.*s", (int)length, at);
    at += length + 3;
    size_t digits = strcspn(at, " ,");
    if (!lw_number_read(at, digits, &name->value)) return false;
    name->half = evaluate_half_digit(at);
    at += strcspn(at, ",");
    at += strspn(at, ", ");
  }
  return names->count > 0;
}

/* Named numbers put into the formula, or numbers in its place. */
static bool value_of(const lw_step *step, evaluated *found) {
  evaluate_names names = {.count = 0};
  if (!step->inserted) return false;
  if (bind(step->inserted, &names))
    return evaluate(step->formula, strlen(step->formula), &names, step->formula, found);
  return evaluate(step->inserted, strlen(step->inserted), NULL, step->formula, found);
}

/* As far as the rounding of the numbers put in, and of the printed result, may move it. */
static void work_out(told *t, const lw_step *step) {
  evaluated found;
  if (!value_of(step, &found)) return;
  t->worked_out++;
  if (fabs(found.value - step->value) <= found.half + 1e-9 * fmax(fabs(step->value), 1.0)) return;
  if (t->wrong++ > 0) return;
  lw_print(t->first_wrong, sizeof t->first_wrong, "%s = %s : %s is %g, said %g", step->symbol, step->formula,
           step->inserted, found.value, step->value);
}

static void hear(void *context, const lw_step *step) {
  told *t = context;
  work_out(t, step);
  if (t->count == TOLD_STEPS) return;
  lw_print(t->step[t->count].symbol, sizeof t->step[0].symbol, "%s", step->symbol);
  lw_print(t->step[t->count].formula, sizeof t->step[0].formula, "%s", step->formula);
  t->step[t->count++].value = step->value;
}

static void pass_heading(void *context, const char *title) {
  (void)title;
  ((told *)context)->headings++;
}

static void pass_row(void *context, const char *text) {
  (void)context;
  (void)text;
}

lw_working told_listen(told *t) {
  *t = (told){.count = 0};
  return (lw_working){.context = t, .heading = pass_heading, .step = hear, .row = pass_row};
}

static int last_of(const told *t, const char *symbol) {
  int i = t->count - 1;
  while (i >= 0 && strcmp(t->step[i].symbol, symbol) != 0) i--;
  return i;
}

double told_value(const told *t, const char *symbol) {
  int i = last_of(t, symbol);
  return i < 0 ? NAN : t->step[i].value;
}

const char *told_formula(const told *t, const char *symbol) {
  int i = last_of(t, symbol);
  return i < 0 ? "" : t->step[i].formula;
}
