/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "outdone.h"

#include <math.h>
#include <string.h>

#include "base/extremes.h"

/* What a search in one cross-section says of another, which differs from it by its water or its strengths.
 *
 * A slice of width b, with W, u, c, φ and s = sin α, gives g = [c b + N tan φ]/m - X W s to whether a circle
 * has the factor X, where N = max(W - u b, 0) and m = cos α + s tan φ/X: it has no less where all of them add
 * up to 0 or more. Less c makes no g larger, nor does less tan φ where there is no c (where there is, a steep
 * slice may hold more by it, for m is less as well). Of higher water let d be the thickness of soil that it
 * wets and the lower water does not. With κ the greatest γsat - γ of any soil over γw, and no soil or body
 * lighter in water than the water,
 *   W grows by κ γw d b at most, u by γw d at least, so N falls by (1 - κ) γw d b at least; where it comes to
 *   its end at 0, it was as much before, for the soil that is wetted is carried by what lies below it.
 * Where s ≥ 0 no g grows. Where s < 0, m is at most cos α, and g does not grow as long as
 * X κ |s| cos α ≤ (1 - κ) tan φ: surely where X κ ≤ 2 (1 - κ) tan φ of the weakest ground. (The ordinary
 * slices: the same, with cos α for 1/m and l for b.) What is not proved here: that m_alpha leaves the same
 * circles uncounted in both, and that the search found the least. tests/bench/slip.c measures both. */

static bool same(double a, double b) {
  return !(a < b) && !(a > b);
}

static bool no_stronger(const lw_slip_soil *a, const lw_slip_soil *b, double besides_kpa) {
  bool loose = a->cohesion_kpa + besides_kpa <= 0.0;
  return (same(a->friction_rad, b->friction_rad) || (loose && a->friction_rad < b->friction_rad)) &&
         a->cohesion_kpa <= b->cohesion_kpa && same(a->unit_weight_kn_per_m3, b->unit_weight_kn_per_m3) &&
         same(a->saturated_unit_weight_kn_per_m3, b->saturated_unit_weight_kn_per_m3) &&
         same(a->spare_kn_per_m3, b->spare_kn_per_m3) && same(a->bottom_y_m, b->bottom_y_m);
}

static bool soils(const lw_slip_ground *a, const lw_slip_ground *b) {
  if (a->soil_count != b->soil_count || !no_stronger(&a->below, &b->below, a->paired_kpa)) return false;
  for (int i = 0; i < a->soil_count; i++)
    if (!no_stronger(&a->soil[i], &b->soil[i], 0.0)) return false;
  bool paired = a->paired_kpa > 0.0;
  return !paired || (a->paired_kpa <= b->paired_kpa && a->shallow_kpa <= b->shallow_kpa &&
                     same(a->paired_depth_m, b->paired_depth_m));
}

static bool corners(const lw_corner *a, const lw_corner *b, int count) {
  return memcmp(a, b, (size_t)count * sizeof *a) == 0;
}

static bool shapes(const lw_slip_ground *a, const lw_slip_ground *b) {
  if (a->corner_count != b->corner_count || a->body_count != b->body_count || a->load_count != b->load_count)
    return false;
  return corners(a->corner, b->corner, a->corner_count) && corners(a->body, b->body, a->body_count) &&
         memcmp(a->load, b->load, (size_t)a->load_count * sizeof *a->load) == 0 &&
         memcmp(&a->box, &b->box, sizeof a->box) == 0 && same(a->layer_x_m, b->layer_x_m) &&
         same(a->raised_x_m, b->raised_x_m) && same(a->raised_y_m, b->raised_y_m) &&
         same(a->raised_kn_per_m3, b->raised_kn_per_m3) && same(a->body_kn_per_m3, b->body_kn_per_m3) &&
         same(a->pad_front_m, b->pad_front_m) && same(a->pad_rear_m, b->pad_rear_m) &&
         same(a->pad_y_m, b->pad_y_m) && same(a->floor_y_m, b->floor_y_m);
}

/* By how much water makes soil heavier, as a share of its own weight. */
static double heavier(const lw_slip_soil *soil, double water_kn_per_m3) {
  return (soil->saturated_unit_weight_kn_per_m3 - soil->unit_weight_kn_per_m3) / water_kn_per_m3;
}

static bool floats(const lw_slip_soil *soil, double water_kn_per_m3) {
  return soil->saturated_unit_weight_kn_per_m3 - soil->spare_kn_per_m3 < water_kn_per_m3;
}

/* The most of all soils; 1: something floats. */
static double heaviest(const lw_slip_ground *ground) {
  double water = ground->water.unit_weight_kn_per_m3, most = heavier(&ground->below, water);
  bool afloat = floats(&ground->below, water) || (ground->body_count > 0 && ground->body_kn_per_m3 < water);
  for (int i = 0; i < ground->soil_count; i++) {
    most = lw_larger(most, heavier(&ground->soil[i], water));
    afloat = afloat || floats(&ground->soil[i], water);
  }
  return afloat ? 1.0 : most;
}

static double weakest(const lw_slip_ground *ground) {
  double least = ground->below.friction_rad;
  for (int i = 0; i < ground->soil_count; i++) least = lw_smaller(least, ground->soil[i].friction_rad);
  return tan(least);
}

/* Water on one side alone stands level to the other, and is not compared. */
static bool higher(const lw_slip_water *a, const lw_slip_water *b) {
  bool both = isfinite(a->front_y_m) && isfinite(a->rear_y_m);
  bool either = isfinite(b->front_y_m) || isfinite(b->rear_y_m);
  bool level = isfinite(b->front_y_m) && isfinite(b->rear_y_m);
  return both && (level || !either) && same(a->front_x_m, b->front_x_m) && same(a->rear_x_m, b->rear_x_m) &&
         same(a->unit_weight_kn_per_m3, b->unit_weight_kn_per_m3) && a->front_y_m >= b->front_y_m &&
         a->rear_y_m >= b->rear_y_m;
}

static bool waters(const lw_slip_ground *a, const lw_slip_ground *b, double factor) {
  if (memcmp(&a->water, &b->water, sizeof a->water) == 0) return true;
  if (!higher(&a->water, &b->water)) return false;
  double share = heaviest(a);
  return share < 1.0 && factor * share <= 2.0 * (1.0 - share) * weakest(a);
}

bool lw_slip_graver(const lw_slip_ground *graver, const lw_slip_ground *milder, double factor) {
  bool still = graver->seismic_horizontal <= 0.0 && milder->seismic_horizontal <= 0.0 &&
               graver->pore_ratio <= 0.0 && milder->pore_ratio <= 0.0;
  return still && soils(graver, milder) && waters(graver, milder, factor) && shapes(graver, milder);
}

void lw_slip_remember(lw_slip_searched *all, const lw_slip_ground *ground, double at_least) {
  if (all->count >= LW_SLIP_SEARCHED_MAX || !(at_least > 0.0)) return;
  all->of[all->count].ground = *ground;
  all->of[all->count++].at_least = at_least;
}

bool lw_slip_outdone(const lw_slip_searched *all, const lw_slip_ground *ground, double factor) {
  for (int i = 0; i < all->count; i++)
    if (all->of[i].at_least >= factor && lw_slip_graver(&all->of[i].ground, ground, factor)) return true;
  return false;
}
