/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "figures.h"

#include <string.h>

/* "kN m/m" in a key. */
static const char *key_unit(const char *unit) {
  if (strcmp(unit, "kN/m") == 0) return "kn_per_m";
  if (strcmp(unit, "kN m/m") == 0) return "knm_per_m";
  return strcmp(unit, "kPa") == 0 ? "kpa" : "m";
}

void lw_figures_of_check(const lw_figures *figures, const lw_check *check) {
  char at[24], part[48], demand[32], resistance[32];
  lw_check_print_at(check, at, sizeof at);
  lw_print(part, sizeof part, "%s.%s", at, lw_check_slug(check->kind));
  lw_print(demand, sizeof demand, "demand_%s", key_unit(check->unit));
  lw_print(resistance, sizeof resistance, "resistance_%s", key_unit(check->unit));
  lw_figures b = lw_figures_below(figures, part);
  const char *source = check->by ? check->by->from.source : "";
  lw_figures_put_number(&b, &(lw_figure_word){demand, "demand", check->unit, ""}, check->demand);
  lw_figures_put_number(&b, &(lw_figure_word){resistance, "resistance", check->unit, ""}, check->resistance);
  lw_figures_put_number(&b, &(lw_figure_word){"has", "resistance over demand", "", ""}, check->has);
  lw_figures_put_number(&b, &(lw_figure_word){"needs", "what is asked", "", source}, check->needs);
  lw_figures_put_number(&b, &(lw_figure_word){"ratio", "has over needs", "", ""}, check->ratio);
}

void lw_figures_of_advice(const lw_figures *figures) {
  const lw_result *r = figures->result;
  for (int i = 0; i < r->remedy_count; i++) {
    char part[64];
    lw_print(part, sizeof part, "remedy.%s", r->remedy[i].slug);
    lw_figures b = lw_figures_below(figures, part);
    lw_figures_put_number(&b, &(lw_figure_word){"value_m", "what it comes to", r->remedy[i].unit, ""}, r->remedy[i].value);
    lw_figures_put_number(&b, &(lw_figure_word){"ratio", "has over needs of what governs then", "", ""},
                          r->remedy[i].ratio);
  }
}
