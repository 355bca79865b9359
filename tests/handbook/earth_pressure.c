/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/pressure.h>
#include <math.h>
#include <string.h>

#include "rows.h"

/* Published coefficients and thrusts, each through the public interface. One row keeps one system of units,
 * and the formulas do not care which. Earthquakes and curved surfaces of failure: earthquake_and_curves.c. */

#define DEG 57.295779513082320877

static lw_earth_state state_of(const case_row *row) {
  return case_is(row, "state", "passive") ? LW_PASSIVE : LW_ACTIVE;
}

static lw_plane plane_of(const case_row *row) {
  lw_plane plane = {
      .height_m = case_number(row, "H", 1.0),
      .batter_rad = case_number(row, "batter", 0.0),
      .wall_friction_rad = case_number(row, "delta", 0.0),
      .slope_rad = case_number(row, "slope", 0.0),
      .slope_run_m = INFINITY,
      .surcharge_kpa = case_number(row, "q", 0.0),
      .layer_count = 1,
      .water_depth_m = case_number(row, "zw", INFINITY),
      .water_unit_weight_kn_per_m3 = case_number(row, "gw", 9.81),
  };
  double weight = case_number(row, "gamma", 1.0);
  plane.layer[0] = (lw_layer){.bottom_m = INFINITY,
                              .friction_rad = case_number(row, "phi", 0.0),
                              .cohesion_kpa = case_number(row, "c", 0.0),
                              .unit_weight_kn_per_m3 = weight,
                              .saturated_unit_weight_kn_per_m3 = weight};
  return plane;
}

/* The part of a thrust that the row asks for. */
static case_outcome part_of(const case_row *row, const lw_thrust *thrust, double *value) {
  const char *q = row->quantity;
  bool passive = state_of(row) == LW_PASSIVE;
  if (strcmp(q, "thrust") == 0)
    *value = thrust->total_kn_per_m;
  else if (strcmp(q, "thrust_h") == 0)
    *value = thrust->horizontal_kn_per_m;
  else if (strcmp(q, "thrust_v") == 0)
    *value = (passive ? -1.0 : 1.0) * thrust->vertical_kn_per_m;
  else if (strcmp(q, "thrust_height") == 0)
    *value = thrust->height_of_action_m;
  else if (strcmp(q, "crack_depth") == 0)
    *value = thrust->crack_depth_m;
  else
    return CASE_UNSUPPORTED;
  return CASE_VALUE;
}

static bool asks_for_coefficient(const case_row *row) {
  return row->quantity[0] == 'K';
}

static case_outcome run_coulomb(const case_row *row, double *value) {
  lw_plane plane = plane_of(row);
  lw_wall_angles angles = {.friction_rad = plane.layer[0].friction_rad,
                           .wall_friction_rad = plane.wall_friction_rad,
                           .batter_rad = plane.batter_rad,
                           .slope_rad = plane.slope_rad};
  lw_error error = {0};
  lw_thrust thrust;
  if (!asks_for_coefficient(row)) {
    lw_status status = lw_coulomb_thrust(state_of(row), &plane, &thrust, &error, NULL);
    return status == LW_OK ? part_of(row, &thrust, value) : CASE_NO_SOLUTION;
  }
  if (lw_coulomb_coefficient(state_of(row), &angles, value, &error) != LW_OK) {
    cr_expect_eq(error.reason, LW_REASON_STEEPER_THAN_FRICTION, "%s: refused for another reason", row->id);
    return CASE_NO_SOLUTION;
  }
  if (strcmp(row->quantity, "Kah") == 0) *value *= cos(angles.wall_friction_rad + angles.batter_rad);
  return CASE_VALUE;
}

static case_outcome run_rankine(const case_row *row, double *value) {
  lw_plane plane = plane_of(row);
  lw_thrust thrust;
  plane.along_ground = true;
  plane.wall_friction_rad = plane.slope_rad;
  if (asks_for_coefficient(row)) {
    double phi = plane.layer[0].friction_rad;
    lw_status status = lw_rankine_coefficient(state_of(row), phi, plane.slope_rad, value, NULL);
    return status == LW_OK ? CASE_VALUE : CASE_NO_SOLUTION;
  }
  if (lw_rankine_thrust(state_of(row), &plane, &thrust, NULL, NULL) != LW_OK) return CASE_NO_SOLUTION;
  return part_of(row, &thrust, value);
}

/* A coefficient that is given: the soil whose level Rankine coefficient it is gives the thrust. */
static case_outcome run_given(const case_row *row, double *value) {
  lw_plane plane = plane_of(row);
  double k = case_number(row, "K", NAN), ratio = state_of(row) == LW_PASSIVE ? 1.0 / k : k;
  lw_thrust thrust;
  plane.layer[0].friction_rad = asin((1.0 - ratio) / (1.0 + ratio));
  if (lw_rankine_thrust(state_of(row), &plane, &thrust, NULL, NULL) != LW_OK) return CASE_NO_SOLUTION;
  return part_of(row, &thrust, value);
}

/* The book takes a triangle from the crack's foot to the base; with its own coefficient only the crack is
 * ours. */
static case_outcome run_triangle(const case_row *row, lw_plane *plane, double *value) {
  lw_thrust thrust;
  double k = case_number(row, "K", NAN), h = plane->height_m;
  plane->crack = LW_CRACK_TRIANGLE;
  if (lw_rankine_thrust(LW_ACTIVE, plane, &thrust, NULL, NULL) != LW_OK) return CASE_NO_SOLUTION;
  if (strcmp(row->quantity, "thrust_after_crack") != 0) return part_of(row, &thrust, value);
  double base = k * plane->layer[0].unit_weight_kn_per_m3 * h * cos(plane->slope_rad);
  *value = isnan(k) ? thrust.total_kn_per_m : 0.5 * base * (h - thrust.crack_depth_m);
  return CASE_VALUE;
}

static case_outcome run_cohesive(const case_row *row, double *value) {
  lw_plane plane = plane_of(row);
  double pressure;
  if (!asks_for_coefficient(row)) return run_triangle(row, &plane, value);
  plane.layer[0].cohesion_kpa = case_number(row, "cn", NAN);
  if (lw_rankine_pressure(state_of(row), &plane.layer[0], plane.slope_rad, 1.0, &pressure, NULL) != LW_OK)
    return CASE_NO_SOLUTION;
  *value = pressure / cos(plane.slope_rad);
  return CASE_VALUE;
}

static case_outcome run_crack(const case_row *row, double *value) {
  lw_plane plane = plane_of(row);
  lw_thrust thrust;
  plane.height_m = 10.0;
  if (lw_rankine_thrust(LW_ACTIVE, &plane, &thrust, NULL, NULL) != LW_OK) return CASE_NO_SOLUTION;
  return part_of(row, &thrust, value);
}

/* "2/15.72/30/0|1/18.86/26/10 m,kN/m3,deg,kPa": thickness, weight, friction, cohesion from the top down. */
static void read_layers(const case_row *row, lw_plane *plane) {
  char list[CASE_CELL_MAX];
  double depth = 0.0;
  cr_assert(case_word(row, "layers", list, sizeof list));
  plane->layer_count = 0;
  for (const char *at = list;; at++) {
    double number[4];
    for (int i = 0; i < 4; i++) {
      size_t length = strcspn(at, "/| ");
      cr_assert(lw_number_read(at, length, &number[i]), "%s: layers", row->id);
      at += length + (i < 3 ? 1 : 0);
    }
    depth += number[0];
    plane->layer[plane->layer_count++] = (lw_layer){.bottom_m = *at == '|' ? depth : INFINITY,
                                                    .friction_rad = number[2] / DEG,
                                                    .cohesion_kpa = number[3],
                                                    .unit_weight_kn_per_m3 = number[1],
                                                    .saturated_unit_weight_kn_per_m3 = number[1]};
    if (*at != '|') break;
  }
  plane->height_m = depth;
}

static double profile_at(const case_row *row, const lw_thrust *thrust) {
  double z = case_number(row, "z", NAN), found = NAN;
  bool below = case_is(row, "side", "below");
  for (int i = 0; i < thrust->profile_count; i++) {
    bool here = fabs(thrust->profile[i].depth_m - z) < 1e-9;
    if (here && (below || isnan(found))) found = thrust->profile[i].soil_kpa;
  }
  return found;
}

/* With tension counted the level diagram is one straight line, from its two ends. */
static case_outcome run_uncracked(const case_row *row, const lw_plane *plane, double *value) {
  const lw_layer *soil = &plane->layer[0];
  double top, foot, h = plane->height_m, weight = soil->unit_weight_kn_per_m3;
  cr_assert_eq(plane->layer_count, 1);
  if (lw_rankine_pressure(LW_ACTIVE, soil, 0.0, 0.0, &top, NULL) != LW_OK) return CASE_NO_SOLUTION;
  if (lw_rankine_pressure(LW_ACTIVE, soil, 0.0, weight * h, &foot, NULL) != LW_OK) return CASE_NO_SOLUTION;
  lw_thrust thrust = {.total_kn_per_m = 0.5 * (top + foot) * h};
  thrust.height_of_action_m = h * h * (2.0 * top + foot) / 6.0 / thrust.total_kn_per_m;
  return part_of(row, &thrust, value);
}

static case_outcome run_layers(const case_row *row, double *value) {
  lw_plane plane = plane_of(row);
  lw_thrust thrust;
  read_layers(row, &plane);
  if (case_is(row, "crack", "no")) return run_uncracked(row, &plane, value);
  if (lw_rankine_thrust(state_of(row), &plane, &thrust, NULL, NULL) != LW_OK) return CASE_NO_SOLUTION;
  if (strcmp(row->quantity, "pressure") == 0) {
    *value = profile_at(row, &thrust);
    return CASE_VALUE;
  }
  /* These rows count the water in. */
  double soil = thrust.total_kn_per_m, water = thrust.water_kn_per_m;
  thrust.height_of_action_m =
      (soil * thrust.height_of_action_m + water * thrust.water_height_m) / (soil + water);
  thrust.total_kn_per_m = soil + water;
  return part_of(row, &thrust, value);
}

static case_outcome run_at_rest(const case_row *row, double *value) {
  double sign = case_is(row, "method", "k0_slope_minus") ? -1.0 : 1.0;
  double phi = case_number(row, "phi", NAN), slope = case_number(row, "slope", 0.0);
  lw_status status = lw_at_rest_overconsolidated(LW_OCR_EN1997, phi, sign * slope,
                                                 case_number(row, "OCR", 1.0), value, NULL);
  return status == LW_OK ? CASE_VALUE : CASE_NO_SOLUTION;
}

static case_outcome run_wedge(const case_row *row, double *value) {
  lw_plane plane = plane_of(row);
  lw_trial_wedge wedge;
  double at = case_number(row, "load_x", NAN);
  if (!isnan(at)) {
    plane.load_count = 1;
    plane.load[0] =
        (lw_plane_load){.near_m = at, .far_m = at, .force_kn_per_m = case_number(row, "load", NAN)};
  }
  if (lw_trial_wedge_thrust(state_of(row), &plane, &wedge, NULL, NULL) != LW_OK) return CASE_NO_SOLUTION;
  bool angle = strcmp(row->quantity, "plane_angle") == 0;
  if (!angle && strcmp(row->quantity, "thrust") != 0) return CASE_UNSUPPORTED;
  *value = angle ? wedge.plane_angle_rad * DEG : wedge.thrust_kn_per_m;
  return CASE_VALUE;
}

case_outcome case_earth_pressure(const case_row *row, double *value) {
  static const struct {
    const char *method;
    case_run run;
  } methods[] = {{"coulomb", run_coulomb},        {"rankine_slope", run_rankine},
                 {"given_K", run_given},          {"rankine_cphi_slope", run_cohesive},
                 {"rankine_layers", run_layers},  {"crack", run_crack},
                 {"jaky", run_at_rest},           {"k0_slope_plus", run_at_rest},
                 {"k0_slope_minus", run_at_rest}, {"trial_wedge", run_wedge}};
  for (size_t i = 0; i < sizeof methods / sizeof methods[0]; i++)
    if (case_is(row, "method", methods[i].method)) return methods[i].run(row, value);
  return case_earthquake_or_curve(row, value);
}

Test(handbook, earth_pressure) {
  cr_assert_eq(case_hold_all("tests/handbook/earth_pressure.csv", case_earth_pressure), 541 + 520);
}
