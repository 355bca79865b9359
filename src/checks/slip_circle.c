/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "slip_parts.h"

/* The factors of one circle. */

enum { ITERATIONS = 100 };
/* Newton squares the gap: a step of 1e-4 leaves 1e-8. */
static const double SETTLED = 1e-7, SETTLED_BY_NEWTON = 1e-4, LEAST_M_ALPHA = 0.2;

static void sums(const lw_slip_slices *list, const lw_slip_circle *circle, double kh, double *driving,
                 double *resisting) {
  *driving = *resisting = 0.0;
  for (int i = 0; i < list->count; i++) {
    const lw_slip_slice *s = &list->slice[i];
    double shaken = kh * s->weight_kn_per_m;
    double normal = s->weight_kn_per_m * s->cosine - shaken * s->sine - s->pore_kpa * s->length_m;
    *driving += s->weight_kn_per_m * s->sine;
    if (circle && kh > 0.0) *driving += shaken * (circle->centre_y_m - s->weight_y_m) / circle->radius_m;
    *resisting += s->cohesion_kpa * s->length_m + lw_larger(normal, 0.0) * s->tan_friction;
  }
}

/* The factor is on both sides of Bishop's equation. Newton's method: where the classical iteration closes a
 * part of the gap each round, this squares it. */
static bool bishop(const lw_slip_slices *list, double driving, double start, lw_slip *slip) {
  double part[LW_SLIP_SLICE_MAX], turn[LW_SLIP_SLICE_MAX];
  for (int i = 0; i < list->count; i++) {
    const lw_slip_slice *s = &list->slice[i];
    double carried = lw_larger(s->weight_kn_per_m - s->pore_kpa * s->width_m, 0.0);
    part[i] = s->cohesion_kpa * s->width_m + carried * s->tan_friction;
    turn[i] = s->sine * s->tan_friction;
  }
  double factor = start;
  for (int round = 1; round <= ITERATIONS; round++) {
    double sum = 0.0, rise = 0.0, over = 1.0 / factor, least = 1.0;
    for (int i = 0; i < list->count; i++) {
      double m_alpha = list->slice[i].cosine + turn[i] * over;
      if (m_alpha <= 0.0) return false;
      least = lw_smaller(m_alpha, least);
      double over_m = 1.0 / m_alpha, share = part[i] * over_m;
      sum += share;
      rise += share * over_m * turn[i];
    }
    /* Of sum/driving over the factor; at 1 or more the classical iteration would not settle either. */
    double slope = rise * over * over / driving, fixed = sum / driving;
    bool newton = slope < 0.9;
    double next = newton ? factor + (fixed - factor) / (1.0 - slope) : fixed;
    if (!(next > 0.0) || !isfinite(next)) return false;
    bool settled = fabs(next - factor) <= (newton ? SETTLED_BY_NEWTON : SETTLED) * next;
    factor = next;
    if (!settled) continue;
    slip->bishop = factor;
    slip->iterations = round;
    return least >= LEAST_M_ALPHA;
  }
  return false;
}

static lw_status factors_of(const lw_slip_slices *list, const lw_slip_circle *circle, double seismic,
                            lw_slip_method method, lw_slip *slip) {
  lw_slip found = {.slice_count = list->count};
  double resisting;
  if (circle) found.circle = *circle;
  sums(list, circle, seismic, &found.driving_kn_per_m, &resisting);
  if (!(found.driving_kn_per_m > 1e-9)) return LW_NO_SOLUTION;
  found.ordinary = resisting / found.driving_kn_per_m;
  bool known = bishop(list, found.driving_kn_per_m, lw_larger(found.ordinary, 0.1), &found);
  if (!known) found.bishop = 0.0;
  if (!known && method == LW_SLIP_BISHOP) return LW_NO_SOLUTION;
  *slip = found;
  return LW_OK;
}

lw_status lw_slip_of_slices(const lw_slip_slices *list, const lw_slip_circle *circle, double seismic,
                            lw_slip_method method, lw_slip *slip) {
  if (!lw_slip_slices_hold(list) || !(seismic >= 0.0 && seismic < 1.0)) return LW_NO_SOLUTION;
  return factors_of(list, circle, seismic, method, slip);
}

static void take_off(lw_slip_slices *list, double sign) {
  for (int i = 0; i < list->count; i++) {
    lw_slip_slice *s = &list->slice[i];
    double before = s->weight_kn_per_m,
           moment = before * s->weight_y_m - sign * s->load_kn_per_m * s->load_y_m;
    s->weight_kn_per_m -= sign * s->load_kn_per_m;
    if (s->weight_kn_per_m > 0.0) s->weight_y_m = moment / s->weight_kn_per_m;
  }
}

double lw_slip_factor(const lw_slip *slip, lw_slip_method method) {
  return method == LW_SLIP_ORDINARY ? slip->ordinary : slip->bishop;
}

/* How the factor of a list is found. */
typedef struct way {
  const lw_slip_circle *circle;
  double seismic;
  lw_slip_method method;
} way;

/* What a slice's weight holds for each kN, less the factor times what it drives. */
static double helps(const lw_slip_slice *s, double factor, const way *by) {
  double normal = by->method == LW_SLIP_ORDINARY ? s->cosine - by->seismic * s->sine
                                                 : 1.0 / (s->cosine + s->sine * s->tan_friction / factor);
  double drives = s->sine;
  if (by->seismic > 0.0)
    drives += by->seismic * (by->circle->centre_y_m - s->weight_y_m) / by->circle->radius_m;
  return normal * s->tan_friction - factor * drives;
}

/* Whether the loads hold more than F times what they drive; then it is worse without them. */
static bool loads_help(const lw_slip_slices *list, double factor, const way *by) {
  double sum = 0.0;
  for (int i = 0; i < list->count; i++) {
    const lw_slip_slice *s = &list->slice[i];
    if (s->load_kn_per_m > 0.0) sum += s->load_kn_per_m * helps(s, factor, by);
  }
  return sum > 0.0;
}

static lw_status weigh(const lw_slip_slices *list, const way *by, lw_slip *slip) {
  return factors_of(list, by->circle, by->seismic, by->method, slip);
}

/* Whether a changed list has a factor, and a lower one. */
static bool lower(const lw_slip_slices *list, const way *by, lw_slip *slip) {
  lw_slip other;
  bool is = weigh(list, by, &other) == LW_OK &&
            lw_slip_factor(&other, by->method) < lw_slip_factor(slip, by->method);
  if (is) *slip = other;
  return is;
}

/* What is lighter in the slices that it helps; at any factor in those that fall away from what slides. */
static bool lighten(lw_slip_slices *list, double factor, const way *by) {
  bool lighter = false;
  for (int i = 0; i < list->count; i++) {
    lw_slip_slice *s = &list->slice[i];
    bool always = s->sine <= 0.0 && by->seismic <= 0.0;
    if (s->spare_kn_per_m <= 0.0 || !(always || (factor > 0.0 && helps(s, factor, by) > 0.0))) continue;
    s->weight_kn_per_m -= s->spare_kn_per_m;
    /* Below zero: taken off, and may be put back. */
    s->spare_kn_per_m = always ? 0.0 : -s->spare_kn_per_m;
    lighter = true;
  }
  return lighter;
}

static void put_back(lw_slip_slices *list) {
  for (int i = 0; i < list->count; i++) {
    lw_slip_slice *s = &list->slice[i];
    if (s->spare_kn_per_m < 0.0) s->weight_kn_per_m -= s->spare_kn_per_m;
  }
}

lw_status lw_slip_worse(lw_slip_slices *list, const lw_slip_circle *circle, double seismic,
                        lw_slip_method method, lw_slip *slip) {
  const way by = {circle, seismic, method};
  (void)lighten(list, 0.0, &by);
  lw_status status = weigh(list, &by, slip);
  if (status != LW_OK) return status;
  if (loads_help(list, lw_slip_factor(slip, method), &by)) {
    take_off(list, 1.0);
    if (!lower(list, &by, slip)) take_off(list, -1.0);
  }
  if (lighten(list, lw_slip_factor(slip, method), &by) && !lower(list, &by, slip)) put_back(list);
  return LW_OK;
}

lw_status lw_slip_of_circle(const lw_slip_ground *ground, const lw_slip_circle *circle, int slices,
                            lw_slip *slip, lw_slip_slices *list) {
  lw_slip_strips strips;
  lw_slip_slices own;
  if (!list) list = &own;
  if (!lw_slip_ground_holds(ground)) return LW_NO_SOLUTION;
  lw_slip_cut(ground, &strips);
  if (!lw_slip_clear(&strips, circle)) return LW_NO_SOLUTION;
  if (!lw_slip_slice_up(&strips, circle, slices, list)) return LW_NO_SOLUTION;
  return lw_slip_worse(list, circle, ground->seismic_horizontal, LW_SLIP_BISHOP, slip);
}
