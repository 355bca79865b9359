/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/pressure.h>
#include <math.h>
#include <string.h>

#include "rows.h"

/* Rows of earth_pressure.csv on earthquakes, curved surfaces of failure, Rankine on a battered back, and
 * ground at rest once loaded more heavily. Published tables of curved surfaces are held by the spiral, within
 * what the row allows: they come from other solutions of the same problem. */

#define DEG 57.295779513082320877

static lw_earth_state state_of(const case_row *row) {
  return case_is(row, "state", "passive") ? LW_PASSIVE : LW_ACTIVE;
}

static lw_wall_angles angles_of(const case_row *row) {
  return (lw_wall_angles){case_number(row, "phi", NAN), case_number(row, "delta", 0.0),
                          case_number(row, "batter", 0.0), case_number(row, "slope", 0.0)};
}

static case_outcome spiral(const case_row *row, double *value) {
  lw_wall_angles angles = angles_of(row);
  lw_status status = lw_log_spiral_coefficient(state_of(row), &angles, value, NULL, NULL);
  return status == LW_OK ? CASE_VALUE : CASE_NO_SOLUTION;
}

static case_outcome annex_c(const case_row *row, double *value) {
  lw_wall_angles angles = angles_of(row);
  lw_annex_c annex;
  if (lw_annex_c_coefficients(state_of(row), &angles, &annex, NULL, NULL) != LW_OK) return CASE_NO_SOLUTION;
  const struct {
    const char *quantity;
    double value;
  } parts[] = {{"Kg", annex.kg},
               {"Kq", annex.kq},
               {"Kc", annex.kc},
               {"Kn", annex.kn},
               {"mt", annex.ground_rad * DEG},
               {"mw", annex.wall_rad * DEG},
               {"v", annex.fan_rad * DEG}};
  for (size_t i = 0; i < sizeof parts / sizeof parts[0]; i++) {
    if (strcmp(row->quantity, parts[i].quantity) != 0) continue;
    *value = parts[i].value;
    return CASE_VALUE;
  }
  return CASE_UNSUPPORTED;
}

static case_outcome ufc(const case_row *row, double *value) {
  lw_status status =
      lw_ufc_passive_coefficient(case_number(row, "phi", NAN), case_number(row, "delta", NAN), value, NULL);
  return status == LW_OK ? CASE_VALUE : CASE_NO_SOLUTION;
}

static lw_plane shaken_plane(const case_row *row) {
  lw_wall_angles angles = angles_of(row);
  lw_plane plane = {.height_m = case_number(row, "H", 1.0),
                    .batter_rad = angles.batter_rad,
                    .wall_friction_rad = angles.wall_friction_rad,
                    .slope_rad = angles.slope_rad,
                    .slope_run_m = INFINITY,
                    .layer_count = 1,
                    .water_depth_m = INFINITY,
                    .water_unit_weight_kn_per_m3 = 9.81,
                    .seismic = {case_number(row, "kh", 0.0), case_number(row, "kv", 0.0), 0.6, false}};
  plane.layer[0] = (lw_layer){.bottom_m = INFINITY,
                              .friction_rad = angles.friction_rad,
                              .unit_weight_kn_per_m3 = case_number(row, "gamma", 1.0)};
  plane.layer[0].saturated_unit_weight_kn_per_m3 = plane.layer[0].unit_weight_kn_per_m3;
  return plane;
}

static case_outcome mononobe_okabe(const case_row *row, double *value) {
  lw_plane plane = shaken_plane(row);
  lw_wall_angles angles = angles_of(row);
  lw_thrust thrust;
  const char *q = row->quantity;
  double turn = atan2(plane.seismic.horizontal, 1.0 - plane.seismic.vertical);
  lw_status status = lw_mononobe_okabe_coefficient(state_of(row), &angles, turn, value, NULL);
  if (strcmp(q, "valid") == 0) {
    *value = status == LW_OK ? 1.0 : 0.0;
    return CASE_VALUE;
  }
  if (status != LW_OK) return CASE_NO_SOLUTION;
  if (q[0] == 'K') return CASE_VALUE;
  if (lw_coulomb_thrust(state_of(row), &plane, &thrust, NULL, NULL) != LW_OK) return CASE_NO_SOLUTION;
  if (strcmp(q, "psi") == 0)
    *value = thrust.seismic_turn_rad * DEG;
  else if (strcmp(q, "thrust") == 0)
    *value = thrust.total_kn_per_m;
  else if (strcmp(q, "thrust_height") == 0)
    *value = thrust.height_of_action_m;
  else
    return CASE_UNSUPPORTED;
  return CASE_VALUE;
}

static case_outcome seed_whitman(const case_row *row, double *value) {
  lw_wall_angles angles = angles_of(row);
  if (lw_coulomb_coefficient(LW_ACTIVE, &angles, value, NULL) != LW_OK) return CASE_NO_SOLUTION;
  *value += lw_seed_whitman_increment(case_number(row, "kh", NAN));
  return CASE_VALUE;
}

static case_outcome battered(const case_row *row, double *value) {
  double k, obliquity, height = case_number(row, "H", 1.0), weight = case_number(row, "gamma", 1.0);
  lw_wall_angles a = angles_of(row);
  if (lw_rankine_battered(a.friction_rad, a.slope_rad, a.batter_rad, &k, &obliquity, NULL) != LW_OK)
    return CASE_NO_SOLUTION;
  const char *q = row->quantity;
  if (strcmp(q, "Ka") == 0)
    *value = k;
  else if (strcmp(q, "obliquity") == 0)
    *value = obliquity * DEG;
  else if (strcmp(q, "thrust") == 0)
    *value = 0.5 * k * weight * height * height;
  else
    return CASE_UNSUPPORTED;
  return CASE_VALUE;
}

static case_outcome at_rest(const case_row *row, double *value) {
  lw_status status =
      lw_at_rest_overconsolidated(LW_OCR_MAYNE_KULHAWY, case_number(row, "phi", NAN),
                                  case_number(row, "slope", 0.0), case_number(row, "OCR", 1.0), value, NULL);
  return status == LW_OK ? CASE_VALUE : CASE_NO_SOLUTION;
}

case_outcome case_earthquake_or_curve(const case_row *row, double *value) {
  static const struct {
    const char *method;
    case_run run;
  } methods[] = {{"logspiral", spiral},
                 {"caquot_kerisel", spiral},
                 {"kerisel_absi", spiral},
                 {"sokolovskii", spiral},
                 {"soubra", spiral},
                 {"terzaghi_peck_wedge", spiral},
                 {"shields_tolunay", spiral},
                 {"zhu_qian", spiral},
                 {"en1997_c2", annex_c},
                 {"ufc_eq_4_12", ufc},
                 {"mononobe_okabe", mononobe_okabe},
                 {"seed_whitman", seed_whitman},
                 {"rankine_batter", battered},
                 {"mayne_kulhawy", at_rest}};
  for (size_t i = 0; i < sizeof methods / sizeof methods[0]; i++)
    if (case_is(row, "method", methods[i].method)) return methods[i].run(row, value);
  return CASE_UNSUPPORTED;
}
