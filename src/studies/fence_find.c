/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "fence_find.h"

#include <lowwall/studies.h>

#include <math.h>

#include "fence_parts.h"
#include "fence_push.h"

/* The fence at the back of a bed: what pushes it beside the wind it was built for. */

static const double STEEP = 1e-9;

/* What the soil at the fence stands above the soil at the wall; NAN: it rises, and nobody says how far. */
static double rise_to_fence(const lw_site *site) {
  if (site->slope_rad <= STEEP) return 0.0;
  return isfinite(site->slope_run_m) ? site->slope_run_m * tan(site->slope_rad) : NAN;
}

/* Of several soils the most pressing figures together. */
static void press_most(const lw_site *site, lw_fence *fence) {
  lw_fence_bed *bed = &fence->bed;
  fence->friction_rad = site->soil[0].friction_rad;
  for (int i = 0; i < site->soil_count; i++) {
    const lw_soil *soil = &site->soil[i];
    bed->unit_weight_kn_per_m3 = fmax(bed->unit_weight_kn_per_m3, soil->unit_weight_kn_per_m3);
    bed->saturated_unit_weight_kn_per_m3 =
        fmax(bed->saturated_unit_weight_kn_per_m3, soil->saturated_unit_weight_kn_per_m3);
    fence->friction_rad = fmin(fence->friction_rad, soil->friction_rad);
  }
  bed->coefficient = lw_fence_at_rest(fence->friction_rad, NULL);
  fence->yielding_coefficient = lw_fence_yielding(fence->friction_rad, NULL);
}

/* The edges of a strip count from the wall, not from the fence: it is taken as if it lay all over the bed. */
static double load_on_bed(const lw_site *site) {
  double load = site->surcharge_kpa;
  for (int i = 0; i < site->load_count; i++)
    if (site->load[i].kind == LW_LOAD_STRIP) load += site->load[i].pressure_kpa;
  return load;
}

/* Below the soil's surface at the fence; the water is level, and no higher than the soil at the wall. */
static double below_soil(const lw_site *site, double depth_m, double rise_m) {
  return isfinite(depth_m) ? fmax(fmax(depth_m - site->soil_below_top_m, 0.0) + rise_m, 0.0) : INFINITY;
}

static void fill_bed(const lw_wall *wall, lw_fence *fence) {
  const lw_site *site = &wall->site;
  const lw_section *section = &wall->section;
  const lw_back_fence *back = &wall->back_fence;
  lw_fence_bed *bed = &fence->bed;
  /* Soil at the wall above the ground beside the fence: a height that is given says how far it rises. */
  double held = section->height_m - section->embedment_m - site->soil_below_top_m - back->level_difference_m;
  double rise = back->soil_height_m.known ? back->soil_height_m.value - held : rise_to_fence(site);
  bed->height_m = held + rise;
  if (!isfinite(rise)) rise = 0.0;
  press_most(site, fence);
  bed->surcharge_kpa = load_on_bed(site);
  bed->water_unit_weight_kn_per_m3 = site->water_unit_weight_kn_per_m3;
  bed->water_depth_m = below_soil(site, site->water_depth_m, rise);
  bed->hole_m = back->post_depth_m;
  fence->blocked_water_m = fmin(below_soil(site, site->overflow_below_top_m, rise), bed->water_depth_m);
}

lw_fence_bed lw_fence_bed_in(const lw_fence *fence, lw_fence_state state) {
  lw_fence_bed bed = fence->bed;
  if (state == LW_FENCE_BLOCKED) bed.water_depth_m = fence->blocked_water_m;
  if (state == LW_FENCE_YIELDING) bed.coefficient = fence->yielding_coefficient;
  return bed;
}

/* The ground around the hole is no timber. */
static double kept(const lw_fence *fence, int measure) {
  return measure == LW_FENCE_HOLE ? 1.0 : fence->lasting;
}

static void weigh(lw_fence *fence) {
  lw_fence_wind_push(&fence->built_for, &fence->wind, NULL);
  for (int s = 0; s < LW_FENCE_STATE_COUNT; s++) {
    lw_fence_bed bed = lw_fence_bed_in(fence, (lw_fence_state)s);
    lw_fence_soil_push(&bed, &fence->soil[s], NULL);
    for (int m = 0; m < LW_FENCE_MEASURE_COUNT; m++) {
      fence->ratio[s][m] = fence->soil[s].of[m] / fence->wind.of[m];
      fence->lasting_ratio[s][m] = fence->ratio[s][m] / kept(fence, m);
    }
  }
}

static lw_number equal(const lw_fence *fence, lw_fence_state state, int measure, double share) {
  lw_fence_bed bed = lw_fence_bed_in(fence, state);
  lw_number height = {0.0, false};
  height.known =
      lw_fence_equal_height(&bed, &fence->wind, (lw_fence_measure)measure, share, &height.value) == LW_OK;
  return height;
}

static void find_heights(lw_fence *fence) {
  for (int s = 0; s < LW_FENCE_STATE_COUNT; s++) {
    for (int m = 0; m < LW_FENCE_MEASURE_COUNT; m++) {
      fence->equal_m[s][m] = equal(fence, (lw_fence_state)s, m, 1.0);
      fence->lasting_equal_m[s][m] = equal(fence, (lw_fence_state)s, m, kept(fence, m));
    }
  }
}

static void weigh_back(const lw_tables *tables, const lw_wall *wall, lw_fence *fence) {
  fence->back = wall->back_fence.present;
  if (!fence->back) return;
  fill_bed(wall, fence);
  fence->lasting = wall->back_fence.lasting;
  lw_fence_built_for(tables, &wall->back_fence, fence);
  if (!isfinite(fence->bed.height_m)) {
    fence->status = LW_NO_SOLUTION;
    fence->reason = LW_REASON_FENCE_SOIL;
  } else if (fence->bed.height_m <= 0.0) {
    fence->status = LW_NO_SOLUTION;
    fence->reason = LW_REASON_NO_DEMAND;
  } else {
    weigh(fence);
  }
}

void lw_fence_weigh(const lw_wall *wall, const lw_tables *tables, lw_fence *fence) {
  *fence = (lw_fence){.status = LW_OK};
  weigh_back(tables, wall, fence);
  lw_fence_find_wind(tables, wall, &fence->on);
}

void lw_fence_study(const lw_wall *wall, const lw_tables *tables, lw_fence *fence) {
  if (!fence->back || fence->status != LW_OK) return;
  find_heights(fence);
  lw_fence_find_post(tables, wall, fence);
  lw_fence_find_boards(tables, &wall->back_fence, fence);
}
