/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/pressure.h>

#include <assert.h>
#include <math.h>

#include "base/bound.h"
#include "base/working.h"
#include "profile_record.h"

/* Thrusts by curved surfaces, each layer at its own coefficient, and the list of the methods. */

typedef struct layer_law {
  double k, cut_kpa;
} layer_law;

/* A layer that is asked about; what comes of it is written to the working. */
typedef struct asked {
  lw_earth_state state;
  lw_wall_angles angles;
  double cohesion_kpa;
  const lw_working *working;
} asked;

typedef lw_status (*layer_rule)(const asked *of, layer_law *law, lw_error *error);

/* What cohesion takes off the pressure, or adds to it where the soil resists. */
static void write_cohesion(const asked *of, const char *formula, const lw_bound *more, double kpa) {
  const lw_bound bound[] = {{"c", of->cohesion_kpa, "kPa"},
                            {"d", of->angles.wall_friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"t", of->angles.batter_rad * LW_DEG_PER_RAD, "deg"},
                            *more};
  const lw_step step = {"pc", formula, NULL, kpa, "kPa", ""};
  if (of->cohesion_kpa > 0.0) lw_working_bound(of->working, &step, bound, sizeof bound / sizeof bound[0]);
}

static lw_status by_spiral(const asked *of, layer_law *law, lw_error *error) {
  lw_status status = lw_log_spiral_coefficient(of->state, &of->angles, &law->k, error, of->working);
  if (status != LW_OK) return status;
  bool passive = of->state == LW_PASSIVE;
  double pc = 2.0 * of->cohesion_kpa * sqrt(law->k);
  law->cut_kpa = passive ? -pc : pc;
  write_cohesion(of, passive ? "2 c sqrt(Kp)" : "2 c sqrt(Ka)",
                 &(lw_bound){passive ? "Kp" : "Ka", law->k, ""}, pc);
  return LW_OK;
}

static lw_status by_annex_c(const asked *of, layer_law *law, lw_error *error) {
  lw_annex_c annex;
  lw_status status = lw_annex_c_coefficients(of->state, &of->angles, &annex, error, of->working);
  if (status != LW_OK) return status;
  double along_back = cos(of->angles.wall_friction_rad) * cos(of->angles.batter_rad);
  double sign = of->state == LW_PASSIVE ? -1.0 : 1.0;
  *law = (layer_law){annex.k, sign * annex.kc * of->cohesion_kpa / along_back};
  write_cohesion(of, "Kc c/(cos d cos t)", &(lw_bound){"Kc", annex.kc, ""}, sign * law->cut_kpa);
  return LW_OK;
}

static lw_status integrate(const lw_plane *plane, layer_rule rule, const asked *all, lw_thrust *thrust,
                           lw_error *error) {
  double theta = plane->batter_rad, beta = plane->slope_rad, delta = plane->wall_friction_rad;
  lw_law law = {.surcharge_factor = cos(theta) * cos(beta) / cos(theta - beta), .working = all->working};
  double angle = all->state == LW_PASSIVE ? theta - delta : theta + delta;
  for (int i = 0; i < plane->layer_count; i++) {
    const lw_layer *layer = &plane->layer[i];
    asked of = *all;
    layer_law found = {0};
    of.angles = (lw_wall_angles){layer->friction_rad, delta, theta, beta};
    of.cohesion_kpa = layer->cohesion_kpa;
    lw_layer_heading(plane, i, all->working);
    lw_status status = rule(&of, &found, error);
    if (status != LW_OK) return status;
    law.k[i] = found.k;
    law.cut_kpa[i] = found.cut_kpa;
  }
  lw_profile_integrate(plane, &law, angle, thrust);
  return LW_OK;
}

/* A rule and what the working calls it. */
typedef struct way {
  const char *title;
  layer_rule rule;
} way;

static lw_status thrust_by(const way *by, const asked *all, const lw_plane *plane, lw_thrust *thrust,
                           lw_error *error) {
  if (lw_plane_hold(plane, error) != LW_OK) return LW_NO_SOLUTION;
  if (fabs(plane->seismic.horizontal) > 0.0 || fabs(plane->seismic.vertical) > 0.0)
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NO_WEDGE,
                        "curved surfaces are not computed in an earthquake");
  lw_working_heading(all->working, by->title);
  lw_status status = integrate(plane, by->rule, all, thrust, error);
  return status;
}

lw_status lw_log_spiral_thrust(lw_earth_state state, const lw_plane *plane, lw_thrust *thrust,
                               lw_error *error, const lw_working *working) {
  static const way SPIRAL = {"Logarithmic spiral through the foot", by_spiral};
  const asked all = {.state = state, .working = working};
  return thrust_by(&SPIRAL, &all, plane, thrust, error);
}

lw_status lw_annex_c_thrust(lw_earth_state state, const lw_plane *plane, lw_thrust *thrust, lw_error *error,
                            const lw_working *working) {
  static const way ANNEX_C = {"EN 1997-1 annex C.2", by_annex_c};
  const asked all = {.state = state, .working = working};
  return thrust_by(&ANNEX_C, &all, plane, thrust, error);
}

const lw_pressure_routine *lw_passive_routine_of(lw_passive_by by) {
  if (by == LW_PASSIVE_BY_RANKINE) return lw_pressure_routine_of(LW_PRESSURE_RANKINE);
  if (by == LW_PASSIVE_BY_COULOMB) return lw_pressure_routine_of(LW_PRESSURE_COULOMB);
  static const lw_pressure_routine routines[] = {
      [LW_PASSIVE_LOG_SPIRAL] = {"log spiral", "logarithmic spiral through the foot",
                                 "[TERZAGHI-1943 spiral]", lw_log_spiral_thrust},
      [LW_PASSIVE_ANNEX_C] = {"annex c", "closed form of EN 1997-1 annex C.2", "[EN1997-1 annex C.2]",
                              lw_annex_c_thrust},
  };
  assert((size_t)by < sizeof routines / sizeof routines[0]);
  return by == LW_PASSIVE_OWN ? NULL : &routines[by];
}

const lw_pressure_routine *lw_active_routine_of(lw_pressure_method method, lw_active_by by) {
  bool annex = method == LW_PRESSURE_COULOMB && by == LW_ACTIVE_ANNEX_C;
  return annex ? lw_passive_routine_of(LW_PASSIVE_ANNEX_C) : lw_pressure_routine_of(method);
}
