/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <string.h>

#include <lowwall/ground.h>

#include "../pressure/hostile.h"

static lw_status bearing_by(lw_bearing_method method, const double *in, double *out) {
  lw_strip strip = {.friction_rad = in[0],
                    .unit_weight_kn_per_m3 = in[1],
                    .width_m = in[2],
                    .eccentricity_m = in[3],
                    .depth_m = in[4],
                    .overburden_kpa = in[5],
                    .cohesion_kpa = in[6],
                    .vertical_kn_per_m = in[7],
                    .horizontal_kn_per_m = in[8]};
  lw_bearing b = {0};
  lw_status status = lw_bearing_routine_of(method)->ultimate(&strip, &b, NULL, NULL);
  const double values[] = {b.nc, b.nq,      b.n_gamma,           b.dc,           b.dq,     b.d_gamma, b.ic,
                           b.iq, b.i_gamma, b.effective_width_m, b.ultimate_kpa, b.net_kpa};
  memcpy(out, values, sizeof values);
  return status;
}

static lw_status terzaghi(lw_earth_state state, const double *in, double *out) {
  return bearing_by(state == LW_ACTIVE ? LW_BEARING_TERZAGHI : LW_BEARING_EN1997, in, out);
}
static lw_status meyerhof(lw_earth_state state, const double *in, double *out) {
  return bearing_by(state == LW_ACTIVE ? LW_BEARING_MEYERHOF : LW_BEARING_VESIC, in, out);
}
static lw_status hansen(lw_earth_state state, const double *in, double *out) {
  (void)state;
  return bearing_by(LW_BEARING_HANSEN, in, out);
}

static lw_status free_face(lw_earth_state state, const double *in, double *out) {
  lw_slip_soil soil = {.friction_rad = in[0], .unit_weight_kn_per_m3 = in[1], .cohesion_kpa = in[2]};
  (void)state;
  return lw_free_face_height(&soil, in[3], in[4], out, NULL);
}

/* A slope of 1:2, 5.3 m high, and a circle through its toe. */
static lw_status circle(lw_earth_state state, const double *in, double *out) {
  lw_slip_ground ground = {.corner_count = 4,
                           .corner = {{-20.0, 0.0}, {0.0, 0.0}, {10.6, in[3]}, {40.0, 5.3}},
                           .below = {.friction_rad = in[0],
                                     .unit_weight_kn_per_m3 = in[1],
                                     .saturated_unit_weight_kn_per_m3 = in[1],
                                     .cohesion_kpa = in[2]},
                           .water = {.front_y_m = in[4], .rear_y_m = in[4], .unit_weight_kn_per_m3 = in[5]},
                           .floor_y_m = -INFINITY,
                           .layer_x_m = INFINITY,
                           .raised_x_m = INFINITY,
                           .seismic_horizontal = in[6]};
  lw_slip_circle c = {.centre_x_m = in[7], .centre_y_m = in[8], .radius_m = in[9]};
  lw_slip slip = {0};
  (void)state;
  c.exit_x_m = c.centre_x_m - sqrt(fmax(c.radius_m * c.radius_m - c.centre_y_m * c.centre_y_m, 0.0));
  c.entry_y_m = 5.3;
  double above = c.centre_y_m - 5.3;
  c.entry_x_m = c.centre_x_m + sqrt(fmax(c.radius_m * c.radius_m - above * above, 0.0));
  lw_status status = lw_slip_of_circle(&ground, &c, 20, &slip, NULL);
  out[0] = slip.bishop;
  out[1] = slip.ordinary;
  out[2] = slip.driving_kn_per_m;
  return status;
}

static lw_status slices(lw_earth_state state, const double *in, double *out) {
  lw_slip_slices list = {.count = 1};
  lw_slip slip = {0};
  list.slice[0] = (lw_slip_slice){.tan_friction = tan(in[0]),
                                  .weight_kn_per_m = in[1],
                                  .sine = in[2],
                                  .cosine = in[3],
                                  .width_m = in[4],
                                  .length_m = in[5],
                                  .pore_kpa = in[6],
                                  .cohesion_kpa = in[7]};
  lw_slip_method method = state == LW_ACTIVE ? LW_SLIP_BISHOP : LW_SLIP_ORDINARY;
  lw_status status = lw_slip_of_slices(&list, NULL, 0.0, method, &slip, NULL);
  out[0] = slip.bishop;
  out[1] = slip.ordinary;
  out[2] = slip.driving_kn_per_m;
  return status;
}

#define A_STRIP \
  { 0.55, 17.9, 1.37, 0.11, 0.31, 5.7, 1.3, 61.3, 7.1 }

static const hostile_formula formulas[] = {
    {"terzaghi, en1997", terzaghi, 9, -1, -1, A_STRIP},
    {"meyerhof, vesic", meyerhof, 9, -1, -1, A_STRIP},
    {"hansen", hansen, 9, -1, -1, A_STRIP},
    {"free face", free_face, 5, -1, 1, {0.35, 17.9, 5.3, 1.3, 1.1}},
    {"circle", circle, 10, -1, -1, {0.35, 17.9, 3.3, 5.3, -1.0, 9.81, 0.05, 4.0, 8.0, 8.9}},
    {"slices", slices, 8, -1, -1, {0.35, 17.9, 0.3, 0.954, 1.1, 1.15, 2.3, 3.1}},
};
enum { FORMULAS = sizeof formulas / sizeof *formulas };

Test(checks, a_formula_answers_in_finite_numbers_or_not_at_all) {
  for (int i = 0; i < FORMULAS; i++) {
    hostile_ask(&formulas[i], LW_ACTIVE);
    hostile_ask(&formulas[i], LW_PASSIVE);
  }
}

Test(checks, bearing_has_no_answer_at_90_degrees_or_in_degrees) {
  for (int method = LW_BEARING_TERZAGHI; method <= LW_BEARING_EN1997; method++) {
    double in[HOSTILE_INPUTS] = A_STRIP, out[HOSTILE_OUTPUTS];
    in[0] = acos(0.0);
    cr_expect_eq(bearing_by((lw_bearing_method)method, in, out), LW_NO_SOLUTION, "method %d", method);
    in[0] = 30.0;
    cr_expect_eq(bearing_by((lw_bearing_method)method, in, out), LW_NO_SOLUTION, "method %d", method);
  }
}

/* What is divided by a width next to nothing overflows. */
Test(checks, a_footing_next_to_no_width_wide_has_no_answer) {
  const lw_strip strip = {.width_m = 1e-312, .depth_m = 1.0, .vertical_kn_per_m = 1.0};
  for (int method = LW_BEARING_TERZAGHI; method <= LW_BEARING_EN1997; method++) {
    lw_bearing b;
    if (lw_bearing_routine_of((lw_bearing_method)method)->ultimate(&strip, &b, NULL, NULL) != LW_OK) continue;
    cr_expect(isfinite(b.dc + b.dq + b.d_gamma + b.ultimate_kpa), "method %d", method);
  }
}
