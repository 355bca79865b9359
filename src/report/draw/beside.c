/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "base/print.h"
#include "sheet/values.h"
#include "hatch.h"
#include "report/distance.h"
#include "sketch.h"

/* What stands beside the wall: the other wall of a pair, and a fence. Both may be taller than the picture has
 * room for: then they are broken off, and that is said. */

static const double SKY_MOST_MM = 22.0;

bool lw_sketch_pair(const lw_sketch *sketch) {
  lw_tier_band band = sketch->result->wall.tier.band;
  return band == LW_TIER_ONE_WALL || band == LW_TIER_TOGETHER;
}

bool lw_sketch_pair_above(const lw_sketch *sketch) {
  return lw_sketch_pair(sketch) && sketch->result->wall.tier.above;
}

double lw_sketch_pair_m(const lw_sketch *sketch) {
  const lw_tier *tier = &sketch->result->wall.tier;
  return tier->above ? sketch->result->wall.section.crest.x_m + tier->distance_m : -tier->distance_m;
}

static bool has_fence(const lw_case *c) {
  return c->fence.height.origin != LW_ABSENT && c->fence.height.si > 0.0;
}

double lw_sketch_sky(const lw_sketch *sketch) {
  const lw_case *c = &sketch->result->given;
  double high = lw_sketch_pair_above(sketch) ? sketch->result->wall.tier.height_m : 0.0;
  if (has_fence(c)) high = fmax(high, c->fence.height.si);
  return fmin(high * sketch->mm_per_m, SKY_MOST_MM);
}

/* How high something is drawn, and the two strokes where it is broken off. */
static double drawn_m(const lw_sketch *s, double high_m) {
  return fmin(high_m, s->sky_mm / s->mm_per_m);
}

static void broken_at(lw_sketch *s, double x_m, double y_m) {
  lw_xy_mm at = lw_sketch_at(s, x_m, y_m);
  for (int i = 0; i < 2; i++) {
    double y = at.y_mm + 2.0 + 0.9 * i;
    lw_xy_mm stroke[] = {{at.x_mm - 1.3, y + 0.5}, {at.x_mm + 1.3, y - 0.5}};
    lw_drawing_line(s->paper, LW_PEN_FINE, stroke, 2);
  }
}

static lw_amount away(const lw_sketch *s) {
  return lw_distance_told(s->result->units, &s->result->given.site.other_wall_distance);
}

/* Its face, and the ground that it holds up: how thick it is nobody said. */
static void pair_above(lw_sketch *s) {
  const lw_tier *tier = &s->result->wall.tier;
  double x = lw_sketch_pair_m(s), foot = lw_sketch_ground_behind(s, x), high = drawn_m(s, tier->height_m);
  bool broken = high < tier->height_m - 1e-6;
  lw_xy_mm area[] = {lw_sketch_at(s, x, foot), lw_sketch_at(s, x, foot + high),
                     lw_sketch_at(s, s->right_m, foot + high),
                     lw_sketch_at(s, s->right_m, lw_sketch_ground_behind(s, s->right_m))};
  lw_drawing_hatch(s->paper, LW_HATCH_FILL, area, 4);
  lw_drawing_line(s->paper, LW_PEN_CUT, area, 3);
  if (broken) broken_at(s, x, foot + high);
  const char *cut = broken ? "; drawn broken off" : "";
  if (tier->pressure_kpa > 0.0)
    lw_sketch_note(
        s, x, foot + 0.5 * high,
        "face of the other wall, %s high and %s away%s; with what it holds up it presses %s on this ground",
        lw_sketch_m(s, tier->height_m, 2).text, away(s).text, cut,
        lw_sketch_amount(s, LW_KIND_PRESSURE, tier->pressure_kpa, 1).text);
  else
    lw_sketch_note(s, x, foot + 0.5 * high, "face of the other wall, %s high and %s away%s",
                   lw_sketch_m(s, tier->height_m, 2).text, away(s).text, cut);
}

void lw_sketch_other_wall(lw_sketch *s) {
  const lw_case *c = &s->result->given;
  const lw_tier *tier = &s->result->wall.tier;
  bool told = c->site.other_wall_distance.origin == LW_GIVEN &&
              c->site.other_wall_height.origin == LW_GIVEN && c->site.other_wall_side.origin == LW_GIVEN;
  if (lw_sketch_pair_above(s)) {
    pair_above(s);
  } else if (lw_sketch_pair(s)) {
    double x = lw_sketch_pair_m(s);
    lw_sketch_note(s, x, lw_sketch_ground_front(s, x) - 0.5 * tier->height_m,
                   "the other wall, %s high, stands here, %s away; its thickness is not given",
                   lw_sketch_m(s, tier->height_m, 2).text, away(s).text);
  } else if (told && !s->in_page) {
    double edge = 2.0 / s->mm_per_m, x = tier->above ? s->right_m - edge : s->left_m + edge;
    lw_sketch_note(s, x, tier->above ? lw_sketch_ground_behind(s, x) : lw_sketch_ground_front(s, x),
                   "the other wall is %s away on this side, %s, %s high: out of the picture", away(s).text,
                   tier->above ? "above" : "below", lw_sketch_m(s, tier->height_m, 2).text);
  }
}

void lw_sketch_fence(lw_sketch *s) {
  const lw_case *c = &s->result->given;
  if (!has_fence(c)) return;
  const lw_section *section = &s->result->wall.section;
  lw_corner crest = section->crest;
  bool behind = lw_choice_is(&c->fence.place, LW_FENCE_BEHIND);
  bool closes = lw_choice_is(&c->site.back, LW_BACK_FENCE);
  double away = lw_si_or(&c->fence.distance, 0.0);
  double x = behind ? crest.x_m + away : 0.5 * (section->part[section->part_count - 1].front_m + crest.x_m);
  bool far = x > s->right_m - 1.0 / s->mm_per_m || (behind && closes && c->fence.distance.origin != LW_GIVEN);
  double edge = s->right_m - 1.0 / s->mm_per_m;
  if (far) {
    lw_sketch_note(s, edge, lw_sketch_ground_behind(s, edge), "a fence %s high is further behind",
                   lw_sketch_m(s, c->fence.height.si, 2).text);
    return;
  }
  double foot = behind ? lw_sketch_ground_behind(s, x) : crest.y_m, high = drawn_m(s, c->fence.height.si);
  bool broken = high < c->fence.height.si - 1e-6;
  double half = 0.5 / s->mm_per_m;
  lw_xy_mm post[] = {lw_sketch_at(s, x - half, foot), lw_sketch_at(s, x - half, foot + high),
                     lw_sketch_at(s, x + half, foot + high), lw_sketch_at(s, x + half, foot)};
  lw_drawing_area(s->paper, LW_PEN_SEEN, LW_FILL_PAPER, post, 4);
  if (broken) broken_at(s, x, foot + high);
  char where[64] = "on the wall";
  if (behind) lw_print(where, sizeof where, "%s behind the top", lw_sketch_m(s, away, 2).text);
  lw_sketch_note(
      s, x, foot + 0.6 * high, "fence, %s high%s, %s%s", lw_sketch_m(s, c->fence.height.si, 2).text,
      c->fence.height.origin == LW_GIVEN ? "" : " (assumed)", where, broken ? "; drawn broken off" : "");
}
