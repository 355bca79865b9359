/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "run/again.h"
#include "working.h"

#include <math.h>

/* The working of a fence that carries soil, and of wind on a fence. */

static void pushes(const lw_page *page, const lw_fence *f) {
  bool us = page->units == LW_UNITS_US;
  lw_page_headf(page, "  |%-27s|%11s|%11s|%11s|%11s", "soil and wind", "at rest", "blocked", "yielding",
                "wind");
  for (int m = 0; m < LW_FENCE_MEASURE_COUNT; m++) {
    const char *unit = lw_fence_measure_unit((lw_fence_measure)m);
    lw_page_rowf(page, LW_TONE_PLAIN,
                 us ? "  |%-27s|%11.3f|%11.3f|%11.3f|%11.3f" : "  |%-27s|%11.5f|%11.5f|%11.5f|%11.5f",
                 lw_fence_measure_words((lw_fence_measure)m),
                 lw_tell_in(page->units, unit, f->soil[LW_FENCE_DRY].of[m]),
                 lw_tell_in(page->units, unit, f->soil[LW_FENCE_BLOCKED].of[m]),
                 lw_tell_in(page->units, unit, f->soil[LW_FENCE_YIELDING].of[m]),
                 lw_tell_in(page->units, unit, f->wind.of[m]));
  }
}

static void ratios(const lw_page *page, const lw_fence *f) {
  lw_tell_name unit = lw_tell_unit(page->units, "m");
  lw_page_sayf(
      page, "  ",
      "Over the wind, and over what the fence keeps of its strength for good, %.2f of it, but for the "
      "hole; at equal %s of soil at rest as much as the wind.",
      f->lasting, unit.text);
  lw_page_headf(page, "  |%-27s|%10s|%10s|%10s|%10s|%9s", "soil over wind", "at rest", "blocked", "yielding",
                "for good", page->units == LW_UNITS_US ? "equal ft" : "equal m");
  for (int m = 0; m < LW_FENCE_MEASURE_COUNT; m++)
    lw_page_rowf(page, LW_TONE_PLAIN, "  |%-27s|%10.4f|%10.4f|%10.4f|%10.4f|%9.4f",
                 lw_fence_measure_words((lw_fence_measure)m), f->ratio[LW_FENCE_DRY][m],
                 f->ratio[LW_FENCE_BLOCKED][m], f->ratio[LW_FENCE_YIELDING][m],
                 f->lasting_ratio[LW_FENCE_DRY][m],
                 lw_tell_in(page->units, "m", f->equal_m[LW_FENCE_DRY][m].value));
}

void lw_working_fence(const lw_page *page, const lw_result *result) {
  const lw_fence *f = &result->fence;
  bool us = page->units == LW_UNITS_US;
  lw_page to = *page;
  lw_working working = lw_page_working(&to);
  if (f->on.present) {
    lw_page_heading(page, us ? "Wind on the fence, a foot run" : "Wind on the fence, a metre run");
    lw_page_say(page, "  ",
                "q is the wind, f what it is times near the end of a run, h the fence, H the wall; Mf turns "
                "the fence about its foot, Mt fence and wall about the wall's toe.");
    lw_again_study(result, LW_STUDY_WIND, &working);
  }
  if (!f->back || f->status != LW_OK) return;
  lw_page_heading(page, us ? "The fence as the back of the bed, a foot run"
                           : "The fence as the back of the bed, a metre run");
  lw_again_study(result, LW_STUDY_FENCE, &working);
  pushes(page, f);
  ratios(page, f);
  lw_again_study(result, LW_STUDY_POST, &working);
}
