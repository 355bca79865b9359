/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/ground.h>
#include <math.h>
#include <string.h>

#include "rows.h"

/* Published bearing factors and strip footings. Not here: footings whose factors were read from a chart, and
 * square ones with an author's factors given; the library has no shape factors, and where a square case is
 * held all the same, its shape factor is the test's. */

static const lw_bearing_routine *routine_of(const case_row *row) {
  for (int method = LW_BEARING_TERZAGHI; method <= LW_BEARING_EN1997; method++) {
    const lw_bearing_routine *routine = lw_bearing_routine_of((lw_bearing_method)method);
    if (case_is(row, "method", routine->slug)) return routine;
  }
  return NULL;
}

static lw_strip strip_of(const case_row *row) {
  double depth = case_number(row, "D", 0.0), weight = case_number(row, "gamma", 18.0);
  return (lw_strip){
      .width_m = case_number(row, "B", 1.0),
      .depth_m = depth,
      .overburden_kpa = depth * weight,
      .friction_rad = case_number(row, "phi", NAN),
      .cohesion_kpa = case_number(row, "c", 0.0),
      .unit_weight_kn_per_m3 = weight,
      .vertical_kn_per_m = case_number(row, "V", 0.0),
      .horizontal_kn_per_m = case_number(row, "H", 0.0),
  };
}

static bool factor_of(const case_row *row, const lw_bearing *b, double *value) {
  const char *q = row->quantity;
  if (strcmp(q, "Nc") == 0)
    *value = b->nc;
  else if (strcmp(q, "Nq") == 0)
    *value = b->nq;
  else if (strcmp(q, "Ngamma") == 0)
    *value = b->n_gamma;
  else
    return false;
  return true;
}

/* An empirical reduction for eccentricity, in place of the effective width. */
static double reduced(const case_row *row, const lw_strip *strip, const lw_bearing *b) {
  double share = case_number(row, "a", NAN) * pow(case_number(row, "ratio", NAN), case_number(row, "k", NAN));
  return b->ultimate_kpa * strip->width_m * (1.0 - share);
}

static case_outcome part_of(const case_row *row, const lw_strip *strip, const lw_bearing *b, double *value) {
  const char *q = row->quantity;
  double factor = case_number(row, "F", NAN);
  if (factor_of(row, b, value)) return CASE_VALUE;
  if (strcmp(q, "ultimate") == 0)
    *value = b->ultimate_kpa;
  else if (strcmp(q, "net") == 0)
    *value = b->net_kpa;
  else if (strcmp(q, "net_allowable") == 0)
    *value = b->net_kpa / factor;
  else if (strcmp(q, "load_reduced") == 0)
    *value = reduced(row, strip, b);
  else if (strcmp(q, "square_constant") == 0)
    *value = (1.3 * strip->cohesion_kpa * b->nc + strip->overburden_kpa * b->nq) / factor;
  else if (strcmp(q, "square_by_width") == 0)
    *value = 0.8 * 0.5 * strip->unit_weight_kn_per_m3 * b->n_gamma / factor;
  else
    return CASE_UNSUPPORTED;
  return CASE_VALUE;
}

/* A book's mixture: capacity and depth by Vesic, inclination by Meyerhof. */
static case_outcome run_general(const case_row *row, double *value) {
  lw_strip strip = strip_of(row);
  lw_bearing v, m;
  if (lw_bearing_vesic(&strip, &v, NULL, NULL) != LW_OK) return CASE_NO_SOLUTION;
  if (lw_bearing_meyerhof(&strip, &m, NULL, NULL) != LW_OK) return CASE_NO_SOLUTION;
  *value = strip.cohesion_kpa * v.nc * v.dc * m.ic + strip.overburden_kpa * v.nq * v.dq * m.iq +
           0.5 * strip.unit_weight_kn_per_m3 * v.effective_width_m * v.n_gamma * v.d_gamma * m.i_gamma;
  return CASE_VALUE;
}

case_outcome case_bearing(const case_row *row, double *value) {
  if (case_is(row, "method", "general")) return run_general(row, value);
  const lw_bearing_routine *routine = routine_of(row);
  lw_strip strip = strip_of(row);
  lw_bearing bearing;
  if (routine == NULL) return CASE_UNSUPPORTED;
  if (routine->ultimate(&strip, &bearing, NULL, NULL) != LW_OK) return CASE_NO_SOLUTION;
  return part_of(row, &strip, &bearing, value);
}

Test(handbook, bearing) {
  cr_assert_eq(case_hold_all("tests/handbook/bearing.csv", case_bearing), 53);
}
