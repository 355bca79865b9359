/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include "pressure/methods.h"
#include "support.h"

/* Each thing that lets formula and wedge differ, by itself on a plane where they must agree. */
Test(difference, a_plane_says_why_formula_and_wedge_may_differ) {
  lw_plane plain = pressure_plane(30.0);
  lw_plane sticky = plain, layers = plain, loads = plain, wet_slope = plain, broken = plain, water = plain,
           shaken = plain, steep = plain;
  sticky.layer[0].cohesion_kpa = 1.0;
  layers.layer_count = 2, layers.layer[0].bottom_m = 0.9, layers.layer[1] = plain.layer[0];
  layers.layer[1].friction_rad = RAD(25.0);
  loads.load_count = 1;
  wet_slope.slope_rad = RAD(10.0), wet_slope.water_depth_m = 1.0;
  broken.slope_rad = RAD(10.0), broken.slope_run_m = 1.5;
  water.water_depth_m = 1.0;
  shaken.water_depth_m = 0.0, shaken.surcharge_kpa = 3.0, shaken.seismic.horizontal = 0.1;
  steep.slope_rad = RAD(29.99);
  cr_expect_eq(lw_plane_difference(&plain), LW_DIFFER_NOT);
  cr_expect_eq(lw_plane_difference(&sticky), LW_DIFFER_COHESION);
  cr_expect_eq(lw_plane_difference(&layers), LW_DIFFER_LAYERS);
  cr_expect_eq(lw_plane_difference(&loads), LW_DIFFER_LOADS);
  cr_expect_eq(lw_plane_difference(&wet_slope), LW_DIFFER_WET_SLOPE);
  cr_expect_eq(lw_plane_difference(&broken), LW_DIFFER_BROKEN);
  cr_expect_eq(lw_plane_difference(&water), LW_DIFFER_WATER);
  cr_expect_eq(lw_plane_difference(&shaken), LW_DIFFER_SHAKEN_LOAD);
  cr_expect_eq(lw_plane_difference(&steep), LW_DIFFER_STEEP);
}
