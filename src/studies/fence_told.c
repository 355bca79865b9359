/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "fence_told.h"

#include "base/bound.h"
#include "base/working.h"
#include "fence_find.h"
#include "fence_frame.h"
#include "fence_post.h"
#include "fence_push.h"

/* How a fence that carries soil was found, step by step. */

void lw_fence_tell_pushes(const lw_fence *fence, const lw_working *working) {
  static const char *const heads[] = {[LW_FENCE_DRY] = "The soil at rest, Kf = K0",
                                      [LW_FENCE_BLOCKED] = "The same with the outlet blocked",
                                      [LW_FENCE_YIELDING] = "The soil yielding, Kf = Ka"};
  lw_fence_push push;
  for (int s = 0; s < LW_FENCE_STATE_COUNT; s++) {
    lw_fence_bed of = lw_fence_bed_in(fence, (lw_fence_state)s);
    if (s == LW_FENCE_BLOCKED && !(fence->blocked_water_m < fence->bed.water_depth_m)) continue;
    lw_working_heading(working, heads[s]);
    if (s == LW_FENCE_DRY) (void)lw_fence_at_rest(fence->friction_rad, working);
    if (s == LW_FENCE_YIELDING) (void)lw_fence_yielding(fence->friction_rad, working);
    lw_fence_soil_push(&of, &push, working);
  }
  lw_working_heading(working, "The wind that it was built for");
  lw_fence_wind_push(&fence->built_for, &push, working);
}

void lw_fence_tell_post(const lw_fence *fence, const lw_working *working) {
  lw_working_heading(working, "One post, and the ground that holds it");
  lw_fence_write_post(fence, working);
  (void)lw_fence_board_stress(fence->soil[LW_FENCE_DRY].of[LW_FENCE_BOARD], fence->boards.span_m,
                              fence->boards.thickness_m, working);
}

void lw_fence_tell_wind(const lw_wall *wall, const lw_fence_wind *wind, const lw_working *working) {
  const lw_bound bound[] = {{"q", wind->pressure_kpa / wind->end_factor, "kPa"},
                            {"f", wind->end_factor, ""},
                            {"p", wind->pressure_kpa, "kPa"},
                            {"h", wind->height_m, "m"},
                            {"H", wall->section.height_m, "m"},
                            {"F", wind->force_kn_per_m, "kN/m"}};
  const lw_step step[] = {{"p", "q f", NULL, wind->pressure_kpa, "kPa", ""},
                          {"F", "p h", NULL, wind->force_kn_per_m, "kN/m", ""},
                          {"Mf", "F h/2", NULL, wind->foot_moment_knm_per_m, "kN m/m", ""},
                          {"Mt", "F (H + h/2)", NULL, wind->toe_moment_knm_per_m, "kN m/m", ""}};
  for (int i = wind->end_factor > 1.0 ? 0 : 1; i < (wind->on_wall ? 4 : 3); i++)
    lw_working_bound(working, &step[i], bound, sizeof bound / sizeof *bound);
}
