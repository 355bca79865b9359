/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/studies.h>

#define SLUG_OF(name, slug, words, unit) slug,
#define WORDS_OF(name, slug, words, unit) words,
#define UNIT_OF(name, slug, words, unit) unit,
#define SLUG_ONLY(name, slug) slug,

const char *lw_fence_measure_slug(lw_fence_measure measure) {
  static const char *const slugs[] = {LW_FENCE_MEASURES(SLUG_OF)};
  return slugs[measure];
}

const char *lw_fence_measure_words(lw_fence_measure measure) {
  static const char *const words[] = {LW_FENCE_MEASURES(WORDS_OF)};
  return words[measure];
}

const char *lw_fence_measure_unit(lw_fence_measure measure) {
  static const char *const units[] = {LW_FENCE_MEASURES(UNIT_OF)};
  return units[measure];
}

const char *lw_fence_state_slug(lw_fence_state state) {
  static const char *const slugs[] = {LW_FENCE_STATES(SLUG_ONLY)};
  return slugs[state];
}

const char *lw_fence_load_slug(lw_fence_load load) {
  static const char *const slugs[] = {LW_FENCE_LOADS(SLUG_ONLY)};
  return slugs[load];
}
