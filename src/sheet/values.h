/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SHEET_VALUES_H
#define LOWWALL_SHEET_VALUES_H

#include <lowwall/case.h>

/* What a case says, and what stands in for it where it says nothing. */

static inline double lw_si_or(const lw_quantity *q, double otherwise) {
  return q->origin == LW_ABSENT ? otherwise : q->si;
}

static inline bool lw_choice_is(const lw_choice *choice, int value) {
  return choice->origin != LW_ABSENT && choice->value == value;
}

#endif
