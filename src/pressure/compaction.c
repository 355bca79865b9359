/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/compaction.h>

#include <math.h>

/* Compaction plant against a wall: what it leaves in the soil when it ran up to the wall, and what it presses
 * while it stands at a distance. */

static const double PI = 3.14159265358979323846;

static lw_status coefficient_of(const lw_compaction *c, double *k, lw_error *error) {
  bool yields = c->state == LW_ACTIVE;
  bool weighs = c->unit_weight_kn_per_m3 > 0.0 && isfinite(c->unit_weight_kn_per_m3);
  bool presses = c->line_load_kn_per_m >= 0.0 && isfinite(c->line_load_kn_per_m);
  if (c->state == LW_PASSIVE || !(c->friction_rad > 0.0) || !weighs || !presses)
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_ANGLE_OUT_OF_RANGE,
                        "compaction is for soil with friction and weight, against a wall that yields or not");
  return yields ? lw_rankine_coefficient(LW_ACTIVE, c->friction_rad, 0.0, k, error)
                : lw_at_rest_coefficient(c->friction_rad, 0.0, k, error);
}

static void record(const lw_compaction *c, const lw_compaction_diagram *d, const lw_working *working) {
  static const char source[] = "[INGOLD-1979 29(3)]";
  double p = c->line_load_kn_per_m, weight = c->unit_weight_kn_per_m3;
  bool yields = c->state == LW_ACTIVE;
  lw_working_step(working,
                  &(lw_step){.symbol = yields ? "Ka" : "K0",
                             .formula = yields ? "(1 - sin phi)/(1 + sin phi)" : "1 - sin phi",
                             .value = d->coefficient,
                             .unit = "",
                             .source = yields ? "[RANKINE1857 level ground]" : "[JAKY1944 1 - sin phi]"},
                  "phi = %.2f deg", c->friction_rad * LW_DEG_PER_RAD);
  lw_working_step(
      working,
      &(lw_step){
          .symbol = "zc", .formula = "K sqrt(2 p/(pi g))", .value = d->zc_m, .unit = "m", .source = source},
      "%.4f sqrt(2 x %.3f/(pi x %.2f))", d->coefficient, p, weight);
  lw_working_step(working,
                  &(lw_step){.symbol = "hc",
                             .formula = "(1/K) sqrt(2 p/(pi g))",
                             .value = d->hc_m,
                             .unit = "m",
                             .source = source},
                  "(1/%.4f) sqrt(2 x %.3f/(pi x %.2f))", d->coefficient, p, weight);
  lw_working_step(working,
                  &(lw_step){.symbol = "s",
                             .formula = "sqrt(2 p g/pi)",
                             .value = d->greatest_kpa,
                             .unit = "kPa",
                             .source = source},
                  "sqrt(2 x %.3f x %.2f/pi)", p, weight);
}

lw_status lw_compaction_solve(const lw_compaction *compaction, lw_compaction_diagram *diagram,
                              lw_error *error, const lw_working *working) {
  double k, weight = compaction->unit_weight_kn_per_m3;
  lw_status status = coefficient_of(compaction, &k, error);
  if (status != LW_OK) return status;
  double depth = sqrt(2.0 * compaction->line_load_kn_per_m / (PI * weight));
  *diagram = (lw_compaction_diagram){.coefficient = k,
                                     .unit_weight_kn_per_m3 = weight,
                                     .zc_m = k * depth,
                                     .hc_m = depth / k,
                                     .greatest_kpa = weight * depth};
  record(compaction, diagram, working);
  return LW_OK;
}

double lw_compaction_kpa(const lw_compaction_diagram *d, double depth_m) {
  if (depth_m < d->zc_m) return d->unit_weight_kn_per_m3 * depth_m / d->coefficient;
  return fmax(d->greatest_kpa, d->coefficient * d->unit_weight_kn_per_m3 * depth_m);
}

/* A straight piece of the diagram: its push, and the moment of it about a level `below` its lower end. */
static void add_piece(double top_kpa, double foot_kpa, double length_m, double below_m, double *push,
                      double *moment) {
  double part = 0.5 * (top_kpa + foot_kpa) * length_m;
  *push += part;
  *moment += part * below_m + (2.0 * top_kpa + foot_kpa) * length_m * length_m / 6.0;
}

lw_lateral lw_compaction_thrust(const lw_compaction_diagram *d, double height_m) {
  double push = 0.0, moment = 0.0, at[] = {0.0, d->zc_m, d->hc_m, height_m};
  for (int i = 0; i < 3; i++) {
    double top = fmin(at[i], height_m), foot = i < 2 ? fmin(at[i + 1], height_m) : height_m;
    if (foot > top)
      add_piece(lw_compaction_kpa(d, top), lw_compaction_kpa(d, foot), foot - top, height_m - foot, &push,
                &moment);
  }
  return (lw_lateral){.thrust_kn_per_m = push, .height_m = push > 0.0 ? moment / push : 0.0};
}

/* Boussinesq's point load, 3Q/(2π) x² z/R⁵ towards the wall, doubled, integrated first over depth and then
 * along the foot. With y half its length, c² = x² + h²:
 *   P   = (2p/π) [y/√(x² + y²) - x² y/(c² √(c² + y²))]
 *   ∫σz = (2p/π) [x atan(h t/x) - x² h t/c²],  t = y/√(c² + y²) */
lw_lateral lw_foot_thrust(const lw_foot *foot, double distance_m, double height_m) {
  double x = distance_m, h = height_m, y = 0.5 * foot->length_m, c2 = x * x + h * h;
  double near = isfinite(y) ? y / sqrt(x * x + y * y) : 1.0, t = isfinite(y) ? y / sqrt(c2 + y * y) : 1.0;
  double scale = 2.0 * foot->line_load_kn_per_m / PI;
  double push = scale * (near - x * x * t / c2);
  double about_top = scale * (x * atan(h * t / x) - x * x * h * t / c2);
  return (lw_lateral){.thrust_kn_per_m = push, .height_m = push > 0.0 ? h - about_top / push : 0.0};
}
