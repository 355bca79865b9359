/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "slip.h"

#include <math.h>

/* The result flattened once. JSON prints all figures, every other form picks from them. */

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

lw_figures lw_figures_below(const lw_figures *figures, const char *part) {
  lw_figures below = *figures;
  lw_print(below.prefix, sizeof below.prefix, "%s%s%s", figures->prefix, figures->prefix[0] ? "." : "", part);
  return below;
}

void lw_figures_each(const lw_result *result, lw_figure_taker taker, void *context) {
  lw_figures figures = {.taker = taker, .context = context, .result = result};
  lw_figures_of_wall(&figures);
  lw_figures_of_site(&figures);
  lw_figures_of_influence(&figures);
  lw_figures_of_tier(&figures);
  for (int i = 0; i < result->situations.count; i++) {
    const lw_situation *situation = &result->situations.situation[i];
    lw_figures below = lw_figures_below(&figures, lw_situation_slug(situation->name));
    lw_figures_of_situation(&below, situation);
  }
  lw_figures_of_building(&figures);
  lw_figures_of_narrow(&figures);
  lw_figures_of_water(&figures);
  lw_figures_of_trench(&figures);
  lw_figures_of_formats(&figures);
  lw_figures_of_fence(&figures);
  lw_figures_of_advice(&figures);
}
