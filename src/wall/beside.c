/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "beside.h"

#include "wind.h"
#include "sheet/values.h"

static lw_number if_given(const lw_quantity *q) {
  return q->origin == LW_GIVEN ? (lw_number){q->si, true} : (lw_number){0.0, false};
}

static lw_number if_present(const lw_quantity *q) {
  return q->origin == LW_ABSENT ? (lw_number){0.0, false} : (lw_number){q->si, true};
}

/* A fence is built for the wind that was told; the exposure that pushes the wall where none was is no word
 * of its builder. */
static lw_number built_for(const lw_case_fence *fence, const lw_tables *tables) {
  if (fence->wind_pressure.origin == LW_GIVEN || fence->wind_exposure.origin != LW_GIVEN)
    return if_given(&fence->wind_pressure);
  return (lw_number){lw_wind_pressure(tables, fence->wind_exposure.value), true};
}

static lw_number height_of(const lw_case_fence *fence) {
  bool behind = lw_choice_is(&fence->place, LW_FENCE_BEHIND);
  return behind && fence->height.si > 0.0 ? if_given(&fence->height) : (lw_number){0.0, false};
}

static void back_fence_build(const lw_case *c, const lw_tables *tables, lw_back_fence *back) {
  const lw_case_fence *fence = &c->fence;
  back->present = c->site.back.origin == LW_GIVEN && c->site.back.value == LW_BACK_FENCE;
  if (!back->present) return;
  *back = (lw_back_fence){.present = true,
                          .height_m = height_of(fence),
                          .wind_kpa = built_for(fence, tables),
                          .soil_height_m = if_given(&fence->soil_height),
                          .level_difference_m = lw_si_or(&c->site.level_difference, 0.0),
                          .lasting = lw_si_or(&fence->permanent_factor, 1.0),
                          .post_spacing_m = fence->post_spacing.si,
                          .post_depth_m = lw_si_or(&fence->post_depth, 0.0),
                          .post_width_m = fence->post_width.si,
                          .post_moment_knm = if_present(&fence->post_moment),
                          .post_side_m = if_present(&fence->post_section),
                          .board_thickness_m = fence->board_thickness.si,
                          .board_span_m = fence->board_span.si};
}

static void plant_build(const lw_case_construction *construction, const lw_tables *tables,
                        lw_told_plant *plant) {
  bool named = construction->plant.origin == LW_GIVEN;
  if (named) plant->row = lw_tables_plant(tables, construction->plant.text);
  plant->mass_kg = if_given(&construction->plant_mass);
  plant->force_kn = if_given(&construction->plant_force);
  plant->width_m = if_given(&construction->plant_width);
  plant->distance_m = if_given(&construction->plant_distance);
  plant->layer_m = if_given(&construction->layer_thickness);
}

void lw_beside_build(const lw_case *c, const lw_tables *tables, lw_wall *wall) {
  bool bed = lw_choice_is(&c->site.behind, LW_BEHIND_BED);
  back_fence_build(c, tables, &wall->back_fence);
  plant_build(&c->construction, tables, &wall->plant);
  wall->bed_width_m =
      bed && c->construction.bed_width.origin == LW_GIVEN ? c->construction.bed_width.si : 0.0;
}
