/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "facts.h"

#include <math.h>

#include "base/extremes.h"
#include "base/lines.h"

/* The wall's heights by every definition that laws use: as taken, and what of each is certain. A row that
 * only the taken height is past is a question, not an answer. */

static bool assumed(const lw_quantity *q) {
  return q->origin == LW_ASSUMED;
}

static double given_or(const lw_quantity *q, double otherwise) {
  return q->origin == LW_GIVEN ? q->si : otherwise;
}

/* The item that leaves the outer height open, or NULL. */
static const char *outer_left_out(const lw_case *c) {
  if (assumed(&c->wall.height) && assumed(&c->courses.block_height)) return "block height";
  return assumed(&c->wall.embedment) || assumed(&c->wall.height) ? "wall embedment" : NULL;
}

/* Courses that are counted are as high as their blocks, however deep they are buried. */
static double certain_total(const lw_facts *f, double exposed_m) {
  const lw_case *c = f->c;
  bool counted = c->wall.kind.value == LW_WALL_COURSES && !assumed(&c->courses.count);
  if (counted && !assumed(&c->courses.block_height)) return f->wall->section.height_m;
  return exposed_m + (assumed(&c->wall.embedment) ? 0.0 : f->wall->section.embedment_m);
}

static void outer(lw_facts *f) {
  const lw_case *c = f->c;
  const lw_section *section = &f->wall->section;
  double pad = f->wall->site.pad.thickness_m, *h = f->height_m;
  const char *left_out = outer_left_out(c);
  f->to_pad_m = section->height_m + pad;
  h[LW_HEIGHT_TOTAL] = section->height_m;
  h[LW_HEIGHT_EXPOSED] = section->height_m - section->embedment_m;
  h[LW_HEIGHT_RETAINED] = lw_larger(0.0, h[LW_HEIGHT_EXPOSED] - f->wall->site.soil_below_top_m);
  double exposed = assumed(&c->wall.height) ? 0.0 : h[LW_HEIGHT_EXPOSED];
  double below = assumed(&c->ground.soil_below_top) ? exposed : f->wall->site.soil_below_top_m;
  f->height[LW_HEIGHT_EXPOSED] = (lw_span){h[LW_HEIGHT_EXPOSED], exposed, left_out};
  f->height[LW_HEIGHT_TOTAL] = (lw_span){f->to_pad_m, certain_total(f, exposed) + pad, left_out};
  f->height[LW_HEIGHT_RETAINED] = (lw_span){h[LW_HEIGHT_RETAINED], lw_larger(0.0, exposed - below),
                                            assumed(&c->ground.soil_below_top) ? "soil below top" : left_out};
}

/* A bed holds only what was brought in, on ground that is level across. Elsewhere nobody knows how deep the
 * ground was cut or filled before: as deep as the soil held up is only the likely figure, to be printed. */
static void natural(lw_facts *f) {
  const lw_case *c = f->c;
  const lw_span *held = &f->height[LW_HEIGHT_RETAINED];
  bool bed = c->site.behind.origin == LW_GIVEN && c->site.behind.value == LW_BEHIND_BED;
  bool cut = c->ground.cut_depth.origin == LW_GIVEN, fill = c->ground.fill_depth.origin == LW_GIVEN;
  lw_span *span = &f->height[LW_HEIGHT_NATURAL];
  f->height_m[LW_HEIGHT_NATURAL] = lw_larger(given_or(&c->ground.cut_depth, held->taken_m),
                                             given_or(&c->ground.fill_depth, held->taken_m));
  double least = bed ? held->certain_m : 0.0;
  *span = (lw_span){
      .taken_m = f->height_m[LW_HEIGHT_NATURAL],
      .certain_m = lw_larger(given_or(&c->ground.cut_depth, least), given_or(&c->ground.fill_depth, least)),
      .left_out = cut && fill ? NULL : held->left_out};
  if (bed || (cut && fill)) return;
  span->taken_m = INFINITY;
  span->left_out = c->site.behind.origin != LW_GIVEN ? "site behind" : cut ? "fill depth" : "cut depth";
}

/* The foot of a fence above the top of the wall: behind, it stands on ground that may lie lower, and rises.
 * Nobody knows how far off: as far as it counts. */
static double fence_foot(const lw_facts *f, double rise) {
  const lw_fence_wind *wind = &f->fence->on;
  const lw_site *site = &f->wall->site;
  if (wind->on_wall) return 0.0;
  double behind = f->c->fence.distance.origin == LW_GIVEN ? wind->distance_m : wind->keep_off_m;
  return lw_smaller(behind, site->slope_run_m) * rise - site->soil_below_top_m;
}

static double with_fence(const lw_facts *f, double exposed_m, double rise) {
  return f->fence_m > 0.0 ? exposed_m + lw_larger(fence_foot(f, rise) + f->fence_m, 0.0) : exposed_m;
}

/* The item that leaves open how high it stands, or whether it counts. */
static const char *fence_left_out(const lw_facts *f) {
  const lw_case *c = f->c;
  if (assumed(&c->fence.height)) return "fence height";
  if (f->fence_m <= 0.0) return NULL;
  if (c->fence.place.origin != LW_GIVEN && c->fence.distance.origin != LW_GIVEN) return "fence place";
  if (f->fence->on.on_wall) return NULL;
  if (assumed(&c->fence.distance)) return "fence distance";
  return assumed(&c->ground.soil_below_top) ? "soil below top" : NULL;
}

static void fence(lw_facts *f) {
  const lw_span *exposed = &f->height[LW_HEIGHT_EXPOSED];
  double rise = tan(f->wall->site.slope_rad), sure_rise = assumed(&f->c->ground.slope) ? 0.0 : rise;
  const char *left_out = fence_left_out(f);
  double taken = with_fence(f, exposed->taken_m, rise);
  f->height_m[LW_HEIGHT_FENCE] = taken;
  f->height[LW_HEIGHT_FENCE] =
      (lw_span){.taken_m = assumed(&f->c->fence.height) ? INFINITY : taken,
                .certain_m = left_out ? exposed->certain_m : with_fence(f, exposed->certain_m, sure_rise),
                .left_out = left_out                       ? left_out
                            : assumed(&f->c->ground.slope) ? "ground slope"
                                                           : exposed->left_out};
}

static double greatest_of(double a, double b, double c, double d) {
  return lw_larger(lw_larger(a, b), lw_larger(c, d));
}

static void greatest(lw_facts *f) {
  const lw_span *total = &f->height[LW_HEIGHT_TOTAL], *exposed = &f->height[LW_HEIGHT_EXPOSED],
                *held = &f->height[LW_HEIGHT_RETAINED], *changed = &f->height[LW_HEIGHT_NATURAL];
  f->height_m[LW_HEIGHT_GREATEST] =
      greatest_of(total->taken_m, exposed->taken_m, held->taken_m, f->height_m[LW_HEIGHT_NATURAL]);
  f->height[LW_HEIGHT_GREATEST] = (lw_span){
      .taken_m = greatest_of(total->taken_m, exposed->taken_m, held->taken_m, changed->taken_m),
      .certain_m = greatest_of(total->certain_m, exposed->certain_m, held->certain_m, changed->certain_m),
      .left_out = total->left_out ? total->left_out : changed->left_out};
}

static void reaches(lw_facts *f) {
  const lw_site *site = &f->wall->site;
  const lw_case *c = f->c;
  const lw_span *total = &f->height[LW_HEIGHT_TOTAL];
  double rise = tan(site->slope_rad), below = site->soil_below_top_m;
  double run = lw_known_value(f->tables, LW_THRESHOLD_REACH_LINE);
  double depth = lw_larger(0.0, f->to_pad_m - below);
  bool slope = assumed(&c->ground.slope), level = assumed(&c->ground.soil_below_top);
  double certain = level ? 0.0 : lw_larger(0.0, total->certain_m - below);
  f->reach = (lw_span){.taken_m = lw_line_out_bent(depth, run, rise, site->slope_run_m),
                       .certain_m = lw_line_out_bent(certain, run, slope ? 0.0 : rise, site->slope_run_m),
                       .left_out = slope   ? "ground slope"
                                   : level ? "soil below top"
                                           : total->left_out};
}

/* A bed with four sides of its own holds up no building: that stands beyond the far side, on ground of its
 * own. Only what that ground lies higher than the ground in front is held up for it. */
static void building(lw_facts *f) {
  const lw_case *c = f->c;
  bool bed = c->site.behind.origin == LW_GIVEN && c->site.behind.value == LW_BEHIND_BED;
  bool sides = c->site.back.origin == LW_GIVEN && c->site.back.value == LW_BACK_WALL;
  double up =
      c->site.level_difference.origin == LW_ABSENT ? 0.0 : lw_larger(c->site.level_difference.si, 0.0);
  f->building = f->reach;
  double reach = up * lw_known_value(f->tables, LW_THRESHOLD_REACH_LINE);
  if (bed && sides) f->building = (lw_span){reach, reach, NULL};
}

static void dig(lw_facts *f) {
  double buried = f->wall->section.embedment_m, pad = f->wall->site.pad.thickness_m;
  double cut = given_or(&f->c->ground.cut_depth, 0.0);
  bool open = assumed(&f->c->wall.embedment);
  f->dig = (lw_span){.taken_m = lw_larger(buried + pad, cut),
                     .certain_m = lw_larger((open ? 0.0 : buried) + pad, cut),
                     .left_out = open ? "wall embedment" : NULL};
  double line = lw_known_value(f->tables, LW_THRESHOLD_DIG_LINE);
  f->beside_dig = (lw_span){line * f->dig.taken_m, line * f->dig.certain_m, f->dig.left_out};
}

void lw_facts_heights(lw_facts *facts) {
  outer(facts);
  natural(facts);
  fence(facts);
  greatest(facts);
  reaches(facts);
  building(facts);
  dig(facts);
}
