/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

/* "remedy.drain+lower-wall.lower-wall_m" */
static void of_remedy(const lw_figures *figures, const lw_remedy *remedy) {
  char part[64];
  lw_print(part, sizeof part, "remedy.%s", remedy->slug);
  lw_figures b = lw_figures_below(figures, part);
  for (int i = 0; i < remedy->part_count; i++) {
    const lw_remedy_part *p = &remedy->part[i];
    char key[64];
    lw_print(key, sizeof key, "%s_%s", p->slug, lw_figures_key_unit(p->unit));
    lw_figures_put(&b, &(lw_figure_word){key, "what it comes to", p->unit, ""}, p->value);
  }
  lw_figures_put_number(&b, &(lw_figure_word){"ratio", "has over needs of what governs then", "", ""},
                        remedy->ratio, LW_REASON_NONE);
}

/* What the wall has at the least by either look, and with one caution less. */
static void of_looks(const lw_figures *figures) {
  const lw_result *r = figures->result;
  lw_figures b = lw_figures_below(figures, "looks");
  lw_figures_put_number(&b, &(lw_figure_word){"cautious", "least has by cautious values", "", ""},
                        r->looks.cautious.has, LW_REASON_NO_DEMAND);
  lw_figures_put_number(&b, &(lw_figure_word){"likely", "least has by likely values", "", ""},
                        r->looks.looked ? r->looks.likely.has : (lw_number){0}, LW_REASON_NO_DEMAND);
  for (int i = 0; i < r->cost_count; i++) {
    char part[32];
    lw_print(part, sizeof part, "caution-%d", i + 1);
    lw_figures one = lw_figures_below(figures, part);
    lw_figures_put_number(&one, &(lw_figure_word){"has", "has of what governs without that caution", "", ""},
                          r->cost[i].has, LW_REASON_NO_DEMAND);
    lw_figures_put_number(&one, &(lw_figure_word){"least", "least has without that caution", "", ""},
                          r->cost[i].least, LW_REASON_NO_DEMAND);
  }
}

void lw_figures_of_advice(const lw_figures *figures) {
  const lw_result *r = figures->result;
  of_looks(figures);
  for (int i = 0; i < r->remedy_count; i++) of_remedy(figures, &r->remedy[i]);
  for (int i = 0; i < r->asking_count; i++) {
    char part[32];
    lw_print(part, sizeof part, "asking-%d", i + 1);
    lw_figures b = lw_figures_below(figures, part);
    lw_figures_put_number(
        &b, &(lw_figure_word){"ratio_then", "has over needs were the answer favourable", "", ""},
        r->asking[i].ratio_then, LW_REASON_NONE);
  }
}
