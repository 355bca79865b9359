/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TESTS_PRESSURE_HOSTILE_H
#define LOWWALL_TESTS_PRESSURE_HOSTILE_H

#include <lowwall/pressure.h>

/* What a student's own program may hand to a formula by mistake. It gets an answer in finite numbers, or
 * none: of no number, of a right angle of friction and of soil that weighs nothing there is none. */

enum { HOSTILE_INPUTS = 16, HOSTILE_OUTPUTS = 12 };

/* One formula as numbers in, numbers out. friction, weight: which inputs they are, -1 where there is none. */
typedef struct hostile_formula {
  const char *name;
  lw_status (*call)(lw_earth_state state, const double *in, double *out);
  int inputs, friction, weight;
  double in[HOSTILE_INPUTS];
} hostile_formula;

/* Each input in turn is made wild; the formula itself must have an answer. */
void hostile_ask(const hostile_formula *formula, lw_earth_state state);

#endif
