/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "least.h"

#include <lowwall/base.h>

#include <gsl/gsl_errno.h>
#include <gsl/gsl_min.h>
#include <math.h>

/* GSL's simplex would allocate; its line search does not, when solver and state stand on the stack. */
enum { STATE_DOUBLES = 32, STRIDES = 5 };
static const double NEAR_ENOUGH = 1e-5;

/* f along a line through a point. */
typedef struct line {
  lw_function_of f;
  const void *context;
  const lw_least *from;
  double along[LW_LEAST_MAX];
  double wall;   /* what is handed on where f has no answer */
  double wanted; /* a value over it is only compared with it */
} line;

typedef struct spot {
  double s, y;
} spot;

static double on_line(double s, void *params) {
  const line *l = params;
  double x[LW_LEAST_MAX];
  for (int i = 0; i < l->from->count; i++) {
    double at = l->from->x[i] + s * l->along[i];
    x[i] = fmin(fmax(at, l->from->low[i]), l->from->high[i]);
  }
  double y = l->f(x, l->wanted, l->context);
  return isfinite(y) ? y : l->wall;
}

/* How far the line may go either way before it meets a bound. */
static void room(const line *l, double *back, double *ahead) {
  *back = -1e30;
  *ahead = 1e30;
  for (int i = 0; i < l->from->count; i++) {
    if (fabs(l->along[i]) < 1e-15) continue;
    double a = (l->from->low[i] - l->from->x[i]) / l->along[i],
           b = (l->from->high[i] - l->from->x[i]) / l->along[i];
    *back = fmax(*back, fmin(a, b));
    *ahead = fmin(*ahead, fmax(a, b));
  }
}

static spot look(line *l, double s) {
  return (spot){s, on_line(s, l)};
}

/* Beside a middle: of the ends of a bracket only that they are higher counts, to Brent's method too. */
static spot look_beside(line *l, double s, const spot *middle) {
  l->wanted = middle->y;
  spot found = look(l, s);
  l->wanted = INFINITY;
  return found;
}

/* Stride on while it falls: three spots with the lowest between, where there are. */
static bool bracket(line *l, spot three[3]) {
  double back, ahead, stride = l->from->step;
  room(l, &back, &ahead);
  three[0] = look_beside(l, fmax(-stride, back), &three[1]);
  three[2] = look_beside(l, fmin(stride, ahead), &three[1]);
  for (int i = 0; i < STRIDES; i++) {
    if (three[1].y < three[0].y && three[1].y < three[2].y) return true;
    stride *= 1.6;
    if (three[2].y < three[1].y) {
      three[0] = three[1];
      three[1] = three[2];
      three[2] = look_beside(l, fmin(three[1].s + stride, ahead), &three[1]);
    } else if (three[0].y < three[1].y) {
      three[2] = three[1];
      three[1] = three[0];
      three[0] = look_beside(l, fmax(three[1].s - stride, back), &three[1]);
    } else {
      /* Level with a neighbour, or at a bound. */
      return false;
    }
  }
  return three[1].y < three[0].y && three[1].y < three[2].y;
}

static spot descend(line *l, const spot three[3]) {
  double state[STATE_DOUBLES] = {0};
  gsl_function function = {on_line, l};
  gsl_min_fminimizer solver = {.type = gsl_min_fminimizer_brent, .state = state};
  if (solver.type->size > sizeof state ||
      gsl_min_fminimizer_set_with_values(&solver, &function, three[1].s, three[1].y, three[0].s, three[0].y,
                                         three[2].s, three[2].y) != GSL_SUCCESS)
    return three[1];
  for (int i = 0; i < l->from->line_steps; i++) {
    if (gsl_min_fminimizer_iterate(&solver) != GSL_SUCCESS) break;
    if (gsl_min_fminimizer_x_upper(&solver) - gsl_min_fminimizer_x_lower(&solver) < NEAR_ENOUGH) break;
  }
  return (spot){gsl_min_fminimizer_x_minimum(&solver), gsl_min_fminimizer_f_minimum(&solver)};
}

static void search(line *l, lw_least *least) {
  l->wall = fabs(least->value) * 10.0 + 10.0;
  spot three[3] = {{0.0, 0.0}, {0.0, least->value}, {0.0, 0.0}};
  spot found = bracket(l, three) ? descend(l, three) : three[1];
  for (int i = 0; i < 3; i++)
    if (three[i].y < found.y) found = three[i];
  if (!(found.y < least->value)) return;
  for (int i = 0; i < least->count; i++)
    least->x[i] = fmin(fmax(least->x[i] + found.s * l->along[i], least->low[i]), least->high[i]);
  least->value = found.y;
}

static void turn(line *l, lw_least *least) {
  lw_least before = *least;
  bool moved = false;
  for (int i = 0; i < least->count; i++) {
    for (int k = 0; k < least->count; k++) l->along[k] = i == k ? least->high[i] - least->low[i] : 0.0;
    search(l, least);
  }
  for (int k = 0; k < least->count; k++) {
    l->along[k] = (least->x[k] - before.x[k]) / least->step;
    moved = moved || fabs(l->along[k]) > 1e-12;
  }
  if (moved) search(l, least);
}

lw_status lw_solve_least(lw_function_of f, const void *context, int turns, lw_least *least) {
  lw_least now = *least;
  line l = {.f = f, .context = context, .from = &now, .wanted = INFINITY};
  now.value = f(now.x, INFINITY, context);
  if (!isfinite(now.value) || now.count < 1 || now.count > LW_LEAST_MAX) return LW_NO_SOLUTION;
  for (int i = 0; i < turns; i++) {
    double before = now.value;
    turn(&l, &now);
    if (before - now.value < now.worth * fabs(now.value)) break;
    now.step *= 0.6;
  }
  now.step = least->step;
  *least = now;
  return LW_OK;
}
