/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "elsewhere.h"

/* What fails in a report whose deciding checks hold: nobody is told that it holds without it. */

static bool fence_fails(const lw_fence *f) {
  if (!f->back || f->status != LW_OK) return false;
  for (int state = LW_FENCE_DRY; state <= LW_FENCE_BLOCKED; state++) {
    for (int m = 0; m < LW_FENCE_MEASURE_COUNT; m++) {
      if (f->lasting_ratio[state][m] > 1.0) return true;
    }
  }
  const lw_fence_post_load *soil = &f->post.load[LW_FENCE_SOIL], *wet = &f->post.load[LW_FENCE_WET_SOIL];
  return soil->has < f->post.needs || wet->has < f->post.needs || f->boards.has < 1.0 ||
         f->boards.blocked_has < 1.0;
}

/* A wall that is made higher, or has moved, stands on one that nobody has checked. */
static bool on_unknown_wall(const lw_case *c) {
  return c->site.works.origin == LW_GIVEN && c->site.works.value != LW_WORKS_NEW;
}

static const lw_situation *what_if_that_fails(const lw_result *result) {
  for (int i = 0; i < result->situations.count; i++) {
    const lw_situation *s = &result->situations.situation[i];
    for (int k = 0; !s->decides && k < s->check_count; k++) {
      lw_check check = lw_situation_check(s, k);
      if (check.counts && check.holds == LW_FALLS_SHORT) return s;
    }
  }
  return NULL;
}

bool lw_result_fails_elsewhere(const lw_result *result, char *out, size_t size) {
  const lw_situation *s = what_if_that_fails(result);
  if (on_unknown_wall(&result->given))
    lw_print(out, size, "what was there before, and carries it, is not known");
  else if (fence_fails(&result->fence))
    lw_print(out, size, "the fence that closes the bed was not made to carry it");
  else if (result->wall.tier.band == LW_TIER_TOGETHER && !result->wall.tier.above)
    lw_print(out, size, "it loads the wall below, which is not checked here");
  else if (result->trench.undermines)
    lw_print(out, size, "the trench in front undermines it");
  else if (result->construction.moves)
    lw_print(out, size, "while it is built the plant moves it");
  else if (s)
    lw_print(out, size, "it falls short with %s, which does not decide here", lw_situation_sentence(s->name));
  else
    return false;
  return true;
}
