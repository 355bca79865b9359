/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "parts.h"
#include "studies/water_limits.h"

/* Water behind the wall, where the sheet gives cause to speak of it, and where nobody may dig. */

static void say_storm(const lw_page *page, const lw_storm *s) {
  lw_page_sayf(page, "  ",
               "%s of rain raises the water in this bed by %s, to %s below the top%s. That is "
               "rain on the bed itself, in soil that takes up %.0f %% of its volume; a slope or a downpipe "
               "above it brings more.",
               lw_millimetres(page->units, s->rain_m).text, lw_millimetres(page->units, s->rise_m).text,
               lw_millimetres(page->units, s->water_depth_m).text, s->spills ? ", where it runs off" : "",
               s->porosity * 100.0);
}

static const lw_situation *blocked_of(const lw_result *result) {
  for (int i = 0; i < result->situations.count; i++) {
    const lw_situation *s = &result->situations.situation[i];
    if (s->name == LW_SITUATION_OUTLET_BLOCKED) return s;
  }
  return NULL;
}

/* The gravest of each kind: base, pad and joints together. */
static const lw_water_limit *gravest(const lw_water_limits *limits, lw_check_kind kind) {
  const lw_water_limit *worst = NULL;
  for (int i = 0; i < limits->count; i++) {
    const lw_water_limit *limit = &limits->limit[i];
    if (limit->kind == kind && (!worst || lw_water_limit_graver(limit, worst))) worst = limit;
  }
  return worst;
}

static void say_limit(const lw_page *page, const lw_result *result, const lw_water_limit *limit) {
  char words[40], prefix[40], level[120] = "";
  const lw_check check = {.kind = limit->kind, .at = limit->at, .joint = limit->joint};
  bool anyway = isfinite(result->wall.site.water_depth_m);
  lw_check_words(&check, words, sizeof words);
  lw_print(prefix, sizeof prefix, "  %-25s", words);
  switch (limit->state) {
  case LW_WATER_STANDS_FULL:
    lw_print(level, sizeof level, "stands with the highest water, %s below the top",
             lw_millimetres(page->units, limit->depth_m.value).text);
    break;
  case LW_WATER_FALLS_AT:
    lw_print(level, sizeof level, "stands until the water is %s below the top",
             lw_millimetres(page->units, limit->depth_m.value).text);
    break;
  case LW_WATER_FALLS_DRY:
    lw_print(level, sizeof level, "falls short %s",
             anyway ? "with no more water than stands there already" : "even dry");
    break;
  case LW_WATER_NOT_SHOWN: lw_print(level, sizeof level, "cannot be shown"); break;
  }
  lw_page_say(page, prefix, level);
}

static void say_limits(const lw_page *page, const lw_result *result) {
  lw_page_say(page, "  ",
              "How high the water may stand before a check falls short of what is asked with the outlet "
              "blocked:");
  for (int kind = 0; kind < LW_CHECK_KIND_COUNT; kind++) {
    const lw_water_limit *limit = gravest(&result->water_limits, (lw_check_kind)kind);
    if (limit) say_limit(page, result, limit);
  }
}

/* Whether the soaked case has this push: elsewhere water stands in it. */
static bool decides_by_it(const lw_result *result) {
  for (int i = 0; i < result->situations.count; i++)
    if (result->situations.situation[i].seeping) return true;
  return false;
}

static void say_seepage(const lw_page *page, const lw_result *result) {
  const lw_seepage *p = &result->seepage.push;
  lw_page_sayf(page, "  ",
               "Steady rain seeping to a drain that works pushes %s level (coefficient %.2f), between %s dry "
               "(%.2f) and %s with water up to the ground (%.2f). %s",
               lw_amount_of(page->units, LW_KIND_LINE_LOAD, p->seeping_kn_per_m, 2).text, p->seeping_k,
               lw_amount_again(page->units, LW_KIND_LINE_LOAD, p->dry_kn_per_m, 2).text, p->dry_k,
               lw_amount_again(page->units, LW_KIND_LINE_LOAD, p->blocked_kn_per_m, 2).text, p->blocked_k,
               decides_by_it(result) ? "The soaked case has that push."
                                     : "The soaked case has water standing behind in its place.");
}

static bool any_level(const lw_water_limits *limits) {
  for (int i = 0; i < limits->count; i++)
    if (limits->limit[i].state == LW_WATER_FALLS_AT) return true;
  return false;
}

void lw_text_water(const lw_page *page, const lw_result *result) {
  const lw_situation *blocked = blocked_of(result);
  bool storm = result->storm.rain_m > 0.0;
  bool seeps = result->seepage.looked_at && result->seepage.status == LW_OK;
  bool limits = blocked && result->water_limits.count > 0 &&
                (storm || blocked->decides || any_level(&result->water_limits));
  if (!storm && !limits && !seeps) return;
  lw_page_heading(page, "Water behind the wall");
  if (storm) say_storm(page, &result->storm);
  if (limits) say_limits(page, result);
  if (seeps) say_seepage(page, result);
}

void lw_text_keep_out(const lw_page *page, const lw_result *result) {
  const lw_trench *t = &result->trench;
  if (t->keep_out_depth_m > 0.0)
    lw_page_sayf(
        page, "  - ",
        "Do not dig deeper than %s below the ground in front within %s of the toe; a deeper trench stays "
        "farther off than its floor lies below the base.",
        lw_millimetres(page->units, t->keep_out_depth_m).text,
        lw_metres(page->units, t->keep_out_distance_m, 2).text);
  else
    lw_page_sayf(page, "  - ",
                 "Do not dig in front within %s of the toe; beyond, a trench stays farther off than its "
                 "floor lies below the base.",
                 lw_metres(page->units, t->keep_out_distance_m, 2).text);
}
