/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "parts.h"
#include "load_cases/kinds.h"
#include "studies/water_limits.h"

/* What only some walls have: another wall near, a fence, water in the bed, a slip, a trench. */

static const double MM = 1000.0;

static void other_wall(const lw_blocks *b) {
  static const char *const WORDS[] = {
      [LW_TIER_NONE] = "",
      [LW_TIER_ALONE] = "far enough that each stands by itself, apart from a slip",
      [LW_TIER_TOGETHER] = "so near that the upper one loads the lower",
      [LW_TIER_ONE_WALL] = "too near for two: nothing here shows that they stand"};
  const lw_tier *tier = &b->result->wall.tier;
  if (tier->band == LW_TIER_NONE) return;
  lw_block_say(b, LW_BLOCK_HEADING, "", "Another wall near this one");
  lw_block_say(b, LW_BLOCK_FACT, "distance", "%.2f m %s it, clear; %.2f m high: %s", tier->distance_m,
               tier->above ? "above" : "below", tier->height_m, WORDS[tier->band]);
  if (tier->pressure_kpa > 0.0)
    lw_block_say(b, LW_BLOCK_FACT, "presses", "%.2f kPa on the ground behind this wall", tier->pressure_kpa);
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
               "%.2f m against it, beside the wind of %.2f kPa on %.2f m it was "
               "built for; soil over wind, and with the outlet blocked:",
               f->bed.height_m, f->built_for.pressure_kpa, f->built_for.height_m);
  for (int m = 0; m < LW_FENCE_MEASURE_COUNT; m++)
    lw_block_say(b, LW_BLOCK_FACT, lw_fence_measure_words((lw_fence_measure)m), "%.2f, blocked %.2f",
                 f->ratio[LW_FENCE_DRY][m], f->ratio[LW_FENCE_BLOCKED][m]);
  lw_block_say(b, LW_BLOCK_FACT, "instead",
               "a fourth side of blocks, or a frame of its own clear of the fence");
}

static void fence(const lw_blocks *b) {
  const lw_fence *f = &b->result->fence;
  if (f->back) back_fence(b, f);
  if (!f->on.present) return;
  lw_block_say(b, LW_BLOCK_HEADING, "", f->on.on_wall ? "A fence on the wall" : "A fence behind the wall");
  lw_block_say(b, LW_BLOCK_FACT, "wind", "%.2f kPa on %.2f m pushes %.2f kN/m, %.2f kN m/m at its foot",
               f->on.pressure_kpa, f->on.height_m, f->on.force_kn_per_m, f->on.foot_moment_knm_per_m);
  if (f->on.on_wall)
    lw_block_say(b, LW_BLOCK_FACT, "at the toe", "the wind tips the wall with %.2f kN m/m",
                 f->on.toe_moment_knm_per_m);
}

static void limit(const lw_blocks *b, const lw_water_limit *l) {
  char words[40];
  const lw_check check = {.kind = l->kind, .at = l->at, .joint = l->joint};
  lw_check_words(&check, words, sizeof words);
  if (l->state == LW_WATER_FALLS_AT)
    lw_block_say(b, LW_BLOCK_FACT, words, "stands until the water is %.0f mm below the top",
                 l->depth_m.value * MM);
  if (l->state == LW_WATER_FALLS_DRY) lw_block_say(b, LW_BLOCK_FACT, words, "falls short without more water");
  if (l->state == LW_WATER_NOT_SHOWN) lw_block_say(b, LW_BLOCK_FACT, words, "cannot be shown");
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
    lw_block_say(b, LW_BLOCK_FACT, "storm", "%.0f mm of rain brings it to %.0f mm below the top",
                 storm->rain_m * MM, storm->water_depth_m * MM);
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
  lw_block_say(b, LW_BLOCK_FACT, "trench", "%.2f m deep, %.2f m from the toe%s", t->depth_m, t->distance_m,
               t->undermines ? ": it undermines the wall" : "");
}

void lw_blocks_special(const lw_blocks *blocks) {
  other_wall(blocks);
  fence(blocks);
  water(blocks);
  trench(blocks);
}
