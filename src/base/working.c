/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "working.h"

#include <lowwall/base.h>

#include <stdarg.h>

#include "print.h"
#include "tell.h"

void lw_working_heading(const lw_working *working, const char *title) {
  if (working != NULL && working->heading != NULL) {
    working->heading(working->context, title);
  }
}

static void hand_on(const lw_working *working, void (*to)(void *, const lw_step *), const lw_step *step,
                    const char *inserted, va_list arguments) {
  char numbers[512];
  lw_step whole = *step;
  lw_print_list(numbers, sizeof numbers, inserted, arguments);
  lw_tell_name unit = lw_tell_unit(working->units, step->unit);
  whole.inserted = numbers;
  whole.value = lw_tell_in(working->units, step->unit, step->value);
  whole.unit = unit.text;
  to(working->context, &whole);
}

void lw_working_step(const lw_working *working, const lw_step *step, const char *inserted, ...) {
  if (working == NULL || working->step == NULL) return;
  va_list arguments;
  va_start(arguments, inserted);
  hand_on(working, working->step, step, inserted, arguments);
  va_end(arguments);
}

void lw_working_line(const lw_working *working, const lw_step *step, const char *inserted, ...) {
  if (working == NULL || (working->line == NULL && working->step == NULL)) return;
  va_list arguments;
  va_start(arguments, inserted);
  hand_on(working, working->line ? working->line : working->step, step, inserted, arguments);
  va_end(arguments);
}

void lw_working_row(const lw_working *working, const char *format, ...) {
  if (working == NULL || working->row == NULL) {
    return;
  }
  char text[160];
  va_list arguments;
  va_start(arguments, format);
  lw_print_list(text, sizeof text, format, arguments);
  va_end(arguments);
  working->row(working->context, text);
}
