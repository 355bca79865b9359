/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "circle.h"

#include <math.h>

#include "base/bound.h"
#include "parts.h"

/* The factors of one circle. */

enum { ITERATIONS = 100 };
/* Newton squares the gap: a step of 1e-4 leaves 1e-8. */
static const double CONVERGED = 1e-7, CONVERGED_BY_NEWTON = 1e-4, LEAST_M_ALPHA = 0.2, LEAST_START = 0.1;

/* What is sought of one slice; the sums, the search and the working have it from here. */
static double driving(const lw_slip_slice *s) {
  return s->weight_kn_per_m * s->sine;
}

static double shaken(const lw_slip_slice *s, const lw_slip_circle *circle, double kh) {
  if (!circle || kh <= 0.0) return 0.0;
  return kh * s->weight_kn_per_m * (circle->centre_y_m - s->weight_y_m) / circle->radius_m;
}

static double ordinary(const lw_slip_slice *s, double kh) {
  double normal =
      s->weight_kn_per_m * s->cosine - kh * s->weight_kn_per_m * s->sine - s->pore_kpa * s->length_m;
  return s->cohesion_kpa * s->length_m + lw_larger(normal, 0.0) * s->tan_friction;
}

static double before_m_alpha(const lw_slip_slice *s) {
  double carried = lw_larger(s->weight_kn_per_m - s->pore_kpa * s->width_m, 0.0);
  return s->cohesion_kpa * s->width_m + carried * s->tan_friction;
}

static double m_alpha_of(const lw_slip_slice *s, double over_factor) {
  return s->cosine + s->sine * s->tan_friction * over_factor;
}

lw_slip_forces lw_slip_forces_of(const lw_slip_slice *slice, const lw_slip_circle *circle, double seismic,
                                 double factor) {
  lw_slip_forces f = {.driving_kn_per_m = driving(slice),
                      .shaken_kn_per_m = shaken(slice, circle, seismic),
                      .ordinary_kn_per_m = ordinary(slice, seismic)};
  if (factor <= 0.0) return f;
  f.m_alpha = m_alpha_of(slice, 1.0 / factor);
  f.bishop_kn_per_m = before_m_alpha(slice) / f.m_alpha;
  return f;
}

static void sums(const lw_slip_slices *list, const lw_slip_circle *circle, double kh, double *drives,
                 double *holds) {
  *drives = *holds = 0.0;
  for (int i = 0; i < list->count; i++) {
    const lw_slip_slice *s = &list->slice[i];
    *drives += driving(s);
    if (circle && kh > 0.0) *drives += shaken(s, circle, kh);
    *holds += ordinary(s, kh);
  }
}

/* One round of Bishop's equation: what is put in, the sum it gives, by how much that over what drives rises
 * with the factor, and the factor that comes out. */
typedef struct bishop_round {
  double factor, holds, slope, next;
  bool newton;
} bishop_round;

static void write_round(const bishop_round *r, int number, double drives, const lw_working *working) {
  char now[8], next[8], formula[64];
  if (working == NULL) return;
  lw_print(now, sizeof now, "F%d", number - 1);
  lw_print(next, sizeof next, "F%d", number);
  lw_print(formula, sizeof formula, "%s + (SB/SD - %s)/(1 - g)", now, now);
  const lw_bound bound[] = {
      {now, r->factor, ""}, {"SB", r->holds, "kN/m"}, {"SD", drives, "kN/m"}, {"g", r->slope, ""}};
  const lw_step step = {next, r->newton ? formula : "SB/SD", NULL, r->next, "", "[BISHOP1955 simplified]"};
  lw_working_bound_finely(working, &step, bound, sizeof bound / sizeof bound[0]);
}

/* The factor is on both sides of Bishop's equation. Newton's method: where the classical iteration closes a
 * part of the gap each round, this squares it. */
static bool bishop(const lw_slip_slices *list, double drives, double start, lw_slip *slip,
                   const lw_working *working) {
  double part[LW_SLIP_SLICE_MAX], turn[LW_SLIP_SLICE_MAX];
  for (int i = 0; i < list->count; i++) {
    const lw_slip_slice *s = &list->slice[i];
    part[i] = before_m_alpha(s);
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
    /* Of sum/drives over the factor; at 1 or more the classical iteration would not settle either. */
    double slope = rise * over * over / drives, fixed = sum / drives;
    bool newton = slope < 0.9;
    double next = newton ? factor + (fixed - factor) / (1.0 - slope) : fixed;
    if (!(next > 0.0) || !isfinite(next)) return false;
    write_round(&(bishop_round){factor, sum, slope, next, newton}, round, drives, working);
    bool converged = fabs(next - factor) <= (newton ? CONVERGED_BY_NEWTON : CONVERGED) * next;
    factor = next;
    if (!converged) continue;
    slip->bishop = factor;
    slip->iterations = round;
    return least >= LEAST_M_ALPHA;
  }
  return false;
}

/* Where Bishop's equation is looked for from. */
static double start_of(const lw_slip *slip) {
  return lw_larger(slip->ordinary, LEAST_START);
}

static lw_status factors_of(const lw_slip_slices *list, const lw_slip_circle *circle, double seismic,
                            lw_slip_method method, lw_slip *slip) {
  lw_slip found = {.slice_count = list->count};
  double holds;
  if (circle) found.circle = *circle;
  sums(list, circle, seismic, &found.driving_kn_per_m, &holds);
  if (!(found.driving_kn_per_m > 1e-9)) return LW_NO_SOLUTION;
  found.ordinary = holds / found.driving_kn_per_m;
  bool known = bishop(list, found.driving_kn_per_m, start_of(&found), &found, NULL);
  if (!known) found.bishop = 0.0;
  if (!known && method == LW_SLIP_BISHOP) return LW_NO_SOLUTION;
  *slip = found;
  return LW_OK;
}

/* The factors that were found, once more for who reads how. */
static void write(const lw_slip_slices *list, const lw_slip_circle *circle, double seismic,
                  const lw_slip *slip, const lw_working *working) {
  double drives, holds, start = start_of(slip);
  lw_slip again = *slip;
  sums(list, circle, seismic, &drives, &holds);
  const lw_bound bound[] = {{"ST", holds, "kN/m"}, {"SD", drives, "kN/m"}, {"Fo", slip->ordinary, ""}};
  const lw_step ordinary_step = {"Fo", "ST/SD", NULL, slip->ordinary, "", "[FELLENIUS1936 circle]"};
  const lw_step start_step = {"F0", start > slip->ordinary ? "0.1" : "Fo", NULL, start, "", ""};
  lw_working_bound(working, &ordinary_step, bound, sizeof bound / sizeof bound[0]);
  if (slip->bishop <= 0.0) return;
  lw_working_bound(working, &start_step, bound, sizeof bound / sizeof bound[0]);
  (void)bishop(list, drives, start, &again, working);
}

lw_status lw_slip_of_slices(const lw_slip_slices *list, const lw_slip_circle *circle, double seismic,
                            lw_slip_method method, lw_slip *slip, const lw_working *working) {
  if (!lw_slip_slices_hold(list) || !(seismic >= 0.0 && seismic < 1.0)) return LW_NO_SOLUTION;
  lw_status status = factors_of(list, circle, seismic, method, slip);
  if (status == LW_OK && working != NULL) write(list, circle, seismic, slip, working);
  return status;
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
