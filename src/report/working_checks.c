/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "working.h"

#include <math.h>

/* From the sums to the pressures, and the checks as they are held against what is asked. */

static void say(const lw_page *page, const char *symbol, const char *formula, double value,
                const char *unit) {
  char prefix[24];
  lw_print(prefix, sizeof prefix, "  %-3s = ", symbol);
  lw_page_sayf(page, prefix, "%s = %.4f%s%s", formula, value, unit[0] ? " " : "", unit);
}

/* How the two edge pressures came about; their values stand after it. */
static const char *pressure_formula(const lw_contact *c, lw_base_pressure method) {
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

static void edges(const lw_page *page, const lw_contact *c, lw_base_pressure method) {
  char formula[120];
  lw_print(formula, sizeof formula, "B/2 - xR with B = %.4f m", c->width_m);
  say(page, "e", formula, c->eccentricity_m, "m towards the front");
  say(page, "B'", "B - 2|e|", c->effective_width_m, "m");
  lw_page_sayf(page, "  p   = ", "%s: front %.3f kPa, rear %.3f kPa, greatest %.3f kPa",
               pressure_formula(c, method), c->front_kpa, c->rear_kpa, c->greatest_kpa);
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

static void number(lw_number n, int decimals, char *out, size_t size) {
  if (n.known)
    lw_number_print(out, size, n.value, decimals);
  else
    lw_print(out, size, "-");
}

static void check_line(const lw_page *page, const lw_check *c) {
  char words[40], outcome[40], demand[24], resistance[24], has[24], needs[24];
  lw_check_words(c, words, sizeof words);
  lw_check_outcome(c, outcome, sizeof outcome);
  number(c->demand, 3, demand, sizeof demand);
  number(c->resistance, 3, resistance, sizeof resistance);
  number(c->has, 3, has, sizeof has);
  number(c->needs, 2, needs, sizeof needs);
  bool bad = c->counts && c->holds != LW_HOLDS;
  lw_page_linef(page, bad ? LW_TONE_BAD : LW_TONE_PLAIN, " %-23s%8s%8s %-6s%7s%5s %s", words, resistance,
                demand, c->unit, has, needs, outcome);
  if (c->reason != LW_REASON_NONE) lw_page_sayf(page, "      ", "%s", lw_reason_sentence(c->reason));
}

void lw_working_checks(const lw_page *page, const lw_situation *s) {
  const lw_format_row *by = NULL;
  lw_page_blank(page);
  lw_page_say(page, " ", "Checks: has = holds / pushes, and must reach needs");
  lw_page_linef(page, LW_TONE_PLAIN, " %-23s%8s%8s %-6s%7s%5s", "", "holds", "pushes", "", "has", "needs");
  for (int i = 0; i < s->check_count; i++) {
    check_line(page, &s->check[i]);
    if (s->check[i].by) by = s->check[i].by;
  }
  if (by) lw_page_sayf(page, "  ", "By %s (format %s).", by->title, by->format);
}
