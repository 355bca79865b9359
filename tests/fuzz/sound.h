/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TESTS_FUZZ_SOUND_H
#define LOWWALL_TESTS_FUZZ_SOUND_H

#include <math.h>

#include "fuzz.h"

/* What a wall that could be run must say, whatever it is. */

static inline void fuzz_figure(void *context, const lw_figure *figure) {
  (void)context;
  if (!figure->value.known || isfinite(figure->value.value)) return;
  fprintf(stderr, "%s\n", figure->key);
  FUZZ_EXPECT(isinf(figure->value.value));
}

/* A wall that stands has no check that decides, counts and falls short. */
static inline void fuzz_expect_sound(const lw_result *result) {
  lw_figures_each(result, fuzz_figure, NULL);
  for (int i = 0; i < result->situations.count; i++) {
    const lw_situation *s = &result->situations.situation[i];
    for (int k = 0; k < s->check_count; k++) {
      const lw_check whole = lw_situation_check(s, k), *check = &whole;
      if (check->ratio.known) FUZZ_EXPECT(!isnan(check->ratio.value));
      if (result->verdict.stands != LW_HOLDS || !s->decides || !check->counts) continue;
      FUZZ_EXPECT(check->holds == LW_HOLDS);
    }
  }
}

#endif
