/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "base/bound.h"
#include "base/working.h"
#include "profile_record.h"
#include "seismic.h"

/* Rankine: a soil mass on the point of failure throughout, thrust on a vertical plane, along the ground. */

lw_status lw_rankine_coefficient(lw_earth_state state, double friction_rad, double slope_rad, double *k,
                                 lw_error *error) {
  double phi = friction_rad, beta = slope_rad;
  if (!(phi >= 0.0) || phi >= acos(0.0))
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_ANGLE_OUT_OF_RANGE,
                        "the friction angle must be from 0 to less than 90 deg");
  if (!(fabs(beta) <= phi + 1e-12))
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_STEEPER_THAN_FRICTION,
                        "ground at %.1f deg is steeper than friction of %.1f deg", beta * LW_DEG_PER_RAD,
                        phi * LW_DEG_PER_RAD);
  double c = cos(beta), s = sqrt(fmax(c * c - cos(phi) * cos(phi), 0.0));
  *k = state == LW_PASSIVE ? c * (c + s) / (c - s) : c * (c - s) / (c + s);
  return LW_OK;
}

lw_status lw_rankine_battered(double friction_rad, double slope_rad, double batter_rad, double *k,
                              double *obliquity_rad, lw_error *error) {
  double upright, sp = sin(friction_rad), sb = sin(slope_rad);
  lw_status status = lw_rankine_coefficient(LW_ACTIVE, friction_rad, slope_rad, &upright, error);
  if (status != LW_OK) return status;
  if (!(friction_rad > 0.0) || !(fabs(batter_rad) < acos(0.0)))
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_ANGLE_OUT_OF_RANGE,
                        "friction must be above 0 and the back's angle below 90 deg");
  double turn = asin(fmin(fmax(sb / sp, -1.0), 1.0)) - slope_rad + 2.0 * batter_rad;
  double length = sqrt(1.0 + sp * sp - 2.0 * sp * cos(turn)), square = cos(batter_rad) * cos(batter_rad);
  *k =
      cos(slope_rad - batter_rad) * length / (square * (cos(slope_rad) + sqrt(fmax(sp * sp - sb * sb, 0.0))));
  *obliquity_rad = atan2(sp * sin(turn), 1.0 - sp * cos(turn));
  return LW_OK;
}

/* Cohesion under sloping ground: the Mohr circle through the stress on a plane parallel to the ground that
 * touches the envelope. Pressure along the ground, as a function of the vertical stress. [MG1997 eq.18] */
static double sloped(lw_earth_state state, const lw_layer *layer, double slope_rad, double stress_kpa) {
  double phi = layer->friction_rad, beta = slope_rad, c = layer->cohesion_kpa;
  double cb2 = cos(beta) * cos(beta), cp = cos(phi), sp = sin(phi);
  double root = 4.0 * cb2 * (cb2 - cp * cp) * stress_kpa * stress_kpa + 4.0 * c * c * cp * cp +
                8.0 * c * stress_kpa * cb2 * sp * cp;
  double sign = state == LW_PASSIVE ? 1.0 : -1.0;
  double k_stress =
      (2.0 * cb2 * stress_kpa + 2.0 * c * cp * sp + sign * sqrt(fmax(root, 0.0))) / (cp * cp) - stress_kpa;
  return k_stress * cos(beta);
}

lw_status lw_rankine_pressure(lw_earth_state state, const lw_layer *layer, double slope_rad,
                              double stress_kpa, double *pressure_kpa, lw_error *error) {
  double k;
  lw_status status = lw_rankine_coefficient(state, layer->friction_rad, slope_rad, &k, error);
  if (status != LW_OK) return status;
  double pressure = sloped(state, layer, slope_rad, stress_kpa);
  if (!isfinite(pressure) || !(stress_kpa >= 0.0) || !(layer->cohesion_kpa >= 0.0))
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_OUT_OF_RANGE,
                        "the stress and the cohesion must be 0 or more");
  *pressure_kpa = pressure;
  return LW_OK;
}

static double sloped_active(const lw_layer *layer, double slope_rad, double stress_kpa) {
  return sloped(LW_ACTIVE, layer, slope_rad, stress_kpa);
}

static double sloped_passive(const lw_layer *layer, double slope_rad, double stress_kpa) {
  return sloped(LW_PASSIVE, layer, slope_rad, stress_kpa);
}

static void tell_by(lw_earth_state state, const char *symbol, const lw_layer *layer, double slope_rad,
                    double stress_kpa, const lw_working *working) {
  static const char *const FORMULA[] = {
      [LW_ACTIVE] = "cos b ((2 s cos^2 b + 2 c cos phi sin phi - sqrt(4 s^2 cos^2 b (cos^2 b - cos^2 phi) + "
                    "4 c^2 cos^2 phi + 8 c s cos^2 b sin phi cos phi))/cos^2 phi - s)",
      [LW_PASSIVE] = "cos b ((2 s cos^2 b + 2 c cos phi sin phi + sqrt(4 s^2 cos^2 b (cos^2 b - cos^2 phi) + "
                     "4 c^2 cos^2 phi + 8 c s cos^2 b sin phi cos phi))/cos^2 phi - s)"};
  const lw_bound bound[] = {{"b", slope_rad * LW_DEG_PER_RAD, "deg"},
                            {"phi", layer->friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"c", layer->cohesion_kpa, "kPa"},
                            {"s", stress_kpa, "kPa"}};
  const lw_step step = {.symbol = symbol,
                        .formula = FORMULA[state],
                        .value = sloped(state, layer, slope_rad, stress_kpa),
                        .unit = "kPa",
                        .source = "[MG1997 eq.18]"};
  lw_working_bound(working, &step, bound, sizeof bound / sizeof *bound);
}

static void tell_sloped(const char *symbol, const lw_layer *layer, double slope_rad, double stress_kpa,
                        const lw_working *working) {
  tell_by(LW_ACTIVE, symbol, layer, slope_rad, stress_kpa, working);
}

static void tell_sloped_passive(const char *symbol, const lw_layer *layer, double slope_rad,
                                double stress_kpa, const lw_working *working) {
  tell_by(LW_PASSIVE, symbol, layer, slope_rad, stress_kpa, working);
}

/* A layer's coefficient and, where its law is a straight line, what its cohesion takes off. */
static void record(const lw_plane *plane, int i, lw_earth_state state, double k, const lw_working *working) {
  const lw_layer *layer = &plane->layer[i];
  const lw_bound bound[] = {{"b", plane->slope_rad * LW_DEG_PER_RAD, "deg"},
                            {"phi", layer->friction_rad * LW_DEG_PER_RAD, "deg"}};
  bool passive = state == LW_PASSIVE, curved = layer->cohesion_kpa > 0.0 && fabs(plane->slope_rad) > 1e-12;
  const char *symbol = passive ? "Kp" : "Ka";
  const lw_step step = {
      symbol,
      passive ? "cos b (cos b + sqrt(cos^2 b - cos^2 phi)) / (cos b - sqrt(cos^2 b - cos^2 phi))"
              : "cos b (cos b - sqrt(cos^2 b - cos^2 phi)) / (cos b + sqrt(cos^2 b - cos^2 phi))",
      NULL,
      k,
      "",
      "[RANKINE1857 loose earth]"};
  if (working == NULL || !lw_layer_is_met(plane, i)) return;
  lw_layer_heading(plane, i, working);
  if (curved) return;
  lw_working_bound(working, &step, bound, sizeof bound / sizeof *bound);
  lw_cohesion_record(symbol, k, layer->cohesion_kpa, working);
}

lw_status lw_rankine_thrust(lw_earth_state state, const lw_plane *plane, lw_thrust *thrust, lw_error *error,
                            const lw_working *working) {
  lw_law law = {.surcharge_factor = 1.0, .working = working};
  if (lw_plane_hold(plane, error) != LW_OK) return LW_NO_SOLUTION;
  lw_working_heading(working, "Rankine, on a vertical plane");
  double sign = state == LW_PASSIVE ? -1.0 : 1.0;
  for (int i = 0; i < plane->layer_count; i++) {
    const lw_layer *layer = &plane->layer[i];
    lw_status status = lw_rankine_coefficient(state, layer->friction_rad, plane->slope_rad, &law.k[i], error);
    if (status != LW_OK) return status;
    law.cut_kpa[i] = sign * 2.0 * layer->cohesion_kpa * sqrt(law.k[i]);
    record(plane, i, state, law.k[i], working);
  }
  if (fabs(plane->slope_rad) > 1e-12) {
    law.curved = state == LW_PASSIVE ? sloped_passive : sloped_active;
    law.tell_curved = state == LW_PASSIVE ? tell_sloped_passive : tell_sloped;
  }
  lw_seismic_part part;
  lw_status status = lw_seismic_find(state, plane, &part, error);
  if (status != LW_OK) return status;
  lw_profile_integrate(plane, &law, plane->slope_rad, thrust);
  lw_seismic_add(state, plane, &part, thrust, working);
  return LW_OK;
}
