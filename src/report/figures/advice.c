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

void lw_figures_of_advice(const lw_figures *figures) {
  const lw_result *r = figures->result;
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
