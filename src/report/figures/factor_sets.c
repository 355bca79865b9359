/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "factor_sets.h"

#include "parts.h"

/* The wall under every set of factors. */

lw_reason lw_factor_set_answer_reason(const lw_factor_set_answer *a) {
  if (!a->governed) return a->stands == LW_HOLDS ? LW_REASON_NO_DEMAND : LW_REASON_NO_REQUIREMENT;
  return a->check.reason;
}

void lw_figures_of_factor_sets(const lw_figures *figures) {
  const lw_factor_sets *factor_sets = &figures->result->factor_sets;
  for (int i = 0; i < factor_sets->count; i++) {
    const lw_factor_set_answer *a = &factor_sets->answer[i];
    const struct {
      lw_figure_word word;
      lw_number value;
    } all[] = {{{"has", "resistance over demand, of what governs", "", ""}, a->check.has},
               {{"needs", "what is asked there", "", ""}, a->check.needs},
               {{"ratio", "has over needs there", "", ""}, a->check.ratio}};
    char part[64];
    lw_print(part, sizeof part, "formats.%s", a->row->factor_set);
    lw_figures b = lw_figures_below(figures, part);
    for (size_t k = 0; k < sizeof all / sizeof *all; k++)
      lw_figures_put_number(&b, &all[k].word, all[k].value, lw_factor_set_answer_reason(a));
  }
}
