/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "studies/fence_find.h"
#include "studies/fence_frame.h"
#include "studies/fence_post.h"
#include "studies/fence_push.h"
#include "working.h"

#include <math.h>

/* The working of a fence that carries soil, and of wind on a fence. */

static void bed(const lw_page *page, const lw_fence *f, const lw_working *working) {
  static const char *const heads[] = {[LW_FENCE_DRY] = "The soil at rest, Kf = K0",
                                      [LW_FENCE_BLOCKED] = "The same with the outlet blocked",
                                      [LW_FENCE_YIELDING] = "The soil yielding, Kf = Ka"};
  for (int s = 0; s < LW_FENCE_STATE_COUNT; s++) {
    lw_fence_bed of = lw_fence_bed_in(f, (lw_fence_state)s);
    lw_fence_push push;
    if (s == LW_FENCE_BLOCKED && !(f->blocked_water_m < f->bed.water_depth_m)) continue;
    lw_page_say(page, " ", heads[s]);
    if (s == LW_FENCE_DRY) (void)lw_fence_at_rest(f->friction_rad, working);
    if (s == LW_FENCE_YIELDING) (void)lw_fence_yielding(f->friction_rad, working);
    lw_fence_soil_push(&of, &push, working);
  }
}

static void pushes(const lw_page *page, const lw_fence *f) {
  lw_page_linef(page, LW_TONE_PLAIN, "  %-27s%11s%11s%11s%11s", "soil and wind", "at rest", "blocked",
                "yielding", "wind");
  for (int m = 0; m < LW_FENCE_MEASURE_COUNT; m++)
    lw_page_linef(page, LW_TONE_PLAIN, "  %-27s%11.5f%11.5f%11.5f%11.5f",
                  lw_fence_measure_words((lw_fence_measure)m), f->soil[LW_FENCE_DRY].of[m],
                  f->soil[LW_FENCE_BLOCKED].of[m], f->soil[LW_FENCE_YIELDING].of[m], f->wind.of[m]);
}

static void ratios(const lw_page *page, const lw_fence *f) {
  lw_page_sayf(
      page, "  ",
      "Over the wind, and over what the fence keeps of its strength for good, %.2f of it, but for the "
      "hole; at equal m of soil at rest as much as the wind.",
      f->lasting);
  lw_page_linef(page, LW_TONE_PLAIN, "  %-27s%10s%10s%10s%10s%9s", "soil over wind", "at rest", "blocked",
                "yielding", "for good", "equal m");
  for (int m = 0; m < LW_FENCE_MEASURE_COUNT; m++)
    lw_page_linef(page, LW_TONE_PLAIN, "  %-27s%10.4f%10.4f%10.4f%10.4f%9.4f",
                  lw_fence_measure_words((lw_fence_measure)m), f->ratio[LW_FENCE_DRY][m],
                  f->ratio[LW_FENCE_BLOCKED][m], f->ratio[LW_FENCE_YIELDING][m],
                  f->lasting_ratio[LW_FENCE_DRY][m], f->equal_m[LW_FENCE_DRY][m].value);
}

void lw_working_fence(const lw_page *page, const lw_result *result) {
  const lw_fence *f = &result->fence;
  lw_page to = *page;
  lw_working working = lw_page_working(&to);
  lw_fence_push push;
  if (!f->back || f->status != LW_OK) return;
  lw_page_heading(page, "The fence as the back of the bed, a metre run");
  bed(page, f, &working);
  lw_page_say(page, " ", "The wind that it was built for");
  lw_fence_wind_push(&f->built_for, &push, &working);
  pushes(page, f);
  ratios(page, f);
  lw_page_say(page, " ", "One post, and the ground that holds it");
  lw_fence_write_post(f, &working);
  (void)lw_fence_board_stress(f->soil[LW_FENCE_DRY].of[LW_FENCE_BOARD], f->boards.span_m,
                              f->boards.thickness_m, &working);
}
