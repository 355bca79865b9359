/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "working.h"

#include <math.h>

/* From the sums to the pressures, and the checks as they are held against what is asked. */

static void say(const lw_page *page, const char *symbol, const char *formula, double value, const char *unit) {
  lw_page_sayf(page, "  ", "%-3s = %s = %.4f%s%s", symbol, formula, value, unit[0] ? " " : "", unit);
}

/* How the two edge pressures came about; their values stand after it. */
static const char *pressure_formula(const lw_contact *c) {
  if (c->share_in_compression > 1.0 - 1e-9) return "V/B (1 +- 6e/B), the resultant inside the middle third";
  return "2V / (3 (B/2 - |e|)), a triangle: the resultant is outside the middle third";
}

void lw_working_contact(const lw_page *page, const lw_stage *stage) {
  const lw_contact *c = &stage->contact;
  char formula[120];
  if (!c->inside) {
    lw_page_sayf(page, "  ", "The resultant falls outside the contact of %.3f m: it stands on nothing.", c->width_m);
    return;
  }
  lw_print(formula, sizeof formula, "(%.4f - %.4f) / %.4f", c->resisting_knm_per_m, c->overturning_knm_per_m,
           c->vertical_kn_per_m);
  say(page, "xR", formula, c->resultant_m, "m from the front edge");
  lw_print(formula, sizeof formula, "B/2 - xR with B = %.4f m", c->width_m);
  say(page, "e", formula, c->eccentricity_m, "m towards the front");
  lw_print(formula, sizeof formula, "B - 2|e|");
  say(page, "B'", formula, c->effective_width_m, "m");
  lw_page_sayf(page, "  ", "p   : %s; front %.3f kPa, rear %.3f kPa, greatest %.3f kPa", pressure_formula(c), c->front_kpa,
               c->rear_kpa, c->greatest_kpa);
}

static void number(lw_number n, int decimals, char *out, size_t size) {
  if (n.known) lw_number_print(out, size, n.value, decimals);
  else lw_print(out, size, "-");
}

static void check_line(const lw_page *page, const lw_check *c) {
  char words[40], outcome[40], demand[24], resistance[24], has[24], needs[24];
  lw_check_words(c, words, sizeof words);
  lw_check_outcome(c, outcome, sizeof outcome);
  number(c->demand, 4, demand, sizeof demand);
  number(c->resistance, 4, resistance, sizeof resistance);
  number(c->has, 3, has, sizeof has);
  number(c->needs, 2, needs, sizeof needs);
  bool bad = c->counts && c->holds != LW_HOLDS;
  lw_page_linef(page, bad ? LW_TONE_BAD : LW_TONE_PLAIN, "  %-24s%9s%9s %-6s%8s%6s %s", words, resistance, demand, c->unit, has,
                needs, outcome);
  if (c->reason != LW_REASON_NONE) lw_page_sayf(page, "      ", "%s", lw_reason_sentence(c->reason));
}

void lw_working_checks(const lw_page *page, const lw_situation *s) {
  const lw_format_row *by = NULL;
  lw_page_blank(page);
  lw_page_say(page, " ", "Checks: has = holds / pushes, and must reach needs");
  lw_page_linef(page, LW_TONE_PLAIN, "  %-24s%9s%9s %-6s%8s%6s", "", "holds", "pushes", "", "has", "needs");
  for (int i = 0; i < s->check_count; i++) {
    check_line(page, &s->check[i]);
    if (s->check[i].by) by = s->check[i].by;
  }
  if (by) lw_page_sayf(page, "  ", "By %s (format %s).", by->title, by->format);
}
