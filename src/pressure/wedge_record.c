/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "wedge_shape.h"

static void record_plane(lw_earth_state state, const lw_wedge *wedge, const lw_working *working) {
  lw_working_step(working,
                  &(lw_step){.symbol = "rho",
                             .formula = state == LW_PASSIVE ? "failure plane with the least thrust"
                                                            : "failure plane with the greatest thrust",
                             .value = wedge->plane_angle_rad * LW_DEG_PER_RAD,
                             .unit = "deg",
                             .source = "[COULOMB1776 wedge]"},
                  "reaching %.3f m behind the wall", wedge->reach_m);
  if (wedge->crack_depth_m <= 0.0) return;
  lw_working_step(working,
                  &(lw_step){.symbol = "zc",
                             .formula = "crack behind the wedge, where soil would pull",
                             .value = wedge->crack_depth_m,
                             .unit = "m",
                             .source = ""},
                  "at %.3f m behind the wall", wedge->reach_m);
}

static void record_weight(const lw_plane *plane, const lw_wedge_body *body, const lw_working *working) {
  double load = plane->surcharge_kpa * body->reach_m;
  lw_working_step(working,
                  &(lw_step){.symbol = "W",
                             .formula = "weight of the soil above the plane + loads on it",
                             .value = body->weight_kn_per_m,
                             .unit = "kN/m",
                             .source = ""},
                  "%.3f + %.3f, of it uniform load %.2f kPa x %.3f m = %.3f kN/m",
                  body->weight_kn_per_m - load, load, plane->surcharge_kpa, body->reach_m, load);
  if (body->cohesion_kn_per_m <= 0.0) return;
  lw_working_step(working,
                  &(lw_step){.symbol = "C",
                             .formula = "cohesion x length of the failure plane",
                             .value = body->cohesion_kn_per_m,
                             .unit = "kN/m",
                             .source = ""},
                  "c = %.2f kPa in the first layer", plane->layer[0].cohesion_kpa);
}

static void record_level(lw_earth_state state, const lw_plane *plane, const lw_wedge_body *body,
                         const lw_working *working) {
  double sign = state == LW_PASSIVE ? -1.0 : 1.0, level = lw_wedge_level(sign, plane, body);
  if (fabs(level) < 1e-12) return;
  lw_working_step(working,
                  &(lw_step){.symbol = "E",
                             .formula = "earthquake on the body and its loads + level push of loads",
                             .value = level,
                             .unit = "kN/m",
                             .source = ""},
                  "%+.3f x %.3f + %.3f", sign * plane->seismic.horizontal, body->moved_kn_per_m,
                  body->push_kn_per_m);
}

static const char *formula_of(bool passive, bool level) {
  if (passive)
    return level ? "((1 - kv) W sin(rho + phi) + E cos(rho + phi) + C cos phi) / cos(rho + phi + d - t)"
                 : "(W sin(rho + phi) + C cos phi) / cos(rho + phi + d - t)";
  return level ? "((1 - kv) W sin(rho - phi) + E cos(rho - phi) - C cos phi) / cos(rho - phi - d - t)"
               : "(W sin(rho - phi) - C cos phi) / cos(rho - phi - d - t)";
}

static void record_thrust(lw_earth_state state, const lw_plane *plane, const lw_wedge_body *body,
                          const lw_wedge *wedge, const lw_working *working) {
  bool passive = state == LW_PASSIVE;
  double rho = wedge->plane_angle_rad * LW_DEG_PER_RAD, phi = atan(body->friction_tan) * LW_DEG_PER_RAD;
  double d = plane->wall_friction_rad * LW_DEG_PER_RAD, t = plane->batter_rad * LW_DEG_PER_RAD;
  double e = lw_wedge_level(passive ? -1.0 : 1.0, plane, body), kv = plane->seismic.vertical;
  bool level = fabs(e) >= 1e-12 || fabs(kv) >= 1e-12;
  char sign = passive ? '+' : '-', shaken[96] = "";
  if (level) lw_print(shaken, sizeof shaken, " + %.3f cos(%.3f %c %.2f)", e, rho, sign, phi);
  lw_working_step(working,
                  &(lw_step){.symbol = "P",
                             .formula = formula_of(passive, level),
                             .value = wedge->thrust_kn_per_m,
                             .unit = "kN/m",
                             .source = ""},
                  "(%.3f sin(%.3f %c %.2f)%s %c %.3f cos %.2f) / cos(%.3f %c %.2f %c %.2f - %.2f)",
                  body->weight_kn_per_m * (1.0 - kv), rho, sign, phi, shaken, sign, body->cohesion_kn_per_m,
                  phi, rho, sign, phi, sign, d, t);
}

void lw_wedge_record(lw_earth_state state, const lw_plane *plane, const lw_wedge_body *body,
                     const lw_wedge *wedge, const lw_working *working) {
  if (!working) return;
  lw_working_heading(working, "Wedge of soil, by trial");
  record_plane(state, wedge, working);
  record_weight(plane, body, working);
  record_level(state, plane, body, working);
  record_thrust(state, plane, body, wedge, working);
}
