/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/studies.h>
#include <math.h>
#include <string.h>

#include "studies/fence_post.h"
#include "studies/fence_push.h"
#include "rows.h"

/* Soil against a fence beside its wind, posts in the ground, boards. No book works this case: every row is a
 * sum made anew by another program, by integration of the pressure or by halving an interval. */

static bool measure_of(const case_row *row, lw_fence_measure *measure) {
  for (int i = 0; i < LW_FENCE_MEASURE_COUNT; i++) {
    *measure = (lw_fence_measure)i;
    if (case_is(row, "measure", lw_fence_measure_slug(*measure))) return true;
  }
  return false;
}

static lw_fence_bed bed_of(const case_row *row) {
  return (lw_fence_bed){.height_m = case_number(row, "h", 0.0),
                        .coefficient = case_number(row, "K", 0.5),
                        .unit_weight_kn_per_m3 = case_number(row, "gamma", 18.0),
                        .saturated_unit_weight_kn_per_m3 = case_number(row, "gsat", 20.0),
                        .water_unit_weight_kn_per_m3 = case_number(row, "gw", 9.81),
                        .surcharge_kpa = case_number(row, "q", 0.0),
                        .water_depth_m = case_number(row, "zw", INFINITY),
                        .hole_m = case_number(row, "L", 0.6)};
}

static case_outcome run_fence(const case_row *row, double *value) {
  lw_fence_measure measure;
  lw_fence_bed bed = bed_of(row);
  lw_fence_gust gust = {case_number(row, "p", 0.0), case_number(row, "Hf", 0.0), bed.hole_m};
  lw_fence_push soil, wind;
  double lasting = case_number(row, "lasting", 1.0);
  if (!measure_of(row, &measure)) return CASE_UNSUPPORTED;
  lw_fence_soil_push(&bed, &soil, NULL);
  lw_fence_wind_push(&gust, &wind, NULL);
  if (strcmp(row->quantity, "soil") == 0)
    *value = soil.of[measure];
  else if (strcmp(row->quantity, "wind") == 0)
    *value = wind.of[measure];
  else if (strcmp(row->quantity, "ratio") == 0)
    *value = soil.of[measure] / (lasting * wind.of[measure]);
  else if (strcmp(row->quantity, "equal_height") != 0)
    return CASE_UNSUPPORTED;
  else if (lw_fence_equal_height(&bed, &wind, measure, lasting, value) != LW_OK)
    return CASE_NO_SOLUTION;
  return CASE_VALUE;
}

static case_outcome run_post(const case_row *row, double *value) {
  lw_fence_hole hole = {.depth_m = case_number(row, "L", 0.0),
                        .width_m = case_number(row, "b", 0.0),
                        .friction_rad = case_number(row, "phi", 0.0),
                        .unit_weight_kn_per_m3 = case_number(row, "gamma", 0.0),
                        .lateral_kpa_per_m = case_number(row, "lateral", 0.0)};
  double arm = case_number(row, "e", 0.0);
  if (strcmp(row->quantity, "broms") == 0)
    *value = lw_fence_broms(&hole, arm, NULL);
  else if (strcmp(row->quantity, "code") == 0)
    *value = lw_fence_code_push(&hole, arm, NULL);
  else if (strcmp(row->quantity, "code_depth") == 0)
    *value = lw_fence_code_depth(case_number(row, "P", 0.0), arm, hole.width_m, case_number(row, "S", 0.0));
  else
    return CASE_UNSUPPORTED;
  return CASE_VALUE;
}

static case_outcome run_board(const case_row *row, double *value) {
  if (strcmp(row->quantity, "stress") == 0)
    *value = lw_fence_board_stress(case_number(row, "w", 0.0), case_number(row, "s", 0.0),
                                   case_number(row, "t", 0.0), NULL);
  else if (strcmp(row->quantity, "moment") == 0)
    *value = lw_fence_post_moment(case_number(row, "f", 0.0), case_number(row, "side", 0.0));
  else
    return CASE_UNSUPPORTED;
  return CASE_VALUE;
}

case_outcome case_fence(const case_row *row, double *value) {
  if (case_is(row, "method", "fence")) return run_fence(row, value);
  if (case_is(row, "method", "post")) return run_post(row, value);
  if (case_is(row, "method", "board")) return run_board(row, value);
  return CASE_UNSUPPORTED;
}

Test(handbook, fence) {
  cr_assert_eq(case_hold_all("tests/handbook/fence.csv", case_fence), 88);
}
