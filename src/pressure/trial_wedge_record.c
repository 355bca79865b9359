/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "base/bound.h"
#include "base/tell.h"
#include "base/working.h"
#include "trial_wedge_shape.h"

/* The critical wedge: its plane, what it weighs, what holds it along the plane, and the thrust. */

enum { TERMS = 440 };

static double degrees(double rad) {
  return rad * LW_DEG_PER_RAD;
}

/* The plane by the point where it ends, which trial found. */
static void record_plane(const lw_plane *plane, const lw_trial_wedge *wedge, const lw_working *working) {
  bool beyond = wedge->reach_m > plane->slope_run_m;
  bool leans = wedge->reach_m > plane->height_m * tan(plane->batter_rad);
  const char *on_slope =
      leans ? "atan((H + L tan b - zc)/(L - H tan t))" : "90 + atan((H tan t - L)/(H + L tan b - zc))";
  const char *past_it =
      leans ? "atan((H + Ls tan b - zc)/(L - H tan t))" : "90 + atan((H tan t - L)/(H + Ls tan b - zc))";
  const lw_bound bound[] = {{"H", plane->height_m, "m"},
                            {"L", wedge->reach_m, "m"},
                            {"Ls", plane->slope_run_m, "m"},
                            {"zc", wedge->crack_depth_m, "m"},
                            {"b", degrees(plane->slope_rad), "deg"},
                            {"t", degrees(plane->batter_rad), "deg"}};
  const lw_step step = {"rho", beyond ? past_it : on_slope, NULL, degrees(wedge->plane_angle_rad),
                        "deg", "[COULOMB1776 wedge]"};
  lw_working_bound(working, &step, bound, sizeof bound / sizeof *bound);
}

/* "0.2345 x 19.500 + 2.5000": areas at their weights, widths at their loads, and line loads. */
static void weights(const lw_trial_wedge_told *told, bool moved, const lw_working *working, char *out,
                    size_t size) {
  size_t used = 0;
  out[0] = '\0';
  for (int i = 0; i < told->weight_count && used < size; i++) {
    const lw_wedge_term *term = &told->weight[i];
    double each = moved ? term->moved : term->each;
    used += (size_t)lw_print(out + used, size - used, "%s%.5f x %.4f", used > 0 ? " + " : "",
                             lw_tell(working, term->in->size, term->size),
                             lw_tell(working, term->in->each, each));
  }
}

static void record_weight(const lw_trial_wedge_told *told, double weight, const lw_working *working) {
  char text[TERMS];
  weights(told, false, working, text, sizeof text);
  lw_working_step(working, &(lw_step){"W", "areas of soil x weight + loads on it", NULL, weight, "kN/m", ""},
                  "%s", text);
}

static void record_cohesion(const lw_trial_wedge_told *told, double cohesion, const lw_working *working) {
  char text[TERMS];
  size_t used = 0;
  if (cohesion <= 0.0) return;
  for (int i = 0; i < told->held_count && used < sizeof text; i++) {
    const lw_wedge_term *term = &told->held[i];
    used += (size_t)lw_print(text + used, sizeof text - used, "%s%.4f x %.5f", used > 0 ? " + " : "",
                             lw_tell(working, term->in->each, term->each),
                             lw_tell(working, term->in->size, term->size));
  }
  lw_working_step(working,
                  &(lw_step){"C", "sum of c x length of the plane in it", NULL, cohesion, "kN/m", ""}, "%s",
                  text);
}

/* Through several layers: each friction by the share of the stress that its stretch carries. */
static void record_friction(const lw_plane *plane, const lw_trial_wedge_told *told, double friction_tan,
                            const lw_working *working) {
  char over[TERMS], under[TERMS];
  size_t used = 0, below = 0;
  if (told->rub_count < 2) return;
  for (int i = 0; i < told->rub_count && used < sizeof over && below < sizeof under; i++) {
    const lw_wedge_term *rub = &told->rub[i];
    double phi = degrees(plane->layer[rub->layer].friction_rad),
           rubs = lw_tell(working, rub->in->size, rub->size);
    used += (size_t)lw_print(over + used, sizeof over - used, "%s%.5f tan %.4f", used > 0 ? " + " : "", rubs,
                             phi);
    below += (size_t)lw_print(under + below, sizeof under - below, "%s%.5f", below > 0 ? " + " : "", rubs);
  }
  lw_working_step(working,
                  &(lw_step){"phi", "of the layers, by the load on each stretch of the plane", NULL,
                             degrees(atan(friction_tan)), "deg", ""},
                  "atan((%s)/(%s))", over, under);
}

static void record_level(lw_earth_state state, const lw_plane *plane, const lw_wedge_body *body,
                         const lw_trial_wedge_told *told, const lw_working *working) {
  char text[TERMS];
  double kh = plane->seismic.horizontal;
  double level = lw_wedge_level(state == LW_PASSIVE ? -1.0 : 1.0, plane, body);
  const lw_bound bound[] = {
      {"kh", kh, ""}, {"Wm", body->moved_kn_per_m, "kN/m"}, {"N", body->push_kn_per_m, "kN/m"}};
  if (fabs(level) < 1e-12) return;
  weights(told, true, working, text, sizeof text);
  if (kh > 0.0)
    lw_working_step(working,
                    &(lw_step){"Wm", "the same by the weight that the earthquake moves", NULL,
                               body->moved_kn_per_m, "kN/m", ""},
                    "%s", text);
  const char *formula = state == LW_PASSIVE ? "N - kh Wm" : "N + kh Wm";
  const lw_step step = {"E", kh > 0.0 ? formula : "N", NULL, level, "kN/m", ""};
  lw_working_bound(working, &step, bound, sizeof bound / sizeof *bound);
}

static const char *formula_of(bool passive, bool level) {
  if (passive)
    return level ? "((1 - kv) W sin(rho + phi) + E cos(rho + phi) + C cos phi) / cos(rho + phi + d - t)"
                 : "(W sin(rho + phi) + C cos phi) / cos(rho + phi + d - t)";
  return level ? "((1 - kv) W sin(rho - phi) + E cos(rho - phi) - C cos phi) / cos(rho - phi - d - t)"
               : "(W sin(rho - phi) - C cos phi) / cos(rho - phi - d - t)";
}

static void record_thrust(lw_earth_state state, const lw_plane *plane, const lw_wedge_body *body,
                          const lw_trial_wedge *wedge, const lw_working *working) {
  bool passive = state == LW_PASSIVE;
  double e = lw_wedge_level(passive ? -1.0 : 1.0, plane, body), kv = plane->seismic.vertical;
  bool level = fabs(e) >= 1e-12 || fabs(kv) >= 1e-12;
  const lw_bound bound[] = {{"W", body->weight_kn_per_m, "kN/m"},
                            {"E", e, "kN/m"},
                            {"C", body->cohesion_kn_per_m, "kN/m"},
                            {"kv", kv, ""},
                            {"rho", degrees(wedge->plane_angle_rad), "deg"},
                            {"phi", degrees(atan(body->friction_tan)), "deg"},
                            {"d", degrees(plane->wall_friction_rad), "deg"},
                            {"t", degrees(plane->batter_rad), "deg"}};
  const lw_step step = {"P", formula_of(passive, level), NULL, wedge->thrust_kn_per_m, "kN/m", ""};
  lw_working_bound(working, &step, bound, sizeof bound / sizeof *bound);
}

void lw_trial_wedge_record(lw_earth_state state, const lw_wedge_frame *frame, const lw_wedge_body *body,
                           const lw_trial_wedge *wedge, const lw_working *working) {
  const lw_plane *plane = frame->plane;
  lw_trial_wedge_told told = {.weight_count = 0};
  lw_wedge_frame telling = *frame;
  lw_wedge_body again;
  lw_wedge_line line = {cos(wedge->plane_angle_rad), sin(wedge->plane_angle_rad), body->cracked_in};
  telling.told = &told;
  if (!working || !lw_wedge_body_of(&telling, &line, &again)) return;
  lw_working_heading(working, state == LW_PASSIVE ? "Wedge of soil, by trial the one that resists least"
                                                  : "Wedge of soil, by trial the one that pushes most");
  if (wedge->thrust_kn_per_m <= 0.0) {
    lw_working_step(working, &(lw_step){"P", "none, for every wedge stands by itself", NULL, 0.0, "kN/m", ""},
                    "0");
    return;
  }
  record_plane(plane, wedge, working);
  record_weight(&told, body->weight_kn_per_m, working);
  record_cohesion(&told, body->cohesion_kn_per_m, working);
  record_friction(plane, &told, body->friction_tan, working);
  record_level(state, plane, body, &told, working);
  record_thrust(state, plane, body, wedge, working);
}
