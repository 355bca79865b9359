/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BASE_LEAST_H
#define LOWWALL_BASE_LEAST_H

#include <lowwall/base.h>

/* A function of a few numbers, each within its own bounds. */
enum { LW_LEAST_MAX = 3 };
/* Anything over `wanted`, INFINITY too, does for a value that is. */
typedef double (*lw_function_of)(const double *x, double wanted, const void *context);
typedef struct lw_least {
  int count; /* 1 to LW_LEAST_MAX */
  double low[LW_LEAST_MAX], high[LW_LEAST_MAX];
  double step;                   /* of the first searches, as a share of high - low */
  int line_steps;                /* of Brent's method along a line: it need not be gone
                                                      down to its end, the turn after it begins elsewhere */
  double worth;                  /* a turn that gains less, as a share of the value, is
                                                      the last one */
  double x[LW_LEAST_MAX], value; /* where to start, and after it the least found */
} lw_least;

/** A lower place of f near a start, by line searches (Brent's method) along each number in turn and along the
 *  way they went together; needs no memory.
 *  in    least   count, bounds, step, line_steps, worth and the start
 *        turns   how often the whole is gone through at most
 *  out   least   x and f there, never higher than at the start; unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION when f is not finite at the start
 *  note  1 f may be infinite where it has no answer. The place is a lower one, not surely the lowest. */
lw_status lw_solve_least(lw_function_of f, const void *context, int turns, lw_least *least);

#endif
