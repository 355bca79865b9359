/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "parts.h"
#include "tables/known.h"

/* The fence at the back of a bed beside the wind it was built for, and the wind on a fence. */

static lw_kind kind_of(lw_fence_measure m) {
  if (m == LW_FENCE_BOARD) return LW_KIND_PRESSURE;
  return m == LW_FENCE_SHEAR ? LW_KIND_LINE_LOAD : LW_KIND_MOMENT;
}

static void row(const lw_page *page, const lw_fence *f, lw_fence_measure m) {
  char kept[16] = "-", blocked[16] = "-";
  if (m != LW_FENCE_HOLE) {
    lw_print(kept, sizeof kept, "%.2f", f->lasting_ratio[LW_FENCE_DRY][m]);
    lw_print(blocked, sizeof blocked, "%.2f", f->lasting_ratio[LW_FENCE_BLOCKED][m]);
  }
  char soil[16], wind[16];
  bool us = page->units == LW_UNITS_US;
  lw_kind kind = kind_of(m);
  lw_number_print(soil, sizeof soil, lw_in_units(page->units, kind, f->soil[LW_FENCE_DRY].of[m]), us ? 1 : 2);
  lw_number_print(wind, sizeof wind, lw_in_units(page->units, kind, f->wind.of[m]), us ? 1 : 2);
  lw_page_rowf(
      page, LW_TONE_PLAIN,
      us ? "  |%-26s|%7s|%7s |%-8s|%6.2f|%6.2f|%6s|%7s" : "  |%-27s|%7s|%7s |%-7s|%6.2f|%6.2f|%6s|%7s",
      lw_fence_measure_words(m), soil, wind, us ? lw_units_name(page->units, kind) : lw_fence_measure_unit(m),
      f->ratio[LW_FENCE_DRY][m], f->ratio[LW_FENCE_BLOCKED][m], kept, blocked);
}

static void heights(const lw_page *page, const lw_fence *f) {
  const lw_number *equal = f->equal_m[LW_FENCE_DRY], *kept = f->lasting_equal_m[LW_FENCE_DRY];
  lw_page_sayf(
      page, "  ",
      "The soil comes to that wind when it is %s high on the boards, %s by its push, %s by its moment at "
      "the bottom of the hole, %s by its moment at the ground; to what is kept for good there, at %s.",
      lw_metres(page->units, equal[LW_FENCE_BOARD].value, 2).text,
      lw_metres(page->units, equal[LW_FENCE_SHEAR].value, 2).text,
      lw_metres(page->units, equal[LW_FENCE_HOLE].value, 2).text,
      lw_metres(page->units, equal[LW_FENCE_GROUND].value, 2).text,
      lw_metres(page->units, kept[LW_FENCE_GROUND].value, 2).text);
}

static void post(const lw_page *page, const lw_fence_post *p) {
  const lw_fence_post_load *soil = &p->load[LW_FENCE_SOIL], *wind = &p->load[LW_FENCE_WIND];
  const lw_fence_post_load *both = &p->load[LW_FENCE_SOIL_AND_WIND];
  lw_page_sayf(page, "  ",
               "One post in the ground, %s deep and %s wide, has over the push: soil %.2f, wind %.2f, "
               "both %.2f; it needs %.2f. A code allows %s for the soil, where it pushes with %s.",
               lw_metres(page->units, p->hole.depth_m, 2).text,
               lw_metres(page->units, p->hole.width_m, 2).text, soil->has, wind->has, both->has, p->needs,
               lw_amount_of(page->units, LW_KIND_FORCE, soil->code_kn, 2).text,
               lw_amount_of(page->units, LW_KIND_FORCE, soil->push_kn, 2).text);
  if (soil->moment_has.known)
    lw_page_sayf(page, "  ",
                 "The post itself has over its moment, the soil's times %.2f: soil for good %.2f, wind %.2f, "
                 "both %.2f; 1 is needed.",
                 p->soil_factor, soil->moment_has.value, wind->moment_has.value, both->moment_has.value);
}

static void boards(const lw_page *page, const lw_fence_boards *b) {
  lw_page_sayf(page, "  ",
               "The lowest boards, %s on a span of %s, are bent to %s where softwood keeps %s for good: has "
               "%.2f, with the outlet blocked %.2f; 1 is needed.",
               lw_millimetres(page->units, b->thickness_m).text, lw_metres(page->units, b->span_m, 2).text,
               lw_amount_of(page->units, LW_KIND_PRESSURE, b->stress_kpa, 0).text,
               lw_amount_of(page->units, LW_KIND_PRESSURE, b->allowed_kpa, 0).text, b->has, b->blocked_has);
}

static void advice(const lw_page *page, const lw_result *result) {
  char clear[32];
  lw_print(clear, sizeof clear, "%s ",
           lw_millimetres(page->units, lw_known_value(result->tables, LW_FENCE_OF_CLEAR_GAP)).text);
  lw_page_sayf(
      page, "  ",
      "A fence is sized by its worst gust and has nothing left, and the soil never goes away: the next "
      "gust comes on top of it. Build a fourth side of blocks, or a lined frame on posts of its own, "
      "%sclear of the fence, drained and with air behind it. Where the fence is a neighbour's too, the "
      "neighbour must agree.",
      clear);
}

/* A height without a place is that of the fence that closes the bed. */
static void say_whose_height(const lw_page *page, const lw_result *result) {
  const lw_case *c = &result->given;
  if (c->fence.height.origin != LW_GIVEN || c->fence.place.origin == LW_GIVEN || c->fence.height.si <= 0.0)
    return;
  lw_page_say(page, "  ",
              "The fence height given is taken for this fence, as no place is given; one on the wall has "
              "`fence place = on the wall`.");
}

static void back(const lw_page *page, const lw_result *result) {
  const lw_fence *f = &result->fence;
  lw_page_heading(page, "The fence as the back of the bed");
  if (f->status != LW_OK) {
    if (f->reason == LW_REASON_NO_DEMAND)
      lw_page_say(page, "  ",
                  "No soil stands against it above the lower ground beside it, as the sheet has it. Give "
                  "`fence soil height` if some does.");
    else
      lw_page_sayf(page, "  ", "Cannot be shown: %s.", lw_reason_sentence(f->reason));
    advice(page, result);
    return;
  }
  lw_page_sayf(page, "  ",
               "%s of soil at rest, a %s run, beside the wind of %s on %s that the fence was built for%s. 1 "
               "is as much as that wind; `wet`: with the outlet blocked; `kept`: over what is left "
               "under a load that stays "
               "(%.2f).",
               lw_metres(page->units, f->bed.height_m, 2).text, page->units == LW_UNITS_US ? "foot" : "metre",
               lw_amount_of(page->units, LW_KIND_PRESSURE, f->built_for.pressure_kpa, 2).text,
               lw_metres(page->units, f->built_for.height_m, 2).text,
               f->height_known && f->exposure_known ? "" : ", as far as is known", f->lasting);
  lw_page_headf(page, "  |%-27s|%7s|%7s |%-7s|%6s|%6s|%6s|%7s", "", "soil", "wind", "", "ratio", "wet",
                "kept", "wet");
  for (int m = 0; m < LW_FENCE_MEASURE_COUNT; m++) row(page, f, (lw_fence_measure)m);
  say_whose_height(page, result);
  heights(page, f);
  post(page, &f->post);
  boards(page, &f->boards);
  advice(page, result);
}

static void on_wall(const lw_page *page, const lw_fence_wind *w) {
  char holds[96] = "";
  if (w->wall_moment_knm_per_m.known)
    lw_print(holds, sizeof holds, ", where the wall's own weight holds %s",
             lw_amount_again(page->units, LW_KIND_MOMENT, w->wall_moment_knm_per_m.value, 2).text);
  lw_page_sayf(
      page, "  ",
      "Wind of %s on %s pushes with %s: %s at the fence's foot, %s about the wall's toe%s. Never on the "
      "wall: give it posts of its own, %s back or more.",
      lw_amount_of(page->units, LW_KIND_PRESSURE, w->pressure_kpa, 2).text,
      lw_metres(page->units, w->height_m, 2).text,
      lw_amount_of(page->units, LW_KIND_LINE_LOAD, w->force_kn_per_m, 2).text,
      lw_moment(page->units, w->foot_moment_knm_per_m, 2).text,
      lw_amount_again(page->units, LW_KIND_MOMENT, w->toe_moment_knm_per_m, 2).text, holds,
      lw_metres(page->units, w->keep_off_m, 2).text);
}

static void behind(const lw_page *page, const lw_fence_wind *w) {
  lw_page_sayf(
      page, "  ",
      "Wind of %s on %s: its posts push the ground with %s, %s behind the wall. Keep them one wall height "
      "back, %s.",
      lw_amount_of(page->units, LW_KIND_PRESSURE, w->pressure_kpa, 2).text,
      lw_metres(page->units, w->height_m, 2).text,
      lw_amount_of(page->units, LW_KIND_LINE_LOAD, w->force_kn_per_m, 2).text,
      lw_metres(page->units, w->distance_m, 2).text, lw_metres(page->units, w->keep_off_m, 2).text);
  if (w->below_m > 0.0)
    lw_page_say(page, "  ",
                "They are taken to stand in the ground below the bed, and to be held by it alone: posts that "
                "end in the bed's own soil lean on the wall.");
  if (w->clear_m.known)
    lw_page_sayf(page, "  ", "From %s on the wedge behind the wall, as built, does not take the push.",
                 lw_metres(page->units, w->clear_m.value, 2).text);
}

void lw_text_fence(const lw_page *page, const lw_result *result) {
  const lw_fence *f = &result->fence;
  if (f->on.present) {
    lw_page_heading(page, "Wind on the fence");
    if (f->on.on_wall)
      on_wall(page, &f->on);
    else
      behind(page, &f->on);
  }
  if (f->back) back(page, result);
}
