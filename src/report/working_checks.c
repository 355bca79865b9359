/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "working.h"

#include <math.h>
#include <string.h>

/* From the sums to the pressures, and the checks as they are held against what is asked. */

static void say(const lw_page *page, const char *symbol, const char *formula, double value,
                const char *unit) {
  char prefix[24];
  lw_print(prefix, sizeof prefix, "  %-3s = ", symbol);
  lw_page_sayf(page, prefix, "%s = %.4f%s%s", formula, value, unit[0] ? " " : "", unit);
}

/* How the two edge pressures came about; their values stand after it. */
static const char *pressure_formula(const lw_contact *c, lw_base_pressure method) {
  bool taper = c->area_m2 < c->width_m;
  if (taper && method == LW_BASE_EFFECTIVE) return "V/B', even over the effective area";
  if (taper && (method == LW_BASE_LINEAR || c->share_in_compression > 1.0 - 1e-9))
    return "V (J - xR S)/(A J - S^2) in front, and V (xR A - S)/(A J - S^2) more a metre";
  if (taper) return "a triangle on the part of the trapezium that is pressed";
  if (method == LW_BASE_EFFECTIVE) return "V/B', even over the effective width";
  if (method == LW_BASE_LINEAR) return "V/B (1 +- 6e/B), tension shown where it would be";
  if (c->share_in_compression > 1.0 - 1e-9) return "V/B (1 +- 6e/B), the resultant inside the middle third";
  return "2V / (3 (B/2 - |e|)), a triangle: the resultant is outside the middle third";
}

static void on_pad(const lw_page *page, const lw_contact *c) {
  char formula[120];
  lw_print(formula, sizeof formula,
           "effective width of the base and the spread on both sides, within the pad");
  say(page, "B", formula, c->width_m, "m");
  lw_print(formula, sizeof formula, "V/B = %.4f / %.4f", c->vertical_kn_per_m, c->width_m);
  say(page, "p", formula, c->greatest_kpa, "kPa, evenly");
}

/* Blocks that taper: what bears in plan, with its moments about the front edge. */
static void trapezium(const lw_page *page, const lw_contact *c) {
  double b = c->width_m, f = c->taper.front, r = c->taper.rear;
  lw_page_sayf(page, "  ", "The blocks taper: %.4f of the run bears in front, %.4f at the rear.", f, r);
  say(page, "A", "B (wf + wr)/2", c->area_m2, "m2/m");
  say(page, "S", "B^2 (wf + 2 wr)/6", b * b * (f + 2.0 * r) / 6.0, "m3/m");
  say(page, "J", "B^3 (wf + 3 wr)/12", b * b * b * (f + 3.0 * r) / 12.0, "m4/m");
  say(page, "b", "what is pressed of the width", c->pressed_m, "m");
}

static void edges(const lw_page *page, const lw_contact *c, lw_base_pressure method) {
  char formula[120];
  lw_print(formula, sizeof formula, "B/2 - xR with B = %.4f m", c->width_m);
  say(page, "e", formula, c->eccentricity_m, "m towards the front");
  if (c->area_m2 < c->width_m) trapezium(page, c);
  say(page, "B'", c->area_m2 < c->width_m ? "the area about the resultant, a metre" : "B - 2|e|",
      c->effective_width_m, "m");
  lw_page_sayf(page, "  p   = ", "%s: front %.3f kPa, rear %.3f kPa, greatest %.3f kPa",
               pressure_formula(c, method), c->front_kpa, c->rear_kpa, c->greatest_kpa);
}

/* Head falls in a straight line over what is pressed; what gapes behind it carries the full rear head. */
void lw_working_uplift(const lw_page *page, const lw_result *result, const lw_situation *s,
                       const lw_stage *stage, lw_place place) {
  const lw_site *site = &result->wall.site;
  const lw_contact *c = &stage->contact;
  double foot = place.joint > 0 ? s->joint[place.joint - 1].height_m : lw_stage_foot(result, stage);
  double above_foot = result->wall.section.height_m - foot;
  double width = place.at == LW_AT_PAD ? result->wall.section.base_width_m : c->width_m;
  double rear = fmax(above_foot - s->water_depth_m, 0.0),
         front = fmax(above_foot - site->front_water_depth_m, 0.0);
  double factor = s->load_case.actions.factors.factored ? s->load_case.actions.factors.water : 1.0;
  double scale = site->water_unit_weight_kn_per_m3 * result->wall.method.uplift_share * factor;
  bool holds = result->wall.method.base_pressure == LW_BASE_LINEAR;
  bool tips = !holds && (c->vertical_kn_per_m <= 0.0 || c->resultant_m <= 0.0);
  bool gapes = !holds && !tips && c->eccentricity_m > width / 6.0;
  double pressed = tips ? 0.0 : gapes ? 3.0 * c->resultant_m : width;
  if (c->area_m2 < c->width_m && c->uplift_kn_per_m > 0.0) {
    lw_page_sayf(page, "  U   = ",
                 "%.4f kN/m, upwards: gw %.3f kN/m3 on the undersides, hr = %.3f m between the tails and "
                 "under what gapes, falling to hf = %.3f m under what is pressed",
                 c->uplift_kn_per_m, scale, rear, front);
    return;
  }
  double uplift = scale * (0.5 * (rear + front) * pressed + rear * (width - pressed));
  bool same = fabs(uplift - c->uplift_kn_per_m) <= 1e-6 * fmax(uplift, 1.0);
  if (c->uplift_kn_per_m <= 0.0 || !same) return;
  const char *formula = "gw (hr + hf)/2 B: the head falls from the rear to the front";
  if (tips) formula = "gw hr B: the resultant is in front of the contact, and all of it opens";
  if (gapes)
    formula = "gw ((hr + hf)/2 b + hr (B - b)): the head falls over what is pressed, b = 3 xR, and is "
              "whole behind it";
  lw_page_say(page, "  U   = ", formula);
  lw_page_sayf(page, "      : ", "gw%s = %.3f kN/m3, hr = %.3f m, hf = %.3f m, b = %.4f m, B = %.4f m",
               result->wall.method.uplift_share < 1.0 ? " x share" : "", scale, rear, front, pressed, width);
  lw_page_sayf(page, "      = ", "%.4f kN/m, upwards", uplift);
}

void lw_working_contact(const lw_page *page, const lw_result *result, const lw_stage *stage) {
  const lw_contact *c = &stage->contact;
  char formula[120];
  if (!c->inside) {
    lw_page_sayf(page, "  ", "The resultant falls outside the contact of %.3f m: it stands on nothing.",
                 c->width_m);
    return;
  }
  lw_print(formula, sizeof formula, "(%.4f - %.4f) / %.4f", c->resisting_knm_per_m, c->overturning_knm_per_m,
           c->vertical_kn_per_m);
  say(page, "xR", formula, c->resultant_m, "m from the front edge");
  if (lw_stage_foot(result, stage) < 0.0)
    on_pad(page, c);
  else
    edges(page, c, result->wall.method.base_pressure);
}

/* As many decimals as leave a blank before it in its column. */
static void number(lw_number n, int decimals, int columns, char *out, size_t size) {
  lw_print(out, size, "-");
  for (; n.known && decimals >= 0; decimals--) {
    lw_number_print(out, size, n.value, decimals);
    if ((int)strlen(out) < columns) return;
  }
}

static void check_line(const lw_page *page, const lw_check *c) {
  char words[40], outcome[40], demand[24], resistance[24], has[24], needs[24];
  lw_check_words(c, words, sizeof words);
  lw_check_outcome(c, outcome, sizeof outcome);
  number(c->demand, 3, 8, demand, sizeof demand);
  number(c->resistance, 3, 8, resistance, sizeof resistance);
  number(c->has, 3, 7, has, sizeof has);
  number(c->needs, 2, 6, needs, sizeof needs);
  bool bad = c->counts && c->holds != LW_HOLDS;
  lw_page_linef(page, bad ? LW_TONE_BAD : LW_TONE_PLAIN, "%-23s%8s%8s %-6s%7s%6s %s", words, resistance,
                demand, c->unit, has, needs, outcome);
  if (c->reason != LW_REASON_NONE) lw_page_sayf(page, "      ", "%s", lw_reason_sentence(c->reason));
}

/* What is needed may follow several sets of one format, a check each. */
static void say_sets(const lw_page *page, const lw_result *result, const lw_situation *s) {
  const lw_format_row *by = NULL;
  char sets[240] = "";
  int count = 0;
  for (int i = 0; i < s->check_count; i++) {
    const lw_format_row *row = s->check[i].by;
    if (!row || (by && strcmp(row->format, by->format) == 0)) continue;
    size_t used = strlen(sets);
    by = row;
    if (strstr(sets, row->format) && count > 1) continue;
    lw_print(sets + used, sizeof sets - used, "%s%s", used ? ", " : "", row->format);
    count++;
  }
  if (count == 1)
    lw_page_sayf(page, "  ", "What is needed follows the format %s: %s.", by->format, by->title);
  else if (count > 1)
    lw_page_sayf(page, "  ", "What is needed follows the format %s, each check by the worst of its sets: %s.",
                 result->wall.format, sets);
}

void lw_working_checks(const lw_page *page, const lw_result *result, const lw_situation *s) {
  lw_page_blank(page);
  lw_page_say(page, " ", "Checks: has = holds / pushes, and must reach needs");
  lw_page_linef(page, LW_TONE_PLAIN, "%-23s%8s%8s %-6s%7s%6s", "", "holds", "pushes", "", "has", "needs");
  for (int i = 0; i < s->check_count; i++) check_line(page, &s->check[i]);
  say_sets(page, result, s);
}

/* Where the storm's water comes from. */
void lw_working_storm(const lw_page *page, const lw_storm *s) {
  char formula[120];
  lw_print(formula, sizeof formula, "R/n = %.4f / %.4f", s->rain_m, s->porosity);
  say(page, "dh", formula, s->rise_m, "m of water");
  lw_page_sayf(page, "  ", "It rises from %.4f m below the top%s.", s->from_depth_m,
               s->spills ? ", as far as the soil or the overflow lets it" : "");
}
