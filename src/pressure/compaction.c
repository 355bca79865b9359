/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/lateral.h>

#include <math.h>

#include "base/angles.h"
#include "base/bound.h"

/* Compaction plant against a wall: what it leaves in the soil when it ran up to the wall, and what it presses
 * while it stands at a distance. */

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

static const char INGOLD[] = "[INGOLD-1979 29(3)]";

static void record(const lw_compaction *c, const lw_compaction_diagram *d, const lw_working *working) {
  bool yields = c->state == LW_ACTIVE;
  const char *k = yields ? "Ka" : "K0";
  char zc[40], hc[40];
  if (working == NULL) return;
  lw_print(zc, sizeof zc, "%s sqrt(2 pl/(pi gamma))", k);
  lw_print(hc, sizeof hc, "(1/%s) sqrt(2 pl/(pi gamma))", k);
  const lw_bound bound[] = {{"phi", c->friction_rad * LW_DEG_PER_RAD, "deg"},
                            {k, d->coefficient, ""},
                            {"pl", c->line_load_kn_per_m, "kN/m"},
                            {"gamma", c->unit_weight_kn_per_m3, "kN/m3"}};
  const lw_step steps[] = {{k, yields ? "(1 - sin phi)/(1 + sin phi)" : "1 - sin phi", NULL, d->coefficient,
                            "", yields ? "[RANKINE1857 level ground]" : "[JAKY1944 1 - sin phi]"},
                           {"zc", zc, NULL, d->zc_m, "m", INGOLD},
                           {"hc", hc, NULL, d->hc_m, "m", INGOLD},
                           {"sc", "sqrt(2 pl gamma/pi)", NULL, d->greatest_kpa, "kPa", INGOLD}};
  for (size_t i = 0; i < sizeof steps / sizeof steps[0]; i++)
    lw_working_bound(working, &steps[i], bound, sizeof bound / sizeof bound[0]);
}

lw_status lw_compaction_solve(const lw_compaction *compaction, lw_compaction_diagram *diagram,
                              lw_error *error, const lw_working *working) {
  double k, weight = compaction->unit_weight_kn_per_m3;
  lw_status status = coefficient_of(compaction, &k, error);
  if (status != LW_OK) return status;
  double depth = sqrt(2.0 * compaction->line_load_kn_per_m / (LW_PI * weight));
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

/* How the push and its moment about the foot read, by how deep the fill is. */
typedef struct words {
  const char *push, *moment;
} words;

static words words_of(const lw_compaction_diagram *d, double height_m) {
  if (height_m <= d->zc_m) return (words){"sc hf^2/(2 zc)", "sc hf^3/(6 zc)"};
  if (height_m <= d->hc_m)
    return (words){"sc zc/2 + sc (hf - zc)", "sc zc/2 (hf - 2 zc/3) + sc (hf - zc)^2/2"};
  return (words){"sc zc/2 + sc (hc - zc) + sc (1 + hf/hc) (hf - hc)/2",
                 "sc zc/2 (hf - 2 zc/3) + sc (hc - zc) (hf - (hc + zc)/2) + sc (2 + hf/hc) (hf - hc)^2/6"};
}

static void record_thrust(const lw_compaction_diagram *d, double height_m, const lw_lateral *push,
                          const lw_working *working) {
  const words formula = words_of(d, height_m);
  double moment = push->thrust_kn_per_m * push->height_m;
  const lw_bound bound[] = {{"zc", d->zc_m, "m"},
                            {"hc", d->hc_m, "m"},
                            {"sc", d->greatest_kpa, "kPa"},
                            {"hf", height_m, "m"},
                            {"Pc", push->thrust_kn_per_m, "kN/m"},
                            {"Mc", moment, "kN m/m"}};
  const lw_step steps[] = {{"Pc", formula.push, NULL, push->thrust_kn_per_m, "kN/m", INGOLD},
                           {"Mc", formula.moment, NULL, moment, "kN m/m", ""},
                           {"yc", "Mc/Pc", NULL, push->height_m, "m", ""}};
  for (size_t i = 0; i < sizeof steps / sizeof steps[0]; i++)
    lw_working_bound(working, &steps[i], bound, sizeof bound / sizeof bound[0]);
}

lw_lateral lw_compaction_thrust(const lw_compaction_diagram *d, double height_m, const lw_working *working) {
  double push = 0.0, moment = 0.0, at[] = {0.0, d->zc_m, d->hc_m, height_m};
  for (int i = 0; i < 3; i++) {
    double top = fmin(at[i], height_m), foot = i < 2 ? fmin(at[i + 1], height_m) : height_m;
    if (foot > top)
      add_piece(lw_compaction_kpa(d, top), lw_compaction_kpa(d, foot), foot - top, height_m - foot, &push,
                &moment);
  }
  lw_lateral found = {.thrust_kn_per_m = push, .height_m = push > 0.0 ? moment / push : 0.0};
  if (working != NULL && push > 0.0 && d->zc_m > 0.0) record_thrust(d, height_m, &found, working);
  return found;
}

/* Boussinesq's point load, 3Q/(2π) x² z/R⁵ towards the wall, doubled, integrated first over depth and then
 * along the foot. With y half its length, c² = x² + h²:
 *   P   = (2p/π) [y/√(x² + y²) - x² y/(c² √(c² + y²))]
 *   ∫σz = (2p/π) [x atan(h t/x) - x² h t/c²],  t = y/√(c² + y²) */
static void record_foot(const lw_foot *foot, double x_m, double height_m, const lw_lateral *push,
                        const lw_working *working) {
  double r2 = x_m * x_m + height_m * height_m, y = 0.5 * foot->length_m, t = y / sqrt(r2 + y * y);
  static const char BOUSSINESQ[] = "[BOUSSINESQ1885 point load]";
  const lw_bound bound[] = {{"pl", foot->line_load_kn_per_m, "kN/m"},
                            {"yf", y, "m"},
                            {"xp", x_m, "m"},
                            {"hf", height_m, "m"},
                            {"r2", r2, "m2"},
                            {"tf", t, ""},
                            {"Pf", push->thrust_kn_per_m, "kN/m"},
                            {"Mu", push->thrust_kn_per_m * (height_m - push->height_m), "kN m/m"}};
  const lw_step steps[] = {
      {"r2", "xp^2 + hf^2", NULL, r2, "m2", ""},
      {"tf", "yf/sqrt(r2 + yf^2)", NULL, t, "", ""},
      {"Pf", "2 pl/pi [yf/sqrt(xp^2 + yf^2) - xp^2 tf/r2]", NULL, push->thrust_kn_per_m, "kN/m", BOUSSINESQ},
      {"Mu", "2 pl/pi [xp atan(hf tf/xp) pi/180 - xp^2 hf tf/r2]", NULL, bound[7].value, "kN m/m",
       BOUSSINESQ},
      {"zf", "hf - Mu/Pf", NULL, push->height_m, "m", ""}};
  for (size_t i = 0; i < sizeof steps / sizeof steps[0]; i++)
    lw_working_bound_finely(working, &steps[i], bound, sizeof bound / sizeof bound[0]);
}

lw_lateral lw_foot_thrust(const lw_foot *foot, double distance_m, double height_m,
                          const lw_working *working) {
  double x = distance_m, h = height_m, y = 0.5 * foot->length_m, c2 = x * x + h * h;
  double near = isfinite(y) ? y / sqrt(x * x + y * y) : 1.0, t = isfinite(y) ? y / sqrt(c2 + y * y) : 1.0;
  double scale = 2.0 * foot->line_load_kn_per_m / LW_PI;
  double push = scale * (near - x * x * t / c2);
  double about_top = scale * (x * atan(h * t / x) - x * x * h * t / c2);
  lw_lateral found = {.thrust_kn_per_m = push, .height_m = push > 0.0 ? h - about_top / push : 0.0};
  if (working != NULL && push > 0.0 && isfinite(y)) record_foot(foot, x, h, &found, working);
  return found;
}
