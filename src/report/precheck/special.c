/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "parts.h"
#include "load_cases/kinds.h"
#include "report/distance.h"
#include "studies/water_limits.h"

/* What only some walls have: another wall, a fence, water in the bed, a slip, a trench. */

static void other_wall(const lw_blocks *b) {
  static const char *const WORDS[] = {
      [LW_TIER_NONE] = "",
      [LW_TIER_ALONE] = "far enough that each stands by itself, apart from a slip",
      [LW_TIER_TOGETHER] = "so near that the upper one loads the lower",
      [LW_TIER_ONE_WALL] = "too near for two: nothing here shows that they stand"};
  const lw_tier *tier = &b->result->wall.tier;
  if (tier->band == LW_TIER_NONE) return;
  lw_block_say(b, LW_BLOCK_HEADING, "", "Another wall");
  lw_block_say(b, LW_BLOCK_FACT, "distance", "%s %s it, clear; %s high: %s",
               lw_distance_told(b->result->units, &b->result->given.site.other_wall_distance).text,
               tier->above ? "above" : "below", lw_block_m(b, tier->height_m).text, WORDS[tier->band]);
  if (tier->pressure_kpa > 0.0)
    lw_block_say(b, LW_BLOCK_FACT, "presses", "%s on the ground behind this wall",
                 lw_block_amount(b, LW_KIND_PRESSURE, tier->pressure_kpa, 2).text);
}

static void back_fence(const lw_blocks *b, const lw_fence *f) {
  lw_block_say(b, LW_BLOCK_HEADING, "", "A fence as the back of the bed");
  if (f->status != LW_OK) {
    b->taker(b->context, &(lw_block){.kind = LW_BLOCK_WORDS,
                                     .label = "",
                                     .words = "What the soil does to the fence cannot be shown.",
                                     .strong = true});
    return;
  }
  lw_block_say(b, LW_BLOCK_FACT, "soil",
               "%s against it, beside the wind of %s on %s it was "
               "built for; soil over wind, and with the outlet blocked:",
               lw_block_m(b, f->bed.height_m).text,
               lw_block_amount(b, LW_KIND_PRESSURE, f->built_for.pressure_kpa, 2).text,
               lw_block_m(b, f->built_for.height_m).text);
  for (int m = 0; m < LW_FENCE_MEASURE_COUNT; m++)
    lw_block_say(b, LW_BLOCK_ITEM, lw_fence_measure_words((lw_fence_measure)m), "%.2f, blocked %.2f",
                 f->ratio[LW_FENCE_DRY][m], f->ratio[LW_FENCE_BLOCKED][m]);
  lw_block_say(b, LW_BLOCK_FACT, "instead",
               "a fourth side of blocks, or a frame of its own clear of the fence");
}

static void fence(const lw_blocks *b) {
  const lw_fence *f = &b->result->fence;
  if (f->back) back_fence(b, f);
  if (!f->on.present) return;
  lw_block_say(b, LW_BLOCK_HEADING, "", f->on.on_wall ? "A fence on the wall" : "A fence behind the wall");
  lw_block_say(b, LW_BLOCK_FACT, "wind", "%s on %s pushes %s, %s at its foot",
               lw_block_amount(b, LW_KIND_PRESSURE, f->on.pressure_kpa, 2).text,
               lw_block_m(b, f->on.height_m).text,
               lw_block_amount(b, LW_KIND_LINE_LOAD, f->on.force_kn_per_m, 2).text,
               lw_moment(b->result->units, f->on.foot_moment_knm_per_m, 2).text);
  if (f->on.on_wall)
    lw_block_say(b, LW_BLOCK_FACT, "at the toe", "the wind tips the wall with %s",
                 lw_moment(b->result->units, f->on.toe_moment_knm_per_m, 2).text);
}

static void limit(const lw_blocks *b, const lw_water_limit *l) {
  char words[40];
  const lw_check check = {.kind = l->kind, .at = l->at, .joint = l->joint};
  lw_check_words(&check, words, sizeof words);
  if (l->state == LW_WATER_FALLS_AT)
    lw_block_say(b, LW_BLOCK_ITEM, words, "stands until the water is %s below the top",
                 lw_millimetres(b->result->units, l->depth_m.value).text);
  if (l->state == LW_WATER_FALLS_DRY) lw_block_say(b, LW_BLOCK_ITEM, words, "falls short without more water");
  if (l->state == LW_WATER_NOT_SHOWN) lw_block_say(b, LW_BLOCK_ITEM, words, "cannot be shown");
}

static const lw_water_limit *gravest(const lw_water_limits *limits, lw_check_kind kind) {
  const lw_water_limit *worst = NULL;
  for (int i = 0; i < limits->count; i++)
    if (limits->limit[i].kind == kind && (!worst || lw_water_limit_graver(&limits->limit[i], worst)))
      worst = &limits->limit[i];
  return worst;
}

static void water(const lw_blocks *b) {
  const lw_water_limits *limits = &b->result->water_limits;
  const lw_storm *storm = &b->result->storm;
  bool blocked = false;
  for (int i = 0; i < b->result->situations.count; i++) {
    const lw_situation *s = &b->result->situations.situation[i];
    blocked = blocked || (s->name == LW_SITUATION_OUTLET_BLOCKED && s->decides);
  }
  if (storm->rain_m <= 0.0 && (!blocked || limits->count == 0)) return;
  lw_block_say(b, LW_BLOCK_HEADING, "", "How high water may stand behind the wall");
  if (storm->rain_m > 0.0)
    lw_block_say(b, LW_BLOCK_FACT, "storm", "%s of rain brings it to %s below the top",
                 lw_millimetres(b->result->units, storm->rain_m).text,
                 lw_millimetres(b->result->units, storm->water_depth_m).text);
  /* Of the kinds that a base has. */
  for (int kind = 0; blocked && kind < LW_CHECK_KIND_COUNT; kind++) {
    const lw_water_limit *worst = gravest(limits, (lw_check_kind)kind);
    if (worst && lw_check_about_of((lw_check_kind)kind)->at[LW_AT_BASE]) limit(b, worst);
  }
}

static void trench(const lw_blocks *b) {
  const lw_trench *t = &b->result->trench;
  if (t->depth_m <= 0.0) return;
  lw_block_say(b, LW_BLOCK_HEADING, "", "A trench in front");
  lw_block_say(b, LW_BLOCK_FACT, "trench", "%s deep, %s from the toe%s", lw_block_m(b, t->depth_m).text,
               lw_block_m(b, t->distance_m).text, t->undermines ? ": it undermines the wall" : "");
}

void lw_blocks_special(const lw_blocks *blocks) {
  other_wall(blocks);
  fence(blocks);
  water(blocks);
  trench(blocks);
}
