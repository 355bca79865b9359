/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "run/again.h"
#include "working.h"

#include <math.h>

/* The working of the water that stands or seeps behind the wall. */

static void seepage(const lw_page *page, const lw_result *result) {
  const lw_rain_seepage *of = &result->seepage;
  lw_page to = *page;
  lw_working working = lw_page_working(&to);
  if (!of->looked_at) return;
  lw_page_blank(page);
  lw_page_part(page, "Steady rain that seeps to a drain which works");
  if (of->status != LW_OK) {
    lw_page_sayf(page, "  ", "Not worked out: %s.", lw_reason_sentence(of->reason));
    return;
  }
  lw_page_say(
      page, "  ",
      "Head at x behind the drain and y above its foot: hp - sum of An exp(-ln x) cos(ln y), ln = (2n + "
      "1) pi/(2 hp), An = 8 hp/((2n + 1)^2 pi^2) [GRAY1958 vertical drain].");
  lw_page_say(
      page, "  ",
      "Us is the force of its pores on the plane at rho, which pushes most; Hs, Hd and Hb push level: "
      "seeping, dry, and with water up to the ground.");
  lw_again_study(result, LW_STUDY_SEEPAGE, &working);
}

static const char *short_word(lw_water_state state) {
  switch (state) {
  case LW_WATER_STANDS_FULL: return "stands, highest";
  case LW_WATER_FALLS_AT: return "stands until there";
  case LW_WATER_FALLS_DRY: return "falls short without it";
  case LW_WATER_NOT_SHOWN: return "cannot be shown";
  }
  return "";
}

static void limit_line(const lw_page *page, const lw_water_limit *limit) {
  char words[48], depth[24] = "-", ratio[24] = "-";
  const lw_check check = {.kind = limit->kind, .at = limit->at, .joint = limit->joint};
  lw_check_words(&check, words, sizeof words);
  if (limit->depth_m.known)
    lw_print(depth, sizeof depth, "%.4f", lw_tell_in(page->units, "m", limit->depth_m.value));
  if (limit->ratio.known) lw_print(ratio, sizeof ratio, "%.4f", limit->ratio.value);
  lw_page_rowf(page, LW_TONE_PLAIN, "  |%-26s|%10s|%9s  |%s%s", words, depth, ratio, short_word(limit->state),
               limit->jumps ? ", at once" : "");
}

static void limits(const lw_page *page, const lw_result *result) {
  const lw_water_limits *all = &result->water_limits;
  if (all->count == 0) return;
  lw_page_blank(page);
  lw_page_part(page,
               "How high the water may stand: the level at which ratio = has / needs first falls to 1, by "
               "root search, asked as with the outlet blocked");
  lw_page_headf(page, "  |%-26s|%10s|%9s  |%s%s", "",
                page->units == LW_UNITS_US ? "ft below top" : "m below top", "ratio", "", "");
  for (int i = 0; i < all->count; i++) limit_line(page, &all->limit[i]);
}

void lw_working_water(const lw_page *page, const lw_result *result) {
  if (!result->seepage.looked_at && result->water_limits.count == 0) return;
  lw_page_heading(page, "Water behind the wall");
  limits(page, result);
  seepage(page, result);
}
