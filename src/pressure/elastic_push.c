/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "elastic_push.h"

#include "base/angles.h"
#include "base/integral.h"
#include "elastic_reach.h"

#include <math.h>

/* The push of every load of limited width on a plane. Upright planes have closed forms; a leaning plane, a
 * point load and the curves are integrated, in pieces that grow with depth: pressure changes over a length
 * like the load's own distance. */

/* The plane's own point at this depth, as the load sees it. */
static double nearer(const lw_elastic_reach *r, double depth_m) {
  return r->lean * (depth_m + r->below_top_m);
}

static double strip_kpa(const lw_elastic_reach *r, double depth_m) {
  double nearer_m = nearer(r, depth_m);
  lw_elastic_strip strip = {r->load->pressure_kpa, r->load->near_m - nearer_m, r->load->far_m - nearer_m};
  return lw_elastic_strip_kpa(&strip, depth_m, r->face);
}

static double pressure_kpa(const lw_elastic_reach *r, double depth_m) {
  double force = r->load->force_kn_per_m,
         x = fmax(r->load->near_m - nearer(r, depth_m), LW_ELASTIC_NEAREST_M);
  if (r->load->pressure_kpa > 0.0) return strip_kpa(r, depth_m);
  if (r->by != LW_LOAD_PRESSURE_CURVES)
    return r->load->point ? lw_elastic_point_mean_kpa(force, x, depth_m, r->face)
                          : lw_elastic_line_kpa(force, x, depth_m, r->face);
  if (!r->load->point) return lw_elastic_curve_line_kpa(force, x, depth_m, r->height_m);
  lw_elastic_place straight = {.distance_m = x};
  return r->beside * lw_elastic_curve_point_kpa(force, &straight, depth_m, r->height_m);
}

static double sample(double depth_m, const void *context) {
  const lw_elastic_reach *r = context;
  double p = pressure_kpa(r, depth_m);
  return r->turning ? p * depth_m : p;
}

static double falls_off(double along_m, const void *context) {
  lw_elastic_place at = {.distance_m = *(const double *)context, .along_m = along_m}, straight = at;
  straight.along_m = 0.0;
  return lw_elastic_curve_point_kpa(1.0, &at, 1.0, 1.0) /
         lw_elastic_curve_point_kpa(1.0, &straight, 1.0, 1.0);
}

/* The mean of cos²(1.1 α) over the metre in front of the load. Up to 0.4 H the curve does not know how near
 * the load is, so neither does its fall along the wall: a load drawn nearer never pushes less. */
static double share_in_front(double distance_m, double height_m) {
  double x = fmax(fmax(distance_m, 0.4 * height_m), LW_ELASTIC_NEAREST_M), half = 0.0;
  double end = fmin(0.5, x * tan(LW_HALF_PI / 1.1)), step = 0.5 * x;
  for (double from = 0.0, to; from < end; from = to, step *= 2.0) {
    to = fmin(from + step, end);
    half += lw_gauss_integral(falls_off, &x, from, to);
  }
  return 2.0 * half;
}

/* From the load's level or the plane's top, whichever is lower, down to the foot. */
static lw_elastic_push integrate(lw_elastic_reach *r) {
  double from = fmax(-r->below_top_m, 0.0), step = fmax(fabs(r->load->near_m), LW_ELASTIC_NEAREST_M);
  double force = 0.0, moment = 0.0;
  while (from < r->height_m) {
    double to = fmin(from + step, r->height_m);
    r->turning = false;
    force += lw_gauss_integral(sample, r, from, to);
    r->turning = true;
    moment += lw_gauss_integral(sample, r, from, to);
    from = to;
    step *= 2.0;
  }
  return (lw_elastic_push){force, force > 0.0 ? r->height_m - moment / force : 0.0};
}

static lw_elastic_push closed(const lw_elastic_reach *r) {
  const lw_plane_load *load = r->load;
  if (load->pressure_kpa <= 0.0)
    return lw_elastic_line_push(load->force_kn_per_m, fmax(load->near_m, LW_ELASTIC_NEAREST_M), r->height_m,
                                r->face);
  lw_elastic_strip strip = {load->pressure_kpa, load->near_m, load->far_m};
  return lw_elastic_strip_push(&strip, r->height_m, r->face);
}

bool lw_elastic_has_closed_form(const lw_elastic_reach *r) {
  bool curve = r->by == LW_LOAD_PRESSURE_CURVES && r->load->pressure_kpa <= 0.0;
  return fabs(r->lean) < 1e-12 && !curve && !r->load->point && r->below_top_m >= 0.0;
}

static double ground_above_top(const lw_plane *plane, double behind_m) {
  return fmin(fmax(behind_m, 0.0), plane->slope_run_m) * tan(plane->slope_rad);
}

lw_elastic_reach lw_elastic_reach_of(const lw_plane *plane, const lw_plane_load *load, lw_load_pressure by) {
  double below = load->below_m - ground_above_top(plane, load->near_m);
  bool doubled = by != LW_LOAD_PRESSURE_HALF_SPACE;
  return (lw_elastic_reach){.load = load,
                            .by = by,
                            .face = doubled ? LW_ELASTIC_DOUBLED : LW_ELASTIC_HALF_SPACE,
                            .below_top_m = below,
                            .lean = tan(plane->batter_rad),
                            .height_m = plane->height_m - below,
                            .beside = 1.0};
}

static lw_elastic_push push_of(const lw_plane *plane, const lw_plane_load *load, lw_load_pressure by) {
  lw_elastic_reach r = lw_elastic_reach_of(plane, load, by);
  if (r.height_m <= 0.0) return (lw_elastic_push){0};
  if (lw_elastic_has_closed_form(&r)) return closed(&r);
  if (load->point && by == LW_LOAD_PRESSURE_CURVES) r.beside = share_in_front(load->near_m, r.height_m);
  return integrate(&r);
}

double lw_elastic_kpa_on(const lw_plane *plane, int load, lw_load_pressure by, double depth_m) {
  const lw_plane_load *on = &plane->load[load];
  lw_elastic_reach r = lw_elastic_reach_of(plane, on, by);
  double depth = depth_m - r.below_top_m;
  if (depth < 0.0 || r.height_m <= 0.0) return 0.0;
  if (on->point && by == LW_LOAD_PRESSURE_CURVES) r.beside = share_in_front(on->near_m, r.height_m);
  return pressure_kpa(&r, depth);
}

lw_elastic lw_elastic_push_on(const lw_plane *plane, lw_load_pressure by) {
  lw_elastic made = {0};
  double moment = 0.0;
  for (int i = 0; i < plane->load_count; i++) {
    made.load[i] = push_of(plane, &plane->load[i], by);
    made.push_kn_per_m += made.load[i].push_kn_per_m;
    moment += made.load[i].push_kn_per_m * made.load[i].height_m;
  }
  if (made.push_kn_per_m > 0.0) made.height_m = moment / made.push_kn_per_m;
  return made;
}

double lw_elastic_along(const lw_elastic *elastic, double angle_rad) {
  return elastic->push_kn_per_m / fmax(cos(angle_rad), 1e-9);
}
