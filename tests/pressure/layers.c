/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/pressure.h>
#include <math.h>

#include "../checks/random_wall.h"
#include "support.h"

/* The wedge in layered ground, held against columns: the failure plane is cut into many short pieces, each
 * carries the soil and the load that stand on it, and its friction has that share of the whole. */

enum { PLANES = 120 / RANDOM_SHARE, ANGLES = 40, COLUMNS = 1500 };

/* Ground above a point on the level of the plane's top: it rises over its run. */
static double ground_at(const lw_plane *plane, double behind_m) {
  return plane->height_m + fmin(behind_m, plane->slope_run_m) * tan(plane->slope_rad);
}

static int layer_at(const lw_plane *plane, double depth_m) {
  int i = 0;
  while (i + 1 < plane->layer_count && plane->layer[i].bottom_m <= depth_m) i++;
  return i;
}

/* Weight of a column of the width 1 between two levels above the foot. */
static double column_weight(const lw_plane *plane, double low_m, double high_m) {
  double sum = 0.0;
  for (int i = 0; i < plane->layer_count; i++) {
    const lw_layer *soil = &plane->layer[i];
    double top = i > 0 ? plane->height_m - plane->layer[i - 1].bottom_m : high_m;
    double bottom = i + 1 < plane->layer_count ? plane->height_m - soil->bottom_m : low_m;
    double from = fmax(bottom, low_m), to = fmin(top, high_m);
    double water = plane->height_m - plane->water_depth_m;
    sum += fmax(to - fmax(from, water), 0.0) * soil->unit_weight_kn_per_m3;
    sum += fmax(fmin(to, water) - from, 0.0) *
           (soil->saturated_unit_weight_kn_per_m3 - plane->water_unit_weight_kn_per_m3);
  }
  return sum;
}

/* Where a failure plane comes out of the ground, by halving. */
static double comes_out(const lw_plane *plane, double rho, double top_x) {
  double low = fmax(-top_x, 0.0), high = 1e4;
  if (ground_at(plane, high) > (high + top_x) * tan(rho)) return -1.0;
  for (int i = 0; i < 80; i++) {
    double middle = 0.5 * (low + high);
    if (ground_at(plane, middle) > (middle + top_x) * tan(rho))
      low = middle;
    else
      high = middle;
  }
  return low;
}

/* Thrust of the body above one plane; soil on a back that it lies on has no part in the friction. */
static double thrust_by_columns(const lw_plane *plane, double rho) {
  double lean = tan(plane->batter_rad), top_x = -plane->height_m * lean, weight = 0.0, tangent = 0.0;
  double out = comes_out(plane, rho, top_x), from = fmin(top_x, 0.0), width = (top_x + out - from) / COLUMNS;
  double on_plane = 0.0;
  if (out < 0.0) return -INFINITY;
  for (int i = 0; i < COLUMNS; i++) {
    double x = from + (i + 0.5) * width, behind = x - top_x;
    double low = x < 0.0 ? x / top_x * plane->height_m : x * tan(rho), high = ground_at(plane, behind);
    double column = width * (column_weight(plane, low, high) + plane->surcharge_kpa);
    weight += column;
    if (x < 0.0) continue;
    on_plane += column;
    tangent += column * tan(plane->layer[layer_at(plane, plane->height_m - low)].friction_rad);
  }
  double phi = atan(tangent / on_plane),
         closing = cos(rho - phi - plane->wall_friction_rad - plane->batter_rad);
  return closing > 1e-6 ? weight * sin(rho - phi) / closing : -INFINITY;
}

static lw_plane random_plane(dice *d) {
  lw_plane plane = pressure_plane(30.0);
  double bottom = dice_between(d, -0.5, 0.3), least = RAD(44.0);
  plane.height_m = dice_between(d, 0.5, 3.0);
  plane.layer_count = 2 + dice_pick(d, 2);
  for (int i = 0; i < plane.layer_count; i++) {
    lw_layer *layer = &plane.layer[i];
    bottom += dice_between(d, 0.1, 1.2);
    *layer = plane.layer[0];
    layer->bottom_m = i + 1 < plane.layer_count ? bottom : INFINITY;
    layer->friction_rad = RAD(dice_between(d, 22.0, 42.0));
    layer->unit_weight_kn_per_m3 = dice_between(d, 14.0, 20.0);
    layer->saturated_unit_weight_kn_per_m3 = layer->unit_weight_kn_per_m3 + 1.5;
    least = fmin(least, layer->friction_rad);
  }
  plane.slope_rad = dice_pick(d, 4) ? dice_between(d, 0.0, 0.9) * least : 0.0;
  if (dice_pick(d, 2)) plane.slope_run_m = dice_between(d, 0.0, 4.0);
  if (dice_pick(d, 2)) plane.water_depth_m = dice_between(d, 0.0, 2.0);
  if (dice_pick(d, 2)) plane.surcharge_kpa = dice_between(d, 0.0, 15.0);
  plane.batter_rad = RAD(dice_between(d, 0.0, 20.0)) * dice_pick(d, 2);
  plane.wall_friction_rad = dice_between(d, 0.0, 0.7) * least;
  return plane;
}

Test(layers, the_wedge_weighs_columns) {
  dice d = {4025};
  for (int i = 0; i < PLANES; i++) {
    lw_plane plane = random_plane(&d);
    lw_trial_wedge wedge;
    cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &wedge, NULL, NULL), LW_OK);
    double same = thrust_by_columns(&plane, wedge.plane_angle_rad);
    cr_expect_lt(fabs(same / wedge.thrust_kn_per_m - 1.0), 2e-3, "wall %d: %.6g, by columns %.6g", i,
                 wedge.thrust_kn_per_m, same);
    for (int k = 1; k < ANGLES; k++) {
      double other = thrust_by_columns(&plane, k * acos(0.0) / ANGLES);
      cr_expect_lt(other, wedge.thrust_kn_per_m * 1.002, "wall %d: %.6g, at %d of %d %.6g", i,
                   wedge.thrust_kn_per_m, k, (int)ANGLES, other);
    }
  }
}

/* A slope of 20 deg on 2 m of soil at 20 kN/m3, a metre of it at 40 deg; sums made by
 * columns, outside the program. */
Test(layers, under_a_slope_by_column_weights) {
  static const struct { double below_deg, thrust; } cases[] = {{30.0, 14.37}, {25.0, 16.36}};
  for (int i = 0; i < 2; i++) {
    lw_plane plane = pressure_plane(40.0);
    lw_trial_wedge wedge;
    plane.height_m = 2.0;
    plane.slope_rad = RAD(20.0);
    plane.layer_count = 2;
    plane.layer[0].unit_weight_kn_per_m3 = 20.0;
    plane.layer[1] = plane.layer[0];
    plane.layer[0].bottom_m = 1.0;
    plane.layer[1].friction_rad = RAD(cases[i].below_deg);
    cr_assert_eq(lw_trial_wedge_thrust(LW_ACTIVE, &plane, &wedge, NULL, NULL), LW_OK);
    cr_expect_lt(fabs(wedge.thrust_kn_per_m - cases[i].thrust), 0.006, "%g", wedge.thrust_kn_per_m);
  }
}
