/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include <lowwall/diagram.h>
#include <lowwall/lateral.h>
#include <lowwall/ground.h>
#include <lowwall/pressure.h>
#include <lowwall/report.h>

#include "fuzz.h"

/* The formulas that a student calls: an answer in finite numbers, or none. */

static void finite(const double *values, size_t count) {
  for (size_t i = 0; i < count; i++) FUZZ_EXPECT(isfinite(values[i]));
}
#define FINITE(...) \
  finite((const double[]){__VA_ARGS__}, sizeof((const double[]){__VA_ARGS__}) / sizeof(double))

static lw_layer layer_of(fuzz_bytes *from) {
  return (lw_layer){.bottom_m = fuzz_double(from, 0.1, 3.0),
                    .friction_rad = fuzz_double(from, 0.0, 0.9),
                    .cohesion_kpa = fuzz_double(from, 0.0, 10.0),
                    .unit_weight_kn_per_m3 = fuzz_double(from, 12.0, 24.0),
                    .saturated_unit_weight_kn_per_m3 = fuzz_double(from, 12.0, 24.0),
                    .overconsolidation = fuzz_double(from, 0.0, 4.0)};
}

static lw_plane plane_of(fuzz_bytes *from) {
  lw_plane p;
  lw_plane_init(&p);
  p.height_m = fuzz_double(from, 0.2, 4.0);
  p.batter_rad = fuzz_double(from, -0.4, 0.4);
  p.wall_friction_rad = fuzz_double(from, -0.2, 0.6);
  p.slope_rad = fuzz_double(from, -0.5, 0.6);
  p.surcharge_kpa = fuzz_double(from, 0.0, 20.0);
  unsigned more = fuzz_byte(from);
  if (more & 1) p.slope_run_m = fuzz_double(from, 0.0, 5.0);
  if (more & 2) p.water_depth_m = fuzz_double(from, -1.0, 3.0);
  if (more & 4)
    p.seismic = (lw_seismic){fuzz_double(from, 0.0, 0.4), fuzz_double(from, -0.2, 0.2), 0.5, more & 8};
  p.crack = (lw_crack)(fuzz_byte(from) % 3);
  p.layer_count = (int)fuzz_below(from, LW_SOIL_MAX + 2);
  for (int i = 0; i < p.layer_count && i < LW_SOIL_MAX; i++) p.layer[i] = layer_of(from);
  if (p.layer_count > 0 && p.layer_count <= LW_SOIL_MAX && (more & 16) == 0)
    p.layer[p.layer_count - 1].bottom_m = INFINITY;
  p.load_count = more & 32 ? 1 : 0;
  p.load[0] = (lw_plane_load){.near_m = fuzz_double(from, 0.0, 3.0),
                              .far_m = fuzz_double(from, 0.0, 5.0),
                              .pressure_kpa = fuzz_double(from, 0.0, 30.0),
                              .force_kn_per_m = fuzz_double(from, 0.0, 20.0),
                              .below_m = fuzz_double(from, 0.0, 1.0)};
  return p;
}

static void thrusts(fuzz_bytes *from) {
  static lw_status (*const routines[])(lw_earth_state, const lw_plane *, lw_thrust *, lw_error *,
                                       const lw_working *) = {lw_rankine_thrust,    lw_coulomb_thrust,
                                                              lw_at_rest_thrust,    lw_trial_wedge_as_thrust,
                                                              lw_log_spiral_thrust, lw_annex_c_thrust};
  lw_plane p = plane_of(from);
  lw_earth_state state = (lw_earth_state)(fuzz_byte(from) % 2);
  lw_seepage s;
  for (size_t i = 0; i < sizeof routines / sizeof *routines; i++) {
    lw_thrust t;
    if (routines[i](state, &p, &t, NULL, NULL) != LW_OK) continue;
    FINITE(t.total_kn_per_m, t.angle_rad, t.horizontal_kn_per_m, t.vertical_kn_per_m, t.height_of_action_m,
           t.surcharge_kn_per_m, t.seismic_kn_per_m, t.water_kn_per_m, t.water_height_m, t.crack_depth_m);
    FUZZ_EXPECT(t.profile_count <= LW_PROFILE_MAX);
  }
  if (lw_seepage_thrust(&p, &s, NULL, NULL) == LW_OK)
    FINITE(s.dry_kn_per_m, s.seeping_kn_per_m, s.blocked_kn_per_m, s.plane_angle_rad);
}

/* Every spot of the picture is somewhere. */
static void drawn(const lw_diagram *d, unsigned how) {
  const lw_pressure_page page = {d, how & 1 ? "Ask." : "", "A plane",
                                 how & 2 ? LW_UNITS_US : LW_UNITS_METRIC};
  lw_drawing drawing = {0};
  if (lw_draw_pressure(&page, how & 4 ? 95.0 : 180.0, &drawing, NULL) == LW_OK)
    for (size_t i = 0; i < drawing.spot_count; i++) FINITE(drawing.spot[i].x_mm, drawing.spot[i].y_mm);
  lw_drawing_free(&drawing);
}

/* All methods at once, on two planes that need not fit each other; and drawn. */
static void diagrams(fuzz_bytes *from) {
  static lw_diagram d;
  const lw_diagram_asked asked = {
      .back = plane_of(from), .upright = plane_of(from), .loads_by = (lw_load_pressure)(fuzz_byte(from) % 5)};
  lw_diagram_find(&asked, &d, NULL);
  FINITE(d.water_kn_per_m, d.loads.push_kn_per_m, d.loads.height_m);
  FUZZ_EXPECT(d.depth_count <= LW_DIAGRAM_DEPTHS);
  for (int i = 0; i < LW_WAY_COUNT; i++)
    if (d.way[i].known) FINITE(d.way[i].level_kn_per_m, d.way[i].level_height_m, d.way[i].mean_k.value);
  for (int i = 0; i < d.depth_count; i++)
    for (int k = 0; k < LW_WAY_COUNT; k++)
      FINITE(d.depth[i].stress_kpa, d.depth[i].loads_kpa, d.depth[i].soil_kpa[k].value,
             d.depth[i].uniform_kpa[k].value, d.depth[i].down_to_kn_per_m[k].value);
  drawn(&d, fuzz_byte(from));
}

static void coefficients(fuzz_bytes *from) {
  lw_wall_angles a = {fuzz_double(from, 0.0, 1.5), fuzz_double(from, -0.5, 1.0), fuzz_double(from, -1.0, 1.0),
                      fuzz_double(from, -1.0, 1.0)};
  lw_annex_c annex;
  double k, turn, psi = fuzz_double(from, 0.0, 0.5);
  lw_earth_state state = fuzz_byte(from) % 2 ? LW_PASSIVE : LW_ACTIVE;
  if (lw_rankine_coefficient(state, a.friction_rad, a.slope_rad, &k, NULL) == LW_OK) FINITE(k);
  if (lw_coulomb_coefficient(state, &a, &k, NULL) == LW_OK) FINITE(k);
  if (lw_log_spiral_coefficient(state, &a, &k, NULL, NULL) == LW_OK) FINITE(k);
  if (lw_annex_c_coefficients(state, &a, &annex, NULL, NULL) == LW_OK) FINITE(annex.k, annex.kc);
  if (lw_mononobe_okabe_coefficient(state, &a, psi, &k, NULL) == LW_OK) FINITE(k);
  if (lw_rankine_battered(a.friction_rad, a.slope_rad, a.batter_rad, &k, &turn, NULL) == LW_OK)
    FINITE(k, turn);
  if (lw_frydman_keissar_coefficient(a.friction_rad, a.wall_friction_rad, &k, NULL, NULL) == LW_OK) FINITE(k);
}

static void footings(fuzz_bytes *from) {
  lw_strip s = {.width_m = fuzz_double(from, 0.1, 3.0),
                .eccentricity_m = fuzz_double(from, 0.0, 1.0),
                .depth_m = fuzz_double(from, 0.0, 2.0),
                .overburden_kpa = fuzz_double(from, 0.0, 30.0),
                .friction_rad = fuzz_double(from, 0.0, 0.9),
                .cohesion_kpa = fuzz_double(from, 0.0, 30.0),
                .unit_weight_kn_per_m3 = fuzz_double(from, 0.0, 24.0),
                .vertical_kn_per_m = fuzz_double(from, 0.0, 200.0),
                .horizontal_kn_per_m = fuzz_double(from, 0.0, 90.0)};
  for (int method = LW_BEARING_TERZAGHI; method <= LW_BEARING_EN1997; method++) {
    lw_bearing b;
    if (lw_bearing_routine_of((lw_bearing_method)method)->ultimate(&s, &b, NULL, NULL) == LW_OK)
      FINITE(b.nc, b.nq, b.n_gamma, b.ic, b.iq, b.i_gamma, b.ultimate_kpa, b.net_kpa);
  }
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count) {
  fuzz_bytes from = {bytes, count};
  switch (fuzz_byte(&from) % 4) {
  case 0: thrusts(&from); break;
  case 1: coefficients(&from); break;
  case 2: diagrams(&from); break;
  default: footings(&from); break;
  }
  return 0;
}
