/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <string.h>

#include "working.h"
#include "base/working.h"
#include "report/difference.h"
#include "report/faces.h"
#include "report/fluid.h"
#include "report/paired.h"

/* Steps as they are recorded, what was put in before them, and the two formulas side by side after them. */

void lw_working_say(const lw_page *page, const lw_step *step) {
  char prefix[48], value[64], inserted[512];
  lw_text_clean(step->inserted ? step->inserted : "", inserted, sizeof inserted);
  lw_print(prefix, sizeof prefix, "  %-4s = ", step->symbol);
  bool formula = step->formula && step->formula[0];
  lw_print(value, sizeof value, "%s%s%s", lw_tell_result(page->units, step->value).text,
           step->unit[0] ? " " : "", step->unit);
  if (formula) lw_page_say(page, prefix, step->formula);
  if (inserted[0]) lw_page_sayf(page, formula ? "       : " : prefix, "%s", inserted);
  lw_page_sayf(page, "       = ", "%s%s%s", value, step->source && step->source[0] ? "   " : "",
               step->source ? step->source : "");
}

static bool is_situation(const char *title, int *name) {
  for (int i = 0; i < LW_SITUATION_COUNT; i++) {
    *name = i;
    if (strcmp(title, lw_situation_sentence((lw_situation_name)i)) == 0) return true;
  }
  return false;
}

/* Headings wait for a step to stand over; each situation is recorded by itself. */
static void record_heading(void *context, const char *title) {
  lw_recorder *recorder = context;
  int name;
  if (is_situation(title, &name)) {
    recorder->at = recorder->count < LW_SITUATION_COUNT ? recorder->count++ : recorder->count - 1;
    recorder->name[recorder->at] = (lw_situation_name)name;
    recorder->waiting[0] = '\0';
    return;
  }
  size_t used = strlen(recorder->waiting);
  lw_print(recorder->waiting + used, sizeof recorder->waiting - used, "%s%s", used > 0 ? ": " : "", title);
}

/* Where the next line goes, after a heading that waits. */
static lw_page page_of(lw_recorder *recorder) {
  lw_page page = recorder->page;
  page.out = &recorder->steps[recorder->at];
  if (recorder->waiting[0]) {
    lw_page_blank(&page);
    lw_page_part(&page, recorder->waiting);
    recorder->waiting[0] = '\0';
  }
  return page;
}

static void record_step(void *context, const lw_step *step) {
  lw_page page = page_of(context);
  lw_working_say(&page, step);
}

static void record_row(void *context, const char *row) {
  lw_page page = page_of(context);
  lw_page_numbers(&page, row);
}

lw_working lw_recorder_working(lw_recorder *recorder) {
  return (lw_working){.context = recorder,
                      .heading = record_heading,
                      .step = record_step,
                      .row = record_row,
                      .units = recorder->page.units};
}

/* The first situation whose steps are the very same; -1: none. */
static int same_as(const lw_recorder *recorder, int at) {
  for (int i = 0; i < at; i++) {
    const lw_text *a = &recorder->steps[i], *b = &recorder->steps[at];
    if (a->length > 0 && a->length == b->length && memcmp(a->data, b->data, a->length) == 0) return i;
  }
  return -1;
}

void lw_recorder_print(const lw_recorder *recorder, const lw_page *page) {
  for (int i = 0; i < recorder->count; i++) {
    char title[160];
    int same = same_as(recorder, i);
    lw_print(title, sizeof title, "Push: %s", lw_situation_sentence(recorder->name[i]));
    page->out->failed = page->out->failed || recorder->steps[i].failed;
    if (recorder->steps[i].length == 0) continue;
    lw_page_heading(page, title);
    if (same >= 0)
      lw_page_sayf(page, "  ", "As in the case \"%s\".", lw_situation_short(recorder->name[same]));
    else
      lw_text_add_bytes(page->out, recorder->steps[i].data, recorder->steps[i].length);
  }
}

void lw_recorder_free(lw_recorder *recorder) {
  for (int i = 0; i < LW_SITUATION_COUNT; i++) lw_text_free(&recorder->steps[i]);
}

static void given_soil(const lw_page *page, const lw_soil *soil, const char *name) {
  char to[40] = "";
  lw_units units = page->units;
  if (isfinite(soil->bottom_m))
    lw_print(to, sizeof to, ", down to %s below the top", lw_tell_amount(units, "m", soil->bottom_m, 3).text);
  lw_page_sayf(page, "  ",
               "%s: phi = %.2f deg, c = %s, unit weight %s where it pushes and %.2f where it helps, "
               "saturated %.2f%s",
               name, soil->friction_rad * LW_DEG_PER_RAD,
               lw_tell_amount(units, "kPa", soil->cohesion_kpa, 2).text,
               lw_tell_amount(units, "kN/m3", soil->unit_weight_kn_per_m3, 2).text,
               lw_tell_in(units, "kN/m3", soil->light_unit_weight_kn_per_m3),
               lw_tell_in(units, "kN/m3", soil->saturated_unit_weight_kn_per_m3), to);
}

static void given_below(const lw_page *page, const lw_result *result) {
  lw_text line = {0}, clay = {0};
  lw_faces faces;
  lw_faces_find(result, &faces);
  lw_text_add(&line, "Base: ");
  lw_faces_say(&faces, &line);
  lw_page_say_text(page, "  ", &line);
  if (!lw_paired_row(result)) return;
  lw_text_add(&clay, "Clay below: ");
  lw_paired_say(result, &clay);
  lw_page_say_text(page, "  ", &clay);
}

void lw_working_given(const lw_page *page, const lw_result *result) {
  const lw_site *site = &result->wall.site;
  const lw_section *section = &result->wall.section;
  char name[24];
  lw_page_say(page, "  ",
              "x runs from the toe towards the soil, y up. Vertical down and push to the front count "
              "positive; a moment that holds the wall back is positive.");
  lw_page_sayf(page, "  ",
               "Section: %s high, %s wide at the base, base %s below the ground in front, back "
               "%.2f deg from the vertical",
               lw_tell_amount(page->units, "m", section->height_m, 3).text,
               lw_tell_amount(page->units, "m", section->base_width_m, 3).text,
               lw_tell_amount(page->units, "m", section->embedment_m, 3).text,
               section->known ? section->back_rad * LW_DEG_PER_RAD : 0.0);
  for (int i = 0; i < site->soil_count; i++) {
    lw_print(name, sizeof name, "Soil %d", i + 1);
    given_soil(page, &site->soil[i], name);
  }
  given_soil(page, &site->footing, "Under the base");
  lw_page_sayf(page, "  ",
               "Ground behind b = %.2f deg, its surface %s below the top; load q = %s; friction of "
               "soil on the wall d = %.2f deg",
               site->slope_rad * LW_DEG_PER_RAD,
               lw_tell_amount(page->units, "m", site->soil_below_top_m, 3).text,
               lw_tell_amount(page->units, "kPa", site->surcharge_kpa, 2).text,
               result->wall.wall_friction_rad * LW_DEG_PER_RAD);
  given_below(page, result);
}

static void compared_row(const lw_page *page, const lw_compared *c) {
  char difference[24] = "-", wedge[24] = "-";
  int decimals = page->units == LW_UNITS_US ? 3 : 4;
  if (!c->known) {
    lw_page_sayf(page, "  ", "%s: %s", c->title, lw_reason_sentence(c->reason));
    return;
  }
  double formula = c->by_formula_kn_per_m, less = c->wedge_kn_per_m - formula;
  if (c->wedge_known) {
    lw_number_print(difference, sizeof difference, lw_tell_in(page->units, "kN/m", less), decimals);
    lw_number_print(wedge, sizeof wedge, lw_tell_in(page->units, "kN/m", c->wedge_kn_per_m), decimals);
  }
  lw_page_rowf(page, LW_TONE_PLAIN,
               decimals == 3 ? "  |%-38s|%8.4f|%10.3f|%10s|%11s" : "  |%-38s|%8.4f|%10.4f|%10s|%11s",
               c->title, c->coefficient, lw_tell_in(page->units, "kN/m", c->formula_kn_per_m), wedge,
               difference);
  bool differs = c->wedge_known && fabs(c->wedge_kn_per_m - formula) > 1e-6 * formula;
  if (c->loads_kn_per_m > 0.0)
    lw_page_sayf(page, "    ", "and %s of loads at a distance, along the thrust, in the difference",
                 lw_tell_amount(page->units, "kN/m", formula - c->formula_kn_per_m, decimals).text);
  const char *why = lw_difference_words(c->difference);
  if (differs && why[0]) lw_page_sayf(page, "    ", "differ by %s", why);
}

/* The push of the wall as it is built, as a fluid's. */
static void fluid(const lw_page *page, const lw_result *result) {
  char inserted[96];
  lw_fluid f = lw_fluid_of(result);
  if (!f.known) return;
  lw_tell_name unit = lw_tell_unit(page->units, "kN/m3");
  lw_print(inserted, sizeof inserted, "K = %.6f, g = %s, a = %.5f deg", f.coefficient,
           lw_tell_amount(page->units, "kN/m3", f.unit_weight_kn_per_m3, 4).text,
           f.angle_rad * LW_DEG_PER_RAD);
  lw_page_blank(page);
  lw_page_part(page, "The soil's push as a fluid's, as built");
  lw_working_say(page, &(lw_step){.symbol = "ge",
                                  .formula = "K g cos a",
                                  .inserted = inserted,
                                  .value = lw_tell_in(page->units, "kN/m3", f.weight_kn_per_m3),
                                  .unit = unit.text,
                                  .source = ""});
}

void lw_working_compared(const lw_page *page, const lw_result *result) {
  const lw_situations *all = &result->situations;
  if (!result->wall.section.known || result->wall.site.backfill_refused) return;
  lw_tell_name unit = lw_tell_unit(page->units, "kN/m");
  lw_page_heading(page, "Rankine and Coulomb, each beside trial wedges on its own plane");
  lw_page_headf(page, "  |%-38s|%8s|%10s|%10s|%11s", "", "K", "P", "wedge", "difference");
  lw_page_headf(page, "  |%-38s|%8s|%10s|%10s|%11s", "", "", unit.text, unit.text, unit.text);
  for (int i = 0; i < all->count; i++) {
    const lw_situation *s = &all->situation[i];
    /* The other situations have the water of the first. */
    bool wet = (s->name == LW_SITUATION_SOAKED && !s->seeping) || s->name == LW_SITUATION_OUTLET_BLOCKED;
    if (s->name != LW_SITUATION_DRAINED && !wet) continue;
    lw_page_part(page, lw_situation_sentence(s->name));
    for (int k = 0; k < LW_COMPARED; k++) compared_row(page, &s->compared[k]);
  }
  fluid(page, result);
}
