/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "tables/known.h"
#include "complete.h"

/* What is not known of a fence, filled in only where there is one. */

static void choose(lw_choice *choice, int value) {
  if (choice->origin != LW_GIVEN) *choice = (lw_choice){.value = value, .origin = LW_ASSUMED};
}

static void fill(lw_quantity *q, lw_kind kind, double si) {
  if (!lw_given(q)) *q = lw_assumed(kind, si);
}

/* Wind is usually that of a suburb, and most of a fence is no end of it. */
static bool likely(const lw_case *c) {
  return c->look == LW_LOOK_LIKELY;
}

/* A fence on the wall or behind it. Where a fence closes the bed, that is the one that is told of. */
static void complete_wind(lw_case *c, bool closes) {
  bool behind = closes || lw_given(&c->fence.distance);
  choose(&c->fence.place, behind ? LW_FENCE_BEHIND : LW_FENCE_ON_WALL);
  if (c->fence.place.value == LW_FENCE_BEHIND) fill(&c->fence.distance, LW_KIND_LENGTH, 0.0);
  if (!lw_given(&c->fence.wind_pressure)) choose(&c->fence.run_end, likely(c) ? LW_NO : LW_YES);
}

/* A fence that closes the bed. */
static void complete_back(lw_completing *s) {
  lw_case *c = s->c;
  fill(&c->fence.post_spacing, LW_KIND_LENGTH, lw_known_value(s->tables, LW_FENCE_OF_UNKNOWN_SPACING));
  fill(&c->fence.post_depth, LW_KIND_LENGTH, lw_known_value(s->tables, LW_FENCE_OF_UNKNOWN_HOLE));
  fill(&c->fence.post_width, LW_KIND_LENGTH, lw_known_value(s->tables, LW_FENCE_OF_UNKNOWN_POST_WIDTH));
  fill(&c->fence.board_thickness, LW_KIND_LENGTH, lw_known_value(s->tables, LW_FENCE_OF_UNKNOWN_BOARD));
  fill(&c->fence.board_span, LW_KIND_LENGTH, lw_known_value(s->tables, LW_FENCE_OF_UNKNOWN_BOARD_SPAN));
  fill(&c->fence.permanent_factor, LW_KIND_SHARE,
       lw_known_value(s->tables, LW_FENCE_OF_TIMBER_LASTING) /
           lw_known_value(s->tables, LW_FENCE_OF_TIMBER_GUST));
}

static void hold(lw_completing *s) {
  const lw_case *c = s->c;
  bool on_wall = c->fence.place.origin == LW_GIVEN && c->fence.place.value == LW_FENCE_ON_WALL;
  if (on_wall && lw_given(&c->fence.distance))
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &c->fence.distance,
                      "this item left out: a fence on the wall stands no distance behind it");
  if (lw_given(&c->fence.post_moment) && lw_given(&c->fence.post_section))
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &c->fence.post_section,
                      "one of post moment and post section left out");
  if (lw_given(&c->fence.wind_pressure) && c->fence.wind_exposure.origin == LW_GIVEN)
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &c->fence.wind_exposure,
                      "this item left out: the wind pressure is given");
}

void lw_complete_fence(lw_completing *s) {
  lw_case *c = s->c;
  bool back = c->site.back.origin == LW_GIVEN && c->site.back.value == LW_BACK_FENCE;
  bool stands = c->fence.height.origin != LW_ABSENT && c->fence.height.si > 0.0;
  hold(s);
  if (stands) complete_wind(c, back);
  if (back) complete_back(s);
  if ((stands || back) && !lw_given(&c->fence.wind_pressure))
    choose(&c->fence.wind_exposure, likely(c) ? LW_EXPOSURE_ORDINARY : LW_EXPOSURE_EXPOSED);
}
