/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/base.h>

#include <stdarg.h>

#include "print.h"

void lw_working_heading(const lw_working *working, const char *title) {
  if (working != NULL && working->heading != NULL) {
    working->heading(working->context, title);
  }
}

void lw_working_step(const lw_working *working, const lw_step *step, const char *inserted, ...) {
  if (working == NULL || working->step == NULL) {
    return;
  }
  char numbers[512];
  va_list arguments;
  va_start(arguments, inserted);
  lw_print_list(numbers, sizeof numbers, inserted, arguments);
  va_end(arguments);
  lw_step whole = *step;
  whole.inserted = numbers;
  working->step(working->context, &whole);
}
