/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "put.h"

#include <math.h>
#include <string.h>

void lw_figures_put_number(const lw_figures *figures, const lw_figure_word *word, lw_number value,
                           lw_reason reason) {
  lw_figure figure = {.label = word->label, .unit = word->unit, .source = word->source ? word->source : ""};
  figure.value = (lw_number){value.known ? value.value : 0.0, value.known && isfinite(value.value)};
  if (!figure.value.known) figure.reason = reason == LW_REASON_NONE ? LW_REASON_NO_DEMAND : reason;
  lw_print(figure.key, sizeof figure.key, "%s%s%s", figures->prefix, figures->prefix[0] ? "." : "",
           word->tail);
  figures->taker(figures->context, &figure);
}

void lw_figures_put(const lw_figures *figures, const lw_figure_word *word, double value) {
  lw_figures_put_number(figures, word, (lw_number){value, isfinite(value)}, LW_REASON_NO_DEMAND);
}

void lw_figures_put_rows(const lw_figures *figures, const lw_figure_row *row, size_t count) {
  for (size_t i = 0; i < count; i++) {
    lw_figure_word word = {row[i].tail, row[i].label, row[i].unit, ""};
    if (isfinite(row[i].value)) lw_figures_put(figures, &word, row[i].value);
  }
}

lw_figures lw_figures_below(const lw_figures *figures, const char *part) {
  lw_figures below = *figures;
  lw_print(below.prefix, sizeof below.prefix, "%s%s%s", figures->prefix, figures->prefix[0] ? "." : "", part);
  return below;
}

/* Units as they end a key. */
static const struct {
  const char *unit, *key;
} key_units[] = {{"kN/m", "kn_per_m"}, {"kN m/m", "knm_per_m"}, {"kPa", "kpa"},
                 {"m", "m"},           {"deg", "deg"},          {"kN/m3", "kn_per_m3"}};

const char *lw_figures_key_unit(const char *unit) {
  for (size_t i = 0; i < sizeof key_units / sizeof *key_units; i++) {
    if (strcmp(key_units[i].unit, unit) == 0) return key_units[i].key;
  }
  return "number";
}
