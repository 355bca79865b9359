/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "working.h"

#include <math.h>
#include <string.h>

/* Steps as they are recorded, what was put in before them, and the two formulas side by side after them. */

static const double DEGREES = 180.0 / 3.14159265358979323846;

void lw_working_say(const lw_page *page, const lw_step *step) {
  char prefix[48], value[64], inserted[512];
  lw_text_clean(step->inserted ? step->inserted : "", inserted, sizeof inserted);
  lw_print(prefix, sizeof prefix, "  %-4s = ", step->symbol);
  bool formula = step->formula && step->formula[0];
  lw_print(value, sizeof value, "%.5g%s%s", step->value, step->unit[0] ? " " : "", step->unit);
  if (formula) lw_page_say(page, prefix, step->formula);
  if (inserted[0]) lw_page_sayf(page, formula ? "       : " : prefix, "%s", inserted);
  lw_page_sayf(page, "       = ", "%s%s%s", value, step->source && step->source[0] ? "   " : "",
               step->source ? step->source : "");
}

static void print_heading(void *context, const char *title) {
  const lw_page *page = context;
  lw_page_blank(page);
  lw_page_sayf(page, "", "-- %s", title);
}

static void print_step(void *context, const lw_step *step) { lw_working_say(context, step); }

lw_working lw_working_printer(lw_page *page) {
  return (lw_working){.context = page, .heading = print_heading, .step = print_step};
}

static void given_soil(const lw_page *page, const lw_soil *soil, const char *name) {
  char to[40] = "";
  if (isfinite(soil->bottom_m)) lw_print(to, sizeof to, ", down to %.3f m below the top", soil->bottom_m);
  lw_page_sayf(page, "  ",
               "%s: phi = %.2f deg, c = %.2f kPa, unit weight %.2f kN/m3 where it pushes and %.2f where it helps, "
               "saturated %.2f%s",
               name, soil->friction_rad * DEGREES, soil->cohesion_kpa, soil->unit_weight_kn_per_m3,
               soil->light_unit_weight_kn_per_m3, soil->saturated_unit_weight_kn_per_m3, to);
}

void lw_working_given(const lw_page *page, const lw_result *result) {
  const lw_site *site = &result->wall.site;
  const lw_section *section = &result->wall.section;
  char name[24];
  lw_page_say(page, "  ", "x runs from the toe towards the soil, y up. Vertical down and push to the front count "
                          "positive; a moment that holds the wall back is positive.");
  lw_page_sayf(page, "  ", "Section: %.3f m high, %.3f m wide at the base, base %.3f m below the ground in front, back "
               "%.2f deg from the vertical", section->height_m, section->base_width_m, section->embedment_m,
               section->known ? lw_section_back_angle(section) * DEGREES : 0.0);
  for (int i = 0; i < site->soil_count; i++) {
    lw_print(name, sizeof name, "Soil %d", i + 1);
    given_soil(page, &site->soil[i], name);
  }
  given_soil(page, &site->footing, "Under the base");
  lw_page_sayf(page, "  ", "Ground behind b = %.2f deg, its surface %.3f m below the top; load q = %.2f kPa; friction of "
               "soil on the wall d = %.2f deg; friction under the base %.3f",
               site->slope_rad * DEGREES, site->soil_below_top_m, site->surcharge_kpa,
               result->wall.wall_friction_rad * DEGREES, site->base_friction);
}

static void compared_row(const lw_page *page, const lw_compared *c) {
  char difference[24] = "-", wedge[24] = "-";
  if (!c->known) {
    lw_page_sayf(page, "  ", "%s: %s", c->title, lw_reason_sentence(c->reason));
    return;
  }
  if (c->wedge_known) {
    double share = c->formula_kn_per_m > 0.0 ? 100.0 * (c->wedge_kn_per_m / c->formula_kn_per_m - 1.0) : 0.0;
    lw_number_print(difference, sizeof difference, share, 4);
    lw_number_print(wedge, sizeof wedge, c->wedge_kn_per_m, 4);
  }
  lw_page_linef(page, LW_TONE_PLAIN, "  %-38s%8.4f%10.4f%10s%11s", c->title, c->coefficient, c->formula_kn_per_m, wedge,
                difference);
  if (c->wedge_known && c->why[0]) lw_page_sayf(page, "    ", "may differ by %s", c->why);
}

void lw_working_compared(const lw_page *page, const lw_result *result) {
  const lw_situations *all = &result->situations;
  if (!result->wall.section.known || result->wall.site.backfill_refused) return;
  lw_page_heading(page, "Rankine and Coulomb, each beside the numerical wedge on its own plane");
  lw_page_linef(page, LW_TONE_PLAIN, "  %-38s%8s%10s%10s%11s", "", "K", "P", "wedge", "difference");
  lw_page_linef(page, LW_TONE_PLAIN, "  %-38s%8s%10s%10s%11s", "", "", "kN/m", "kN/m", "%");
  for (int i = 0; i < all->count; i++) {
    const lw_situation *s = &all->situation[i];
    bool same = i > 0 && !(fabs(s->water_depth_m - all->situation[0].water_depth_m) > 0.0) && i != 1;
    bool both_dry = i > 0 && isinf(s->water_depth_m) && isinf(all->situation[0].water_depth_m);
    if (same || both_dry) continue;
    lw_compared compared[LW_COMPARED];
    lw_compare_methods(result, s, compared);
    lw_page_sayf(page, " ", "%s", lw_situation_sentence(s->name));
    for (int k = 0; k < LW_COMPARED; k++) compared_row(page, &compared[k]);
  }
}
