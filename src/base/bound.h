/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BASE_BOUND_H
#define LOWWALL_BASE_BOUND_H

#include <lowwall/base.h>

/* A symbol and the number that stands for it: angles in degrees. */
typedef struct lw_bound {
  const char *symbol;
  double value;
  const char *unit;
} lw_bound;

/* Record a step whose numbers are put in as "phi = 30.000 deg, B = 1.2000 m": those of the list that its
 * formula names, in the order in which it does, to five
 * digits. */
void lw_working_bound(const lw_working *working, const lw_step *step, const lw_bound *bound, size_t count);

/* The same to eight digits, where much of a number is taken off again. */
void lw_working_bound_finely(const lw_working *working, const lw_step *step, const lw_bound *bound,
                             size_t count);

#endif
