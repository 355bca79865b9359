/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "solve.h"

#include <lowwall/base.h>

#include <gsl/gsl_errno.h>
#include <gsl/gsl_min.h>
#include <gsl/gsl_roots.h>
#include <math.h>

/* GSL's solvers keep a few doubles of state and would allocate them. Mechanics allocates nothing, so
 * the solver and its state stand on the stack; the size is checked against what the method says it needs. */
enum {
  STATE_DOUBLES = 32,
  ROOT_ITERATIONS = 200,
  LEAST_ITERATIONS = 200,
  END_REFINEMENTS = 12,
  END_STEPS = 8
};

/* What GSL calls: the caller's function, and never a value that GSL would call an error. */
typedef struct guard {
  lw_function f;
  const void *context;
  double instead; /* handed on where f is not finite */
  bool broken;    /* f was not finite somewhere */
} guard;

static double guarded(double x, void *params) {
  guard *g = params;
  double y = g->f(x, g->context);
  if (isfinite(y)) {
    return y;
  }
  g->broken = true;
  return g->instead;
}

static bool is_zero(double y) {
  return !(y < 0.0) && !(y > 0.0);
}

static lw_status bracketed_root(guard *g, double low, double high, double tolerance, double *root) {
  double state[STATE_DOUBLES] = {0};
  gsl_function function = {guarded, g};
  gsl_root_fsolver solver = {.type = gsl_root_fsolver_brent, .state = state};
  if (solver.type->size > sizeof state ||
      gsl_root_fsolver_set(&solver, &function, low, high) != GSL_SUCCESS) {
    return LW_NO_SOLUTION;
  }
  for (int i = 0; i < ROOT_ITERATIONS; i++) {
    if (gsl_root_fsolver_iterate(&solver) != GSL_SUCCESS || g->broken) {
      return LW_NO_SOLUTION;
    }
    if (fabs(gsl_root_fsolver_x_upper(&solver) - gsl_root_fsolver_x_lower(&solver)) <= tolerance) {
      *root = gsl_root_fsolver_root(&solver);
      return LW_OK;
    }
  }
  *root = gsl_root_fsolver_root(&solver);
  return LW_OK;
}

lw_status lw_solve_root(lw_function f, const void *context, double low, double high, double tolerance,
                        double *root) {
  double at_low = f(low, context);
  double at_high = f(high, context);
  if (!isfinite(low) || !isfinite(high) || !isfinite(at_low) || !isfinite(at_high)) {
    return LW_NO_SOLUTION;
  }
  if (is_zero(at_low) || is_zero(at_high)) {
    *root = is_zero(at_low) ? low : high;
    return LW_OK;
  }
  if ((at_low < 0.0) == (at_high < 0.0) || !(low < high)) {
    return LW_NO_SOLUTION;
  }
  guard g = {.f = f, .context = context, .instead = 0.0};
  return bracketed_root(&g, low, high, tolerance, root);
}

/* A point and its value; three of them, the middle one lowest, hold a minimum. */
typedef struct spot {
  double x, y;
} spot;
typedef struct bracket {
  spot low, mid, high;
} bracket;

/* The lowest of steps + 1 points, with its neighbours (itself at an end). False when f is nowhere finite. */
static bool scan(lw_function f, const void *context, bracket *b, int steps) {
  double low = b->low.x;
  double width = b->high.x - low;
  spot before = {low, INFINITY};
  bool found = false;
  bool await_next = false;
  bracket best = {{low, INFINITY}, {low, INFINITY}, {low, INFINITY}};
  for (int i = 0; i <= steps; i++) {
    spot here = {low + width * i / steps, 0.0};
    here.y = f(here.x, context);
    here.y = isfinite(here.y) ? here.y : INFINITY;
    if (await_next) {
      best.high = here;
      await_next = false;
    }
    if (here.y < best.mid.y) {
      best = (bracket){i == 0 ? here : before, here, here};
      found = true;
      await_next = true;
    }
    before = here;
  }
  if (found) {
    *b = best;
  }
  return found;
}

/* The greatest finite value that still says "not here" to a parabola through its neighbours. */
static double wall_height(const bracket *b) {
  double low = isfinite(b->low.y) ? b->low.y : b->mid.y;
  double high = isfinite(b->high.y) ? b->high.y : b->mid.y;
  double top = fmax(low, high);
  return top + (top - b->mid.y) + 1.0 + fabs(b->mid.y);
}

static void descend(lw_function f, const void *context, const bracket *b, spot *least) {
  double state[STATE_DOUBLES] = {0};
  guard g = {.f = f, .context = context, .instead = wall_height(b)};
  gsl_function function = {guarded, &g};
  gsl_min_fminimizer solver = {.type = gsl_min_fminimizer_brent, .state = state};
  double at_low = isfinite(b->low.y) ? b->low.y : g.instead;
  double at_high = isfinite(b->high.y) ? b->high.y : g.instead;
  if (solver.type->size > sizeof state ||
      gsl_min_fminimizer_set_with_values(&solver, &function, b->mid.x, b->mid.y, b->low.x, at_low, b->high.x,
                                         at_high) != GSL_SUCCESS) {
    return;
  }
  for (int i = 0; i < LEAST_ITERATIONS; i++) {
    if (gsl_min_fminimizer_iterate(&solver) != GSL_SUCCESS) {
      break;
    }
    double low = gsl_min_fminimizer_x_lower(&solver);
    double high = gsl_min_fminimizer_x_upper(&solver);
    /* A minimum is flat: x to 1e-7 gives its value to 1e-14, and GSL steps no finer than 1.5e-8. */
    if (gsl_min_test_interval(low, high, 1e-7, 1e-7) == GSL_SUCCESS) {
      break;
    }
  }
  /* What stands in for a value that is not finite is higher than the middle: the least is one of f's own. */
  spot found = {gsl_min_fminimizer_x_minimum(&solver), gsl_min_fminimizer_f_minimum(&solver)};
  if (found.y <= least->y) *least = found;
}

lw_status lw_solve_minimum(lw_function f, const void *context, double low, double high, int steps,
                           lw_minimum *least) {
  bracket b = {{low, 0.0}, {low, 0.0}, {high, 0.0}};
  if (!isfinite(low) || !isfinite(high) || !(low < high) || steps < 2 || !scan(f, context, &b, steps)) {
    return LW_NO_SOLUTION;
  }
  /* Least at an end, or level with a neighbour: look closer until it stands between two higher ones. */
  for (int i = 0; i < END_REFINEMENTS && !(b.mid.y < b.low.y && b.mid.y < b.high.y); i++) {
    bracket closer = b;
    if (!scan(f, context, &closer, END_STEPS)) {
      break;
    }
    b = closer.mid.y <= b.mid.y ? closer : b;
  }
  spot found = b.mid;
  if (b.mid.y < b.low.y && b.mid.y < b.high.y) {
    descend(f, context, &b, &found);
  }
  *least = (lw_minimum){found.x, found.y};
  return LW_OK;
}
