/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BASE_SOLVE_H
#define LOWWALL_BASE_SOLVE_H

#include <lowwall/base.h>

/* The few calls into GSL. GSL's default handler aborts the process on a programmer's error; these
 * check bracket and finiteness first, so it is never reached. The host may leave its handler as it is. */
typedef double (*lw_function)(double x, const void *context);

/** A root of f in [low, high] by Brent's method.
 *  gives LW_OK · LW_NO_SOLUTION when f does not change sign or is not finite at an end */
lw_status lw_solve_root(lw_function f, const void *context, double low, double high, double tolerance,
                        double *root);

typedef struct lw_minimum {
  double x, value;
} lw_minimum;

/** Where f is least in [low, high], by a scan of `steps` intervals and Brent's method in the best one.
 *  out   least  x, and f there; unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION when f is nowhere finite */
lw_status lw_solve_minimum(lw_function f, const void *context, double low, double high, int steps,
                           lw_minimum *least);

#endif
