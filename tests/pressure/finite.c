/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <string.h>

#include <lowwall/lateral.h>
#include <lowwall/pressure.h>

#include "pressure/seismic.h"
#include "hostile.h"

static lw_status rankine(lw_earth_state state, const double *in, double *out) {
  return lw_rankine_coefficient(state, in[0], in[1], out, NULL);
}
static lw_status battered(lw_earth_state state, const double *in, double *out) {
  (void)state;
  return lw_rankine_battered(in[0], in[1], in[2], out, out + 1, NULL);
}
static lw_wall_angles angles(const double *in) {
  return (lw_wall_angles){in[0], in[1], in[2], in[3]};
}
static lw_status coulomb(lw_earth_state state, const double *in, double *out) {
  lw_wall_angles a = angles(in);
  return lw_coulomb_coefficient(state, &a, out, NULL);
}
static lw_status spiral(lw_earth_state state, const double *in, double *out) {
  lw_wall_angles a = angles(in);
  return lw_log_spiral_coefficient(state, &a, out, NULL, NULL);
}
static lw_status annex(lw_earth_state state, const double *in, double *out) {
  lw_wall_angles a = angles(in);
  lw_annex_c c = {0};
  lw_status status = lw_annex_c_coefficients(state, &a, &c, NULL, NULL);
  memcpy(out, &c, sizeof c);
  return status;
}
static lw_status shaken(lw_earth_state state, const double *in, double *out) {
  lw_wall_angles a = angles(in);
  return lw_mononobe_okabe_coefficient(state, &a, in[4], out, NULL);
}
static lw_status at_rest(lw_earth_state state, const double *in, double *out) {
  (void)state;
  return lw_at_rest_coefficient(in[0], in[1], out, NULL);
}
static lw_status once_loaded(lw_earth_state state, const double *in, double *out) {
  lw_overconsolidation rule = state == LW_ACTIVE ? LW_OCR_MAYNE_KULHAWY : LW_OCR_EN1997;
  return lw_at_rest_overconsolidated(rule, in[0], in[1], in[2], out, NULL);
}
static lw_status lancellotta(lw_earth_state state, const double *in, double *out) {
  lw_status status = state == LW_ACTIVE ? lw_lancellotta_coefficient(in[0], in[1], out, NULL)
                                        : lw_ufc_passive_coefficient(in[0], in[1], out, NULL);
  return status;
}
static lw_status frydman(lw_earth_state state, const double *in, double *out) {
  (void)state;
  return lw_frydman_keissar_coefficient(in[0], in[1], out, NULL, NULL);
}
static lw_status handy(lw_earth_state state, const double *in, double *out) {
  (void)state;
  return lw_handy_coefficient(in[0], out, NULL, NULL);
}
static lw_status pressure(lw_earth_state state, const double *in, double *out) {
  lw_layer layer = {.friction_rad = in[0], .cohesion_kpa = in[1]};
  return lw_rankine_pressure(state, &layer, in[2], in[3], out, NULL);
}
static lw_status compaction(lw_earth_state state, const double *in, double *out) {
  lw_compaction c = {in[2], in[1], in[0], state == LW_ACTIVE ? LW_ACTIVE : LW_AT_REST};
  lw_compaction_diagram d = {0};
  lw_status status = lw_compaction_solve(&c, &d, NULL, NULL);
  memcpy(out, &d, sizeof d);
  return status;
}
static lw_status slot(lw_earth_state state, const double *in, double *out) {
  lw_slot s = {in[0], in[1], in[2], in[3]};
  lw_lateral lateral = {0};
  (void)state;
  lw_status status = lw_slot_thrust(&s, in[4], in[5], &lateral, NULL, NULL);
  memcpy(out, &lateral, sizeof lateral);
  return status;
}
static lw_plane plane_of(const double *in) {
  return (lw_plane){.layer = {{.friction_rad = in[0],
                               .unit_weight_kn_per_m3 = in[1],
                               .saturated_unit_weight_kn_per_m3 = in[2],
                               .cohesion_kpa = in[3],
                               .bottom_m = INFINITY}},
                    .layer_count = 1,
                    .height_m = in[4],
                    .batter_rad = in[5],
                    .wall_friction_rad = in[6],
                    .slope_rad = in[7],
                    .slope_run_m = INFINITY,
                    .surcharge_kpa = in[8],
                    .water_depth_m = in[9],
                    .water_unit_weight_kn_per_m3 = in[10],
                    .seismic = {.horizontal = in[11]}};
}

static lw_status thrust_by(lw_status (*routine)(lw_earth_state, const lw_plane *, lw_thrust *, lw_error *,
                                                const lw_working *),
                           lw_earth_state state, const double *in, double *out) {
  lw_plane plane = plane_of(in);
  lw_thrust t = {0};
  lw_status status = routine(state, &plane, &t, NULL, NULL);
  const double values[HOSTILE_OUTPUTS] = {t.total_kn_per_m,     t.angle_rad,          t.horizontal_kn_per_m,
                                          t.vertical_kn_per_m,  t.height_of_action_m, t.surcharge_kn_per_m,
                                          t.surcharge_height_m, t.seismic_kn_per_m,   t.water_kn_per_m,
                                          t.water_height_m,     t.crack_depth_m,      t.coefficient};
  memcpy(out, values, sizeof values);
  return status;
}
static lw_status rankine_thrust(lw_earth_state state, const double *in, double *out) {
  return thrust_by(lw_rankine_thrust, state, in, out);
}
static lw_status coulomb_thrust(lw_earth_state state, const double *in, double *out) {
  return thrust_by(lw_coulomb_thrust, state, in, out);
}
static lw_status at_rest_thrust(lw_earth_state state, const double *in, double *out) {
  (void)state;
  return thrust_by(lw_at_rest_thrust, LW_AT_REST, in, out);
}
static lw_status spiral_thrust(lw_earth_state state, const double *in, double *out) {
  return thrust_by(lw_log_spiral_thrust, state, in, out);
}
static lw_status annex_thrust(lw_earth_state state, const double *in, double *out) {
  return thrust_by(lw_annex_c_thrust, state, in, out);
}
static lw_status wedge_thrust(lw_earth_state state, const double *in, double *out) {
  return thrust_by(lw_trial_wedge_as_thrust, state, in, out);
}
static lw_status seepage(lw_earth_state state, const double *in, double *out) {
  lw_plane plane = plane_of(in);
  lw_seepage s = {0};
  (void)state;
  lw_status status = lw_seepage_thrust(&plane, &s, NULL, NULL);
  memcpy(out, &s, sizeof s);
  return status;
}
static lw_status quake(lw_earth_state state, const double *in, double *out) {
  lw_plane plane = plane_of(in);
  lw_seismic_part part = {0};
  lw_status status = lw_seismic_find(state, &plane, &part, NULL);
  memcpy(out, &part, sizeof part);
  return status;
}

#define A_PLANE \
  { 0.55, 17.9, 19.8, 1.3, 1.37, 0.05, 0.2, 0.11, 2.4, 0.83, 9.81, 0.0 }
#define A_DRY_PLANE \
  { 0.55, 17.9, 19.8, 0.0, 1.37, 0.05, 0.2, 0.11, 2.4, 9.0, 9.81, 0.0 }
#define A_SHAKEN_PLANE \
  { 0.55, 17.9, 19.8, 0.0, 1.37, 0.05, 0.2, 0.11, 2.4, 9.0, 9.81, 0.1 }

static const hostile_formula formulas[] = {
    {"rankine", rankine, 2, 0, -1, {0.55, 0.2}},
    {"battered", battered, 3, 0, -1, {0.55, 0.2, 0.1}},
    {"coulomb", coulomb, 4, 0, -1, {0.55, 0.3, 0.1, 0.2}},
    {"log spiral", spiral, 4, 0, -1, {0.55, 0.3, 0.1, 0.2}},
    {"annex c", annex, 4, 0, -1, {0.55, 0.3, 0.1, 0.2}},
    {"mononobe okabe", shaken, 5, 0, -1, {0.55, 0.3, 0.1, 0.2, 0.05}},
    {"at rest", at_rest, 2, 0, -1, {0.55, 0.2}},
    {"overconsolidated", once_loaded, 3, 0, -1, {0.55, 0.2, 1.7}},
    {"lancellotta, ufc", lancellotta, 2, 0, -1, {0.55, 0.2}},
    {"frydman", frydman, 2, 0, -1, {0.55, 0.2}},
    {"handy", handy, 1, 0, -1, {0.55}},
    {"pressure", pressure, 4, 0, -1, {0.55, 1.3, 0.2, 20.7}},
    {"compaction", compaction, 3, 0, 1, {0.55, 17.9, 13.0}},
    {"slot", slot, 6, -1, 1, {0.7, 17.9, 0.3, 2.4, 0.31, 1.37}},
    {"rankine thrust", rankine_thrust, 12, 0, 1, A_PLANE},
    {"coulomb thrust", coulomb_thrust, 12, 0, 1, A_PLANE},
    {"at rest thrust", at_rest_thrust, 12, 0, 1, A_PLANE},
    {"wedge thrust", wedge_thrust, 12, 0, 1, A_PLANE},
    {"spiral thrust", spiral_thrust, 12, 0, 1, A_PLANE},
    {"annex c thrust", annex_thrust, 12, 0, 1, A_PLANE},
    {"dry coulomb", coulomb_thrust, 12, 0, 1, A_DRY_PLANE},
    {"shaken coulomb", coulomb_thrust, 12, 0, 1, A_SHAKEN_PLANE},
    {"shaken wedge", wedge_thrust, 12, 0, 1, A_SHAKEN_PLANE},
    {"shaken at rest", at_rest_thrust, 12, 0, 1, A_SHAKEN_PLANE},
    {"quake", quake, 12, 0, 1, A_SHAKEN_PLANE},
    {"seepage", seepage, 12, 0, 1, {0.55, 17.9, 19.8, 0.0, 1.37, 0.0, 0.2, 0.0, 2.4, 0.83, 9.81, 0.0}},
};
enum { FORMULAS = sizeof formulas / sizeof *formulas };

Test(pressure, a_formula_answers_in_finite_numbers_or_not_at_all) {
  for (int i = 0; i < FORMULAS; i++) {
    hostile_ask(&formulas[i], LW_ACTIVE);
    hostile_ask(&formulas[i], LW_PASSIVE);
  }
}

/* A plane that a slip of the pen made: walked down for ever, or past the end of a list, were it taken. */
Test(pressure, a_plane_that_cannot_be_has_no_answer) {
  static const double in[HOSTILE_INPUTS] = A_DRY_PLANE;
  lw_plane good = plane_of(in), plane[8];
  lw_status (*const routines[])(lw_earth_state, const lw_plane *, lw_thrust *, lw_error *,
                                const lw_working *) = {lw_rankine_thrust,    lw_coulomb_thrust,
                                                       lw_at_rest_thrust,    lw_trial_wedge_as_thrust,
                                                       lw_log_spiral_thrust, lw_annex_c_thrust};
  for (int i = 0; i < 8; i++) plane[i] = good;
  plane[0].layer[0].bottom_m = 0.5; /* nothing below it */
  plane[1].layer_count = 2;         /* out of order */
  plane[1].layer[1] = plane[1].layer[0];
  plane[1].layer[0].bottom_m = 0.6;
  plane[1].layer[1].bottom_m = 0.4;
  plane[2].layer_count = LW_SOIL_MAX + 1;
  plane[3].layer_count = 0;
  plane[4].load_count = LW_SITE_LOAD_MAX + 1;
  plane[5].height_m = 0.0;
  plane[6] = (lw_plane){0};
  plane[7].layer[0].bottom_m = NAN;
  for (int i = 0; i < 8; i++)
    for (size_t k = 0; k < sizeof routines / sizeof *routines; k++) {
      lw_thrust thrust = {.total_kn_per_m = -1.0};
      lw_error error = {0};
      cr_expect_eq(routines[k](LW_ACTIVE, &plane[i], &thrust, &error, NULL), LW_NO_SOLUTION, "plane %d", i);
      cr_expect_eq(error.reason, LW_REASON_OUT_OF_RANGE, "plane %d: %s", i, error.text);
      cr_expect_lt(thrust.total_kn_per_m, 0.0, "unchanged on failure");
    }
}
