/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "base/angles.h"
#include "base/extremes.h"

#include "base/solve.h"
#include "profile.h"
#include "seismic.h"
#include "trial_wedge_shape.h"

/* Trial wedges: the thrust that holds (active) or lifts (passive) the body above a plane through the
 * foot, greatest (least) over the plane's angle. It knows nothing of the closed formulas.
 * [COULOMB1776 wedge] */

/* One hump needs few trials to be found, several need many. */
enum { SCAN_SMOOTH = 4, SCAN = 48, SCAN_BROKEN = 180 };
typedef struct search {
  lw_wedge_frame frame;
  double sign;               /* 1 active, -1 passive */
  double cos_lean, sin_lean; /* of the thrust to the horizontal */
  int cracking;              /* layers, from the top, that keep a crack open: without cohesion it closes */
} search;

static search search_of(lw_earth_state state, const lw_plane *plane) {
  double sign = state == LW_PASSIVE ? -1.0 : 1.0, lean = sign * plane->wall_friction_rad + plane->batter_rad;
  search s = {lw_wedge_frame_of(plane), sign, cos(lean), sin(lean), 0};
  while (state == LW_ACTIVE && s.cracking < plane->layer_count && plane->layer[s.cracking].cohesion_kpa > 0.0)
    s.cracking++;
  return s;
}

/* Equilibrium of the body: weight, level push, thrust at δ to the normal of the back, reaction at φ to that
 * of the failure plane, cohesion along it, both parts divided by cos φ:
 * P = (W sin(ρ-φ) + E cos(ρ-φ) - C cos φ) / cos(ρ-φ-δ-θ). NAN where the directions do not close. */
static double thrust_of(const search *s, const lw_wedge_line *line, lw_wedge_body *body) {
  if (!lw_wedge_body_of(&s->frame, line, body)) return NAN;
  double rub = s->sign * body->friction_tan;
  double up = line->rise - rub * line->run, along = line->run + rub * line->rise;
  double closing = along * s->cos_lean + up * s->sin_lean;
  if (closing <= 1e-9) return NAN;
  double weight = body->weight_kn_per_m * (1.0 - s->frame.plane->seismic.vertical);
  double level = lw_wedge_level(s->sign, s->frame.plane, body);
  return (weight * up + level * along - s->sign * body->cohesion_kn_per_m) / closing;
}

/* Soil with cohesion may crack or not, and down to any layer: whichever pushes most. A load beyond a crack
 * may keep it shut. */
static double thrust_at(const search *s, double half_tan, lw_wedge_body *body) {
  double square = half_tan * half_tan, over = 1.0 / (1.0 + square);
  lw_wedge_line line = {(1.0 - square) * over, 2.0 * half_tan * over, -1};
  double most = thrust_of(s, &line, body);
  for (line.cracked_in = 0; line.cracked_in < s->cracking; line.cracked_in++) {
    lw_wedge_body parted;
    double thrust = thrust_of(s, &line, &parted);
    if (isnan(thrust) || thrust <= most) continue;
    most = thrust;
    *body = parted;
  }
  return most;
}

/* The search is for a least value: the active thrust is turned over. It goes through the tangent of half the
 * angle, from which sine and cosine follow by one division. */
static double to_minimise(double half_tan, const void *context) {
  const search *s = context;
  lw_wedge_body body;
  return -s->sign * thrust_at(s, half_tan, &body);
}

static bool broken(const lw_plane *plane) {
  return plane->load_count > 0 || (isfinite(plane->slope_run_m) && fabs(plane->slope_rad) > 1e-12) ||
         plane->layer_count > 1;
}

/* Dry soil without cohesion under an even load: the thrust has one hump. */
static int trials_for(const lw_plane *plane) {
  if (broken(plane)) return SCAN_BROKEN;
  bool cracks = plane->layer[0].cohesion_kpa > 0.0, wet = plane->water_depth_m < plane->height_m;
  bool shaken = plane->seismic.horizontal > 0.0;
  return cracks || wet || shaken ? SCAN : SCAN_SMOOTH;
}

/* A load steps onto the body all at once: planes that just reach each load, and each bend, are tried too. */
static void try_corners(const search *s, double low, double high, lw_minimum *best) {
  const lw_plane *plane = s->frame.plane;
  for (int i = -1; i < 2 * plane->load_count; i++) {
    const lw_plane_load *load = &plane->load[i < 0 ? 0 : i / 2];
    double x = i < 0 ? plane->slope_run_m : (i % 2 ? load->far_m : load->near_m);
    if (!isfinite(x)) continue;
    double to = i < 0 ? lw_wedge_angle_to(&s->frame, x) : lw_wedge_angle_to_load(&s->frame, load, x);
    double half_tan = tan(0.5 * to) - 1e-12;
    if (half_tan <= low || half_tan >= high) continue;
    double value = to_minimise(half_tan, s);
    if (isfinite(value) && value < best->value) *best = (lw_minimum){half_tan, value};
  }
}

/* A line through a point of the body, parallel to the failure plane, meets the back there. */
static double meets_back(const lw_plane *plane, double angle_rad, double x_m, double y_m) {
  double rise = sin(angle_rad), run = cos(angle_rad), lean = tan(plane->batter_rad);
  double level = run + rise * lean;
  if (level < 1e-9) return plane->height_m / 3.0;
  double y = (y_m * run - x_m * rise) / level;
  return lw_smaller(lw_larger(y, 0.0), plane->height_m);
}

/* What the weight makes of the thrust acts by the body's centroid, what a push makes of it by the push's
 * place. The thrust is linear in both. */
static double height_of(const search *s, double angle_rad, const lw_wedge_body *body, double thrust) {
  const lw_plane *plane = s->frame.plane;
  double by_weight = meets_back(plane, angle_rad, body->x_m, body->y_m);
  double rub = s->sign * body->friction_tan, rise = sin(angle_rad), run = cos(angle_rad);
  double along = run + rub * rise, up = rise - rub * run;
  double by_push = body->push_kn_per_m * along / (along * s->cos_lean + up * s->sin_lean);
  if (by_push <= 1e-12 || thrust <= 1e-12) return by_weight;
  double share = lw_smaller(by_push / thrust, 1.0);
  double at_push = meets_back(plane, angle_rad, body->push_x_m, body->push_y_m);
  return by_weight + share * (at_push - by_weight);
}

static lw_status no_wedge(const lw_plane *plane, lw_error *error) {
  const lw_layer *soil = &plane->layer[0];
  if (plane->slope_rad <= soil->friction_rad && plane->seismic.horizontal > 0.0)
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NO_SEISMIC_WEDGE,
                        "in this earthquake the ground slides by itself");
  if (fabs(plane->slope_rad) > soil->friction_rad && isinf(plane->slope_run_m))
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_STEEPER_THAN_FRICTION,
                        "the ground is steeper than the soil's own angle of friction");
  return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NO_WEDGE, "no wedge of soil is critical");
}

lw_status lw_trial_wedge_thrust(lw_earth_state state, const lw_plane *plane, lw_trial_wedge *wedge,
                                lw_error *error, const lw_working *working) {
  if (lw_plane_hold(plane, error) != LW_OK) return LW_NO_SOLUTION;
  search s = search_of(state, plane);
  if (state == LW_AT_REST)
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NO_WEDGE_AT_REST, "at rest no wedge slides");
  /* Such a back is held down and back by what lies on it, by a force without bound. */
  if (state == LW_ACTIVE && plane->batter_rad + plane->wall_friction_rad > LW_HALF_PI - 1e-3)
    return lw_error_set(
        error, LW_NO_SOLUTION, LW_REASON_ANGLE_OUT_OF_RANGE,
        "batter and friction of the back turn the thrust past the upright: nothing pushes level");
  bool endless = isinf(plane->slope_run_m), active = state == LW_ACTIVE;
  double low = (endless ? plane->slope_rad : 0.0) + 1e-6, high = LW_HALF_PI + plane->batter_rad - 1e-9;
  lw_minimum best;
  double steepest = plane->slope_rad + lw_layer_turned(plane, 0, plane->water_depth_m <= 0.0);
  double friction = plane->layer[0].friction_rad;
  bool slides = endless && (active ? steepest > friction : -plane->slope_rad > friction);
  if (!(low < high) || slides) return no_wedge(plane, error);
  double from = tan(0.5 * low), to = tan(0.5 * high);
  lw_status status = lw_solve_minimum(to_minimise, &s, from, to, trials_for(plane), &best);
  if (status != LW_OK) return no_wedge(plane, error);
  try_corners(&s, from, to, &best);
  double angle = 2.0 * atan(best.x);
  lw_wedge_body body;
  if (isnan(thrust_at(&s, best.x, &body))) return no_wedge(plane, error);
  /* The flatter the plane the greater the thrust: in this earthquake nothing holds the ground back. */
  bool endless_body = angle < low + 1e-4;
  if (active && endless_body && plane->seismic.horizontal > 0.0) return no_wedge(plane, error);
  *wedge = (lw_trial_wedge){.thrust_kn_per_m = state == LW_PASSIVE ? best.value : lw_larger(-best.value, 0.0),
                            .plane_angle_rad = angle,
                            .weight_kn_per_m = body.weight_kn_per_m,
                            .reach_m = body.reach_m,
                            .crack_depth_m = body.crack_depth_m,
                            .height_of_action_m = height_of(&s, angle, &body, fabs(best.value))};
  lw_trial_wedge_record(state, &s.frame, &body, wedge, working);
  return LW_OK;
}

lw_status lw_trial_wedge_as_thrust(lw_earth_state state, const lw_plane *plane, lw_thrust *thrust,
                                   lw_error *error, const lw_working *working) {
  lw_trial_wedge wedge, moving = {0};
  lw_plane still = *plane;
  bool shaken = plane->seismic.horizontal > 0.0 || fabs(plane->seismic.vertical) > 0.0;
  still.seismic = (lw_seismic){0};
  lw_status status = lw_plane_hold(plane, error);
  if (status == LW_OK) status = lw_trial_wedge_thrust(state, &still, &wedge, error, working);
  if (status == LW_OK && shaken) status = lw_trial_wedge_thrust(state, plane, &moving, error, working);
  if (status != LW_OK) return status;
  double sign = state == LW_PASSIVE ? -1.0 : 1.0;
  *thrust = (lw_thrust){.total_kn_per_m = wedge.thrust_kn_per_m,
                        .angle_rad = plane->batter_rad + sign * plane->wall_friction_rad,
                        .height_of_action_m = wedge.height_of_action_m,
                        .crack_depth_m = wedge.crack_depth_m};
  for (int i = 0; i < plane->layer_count && state == LW_PASSIVE; i++)
    thrust->passive_unsafe =
        thrust->passive_unsafe || plane->wall_friction_rad > plane->layer[i].friction_rad / 3.0 + 1e-9;
  lw_thrust_add_water(plane, thrust);
  lw_thrust_resolve(thrust);
  lw_seismic_part part = {.increment_kn_per_m = moving.thrust_kn_per_m - wedge.thrust_kn_per_m,
                          .moving_kn_per_m = moving.thrust_kn_per_m,
                          .still_kn_per_m = wedge.thrust_kn_per_m,
                          .turn_rad = lw_layer_turned(plane, lw_layer_at(plane, plane->height_m),
                                                      plane->water_depth_m < plane->height_m)};
  lw_seismic_add(state, plane, &part, thrust, working);
  return LW_OK;
}
