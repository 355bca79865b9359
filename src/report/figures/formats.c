/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "formats.h"

#include "parts.h"

/* The wall under every set of factors. */

lw_reason lw_format_answer_reason(const lw_format_answer *a) {
  if (!a->governed) return a->stands == LW_HOLDS ? LW_REASON_NO_DEMAND : LW_REASON_NO_REQUIREMENT;
  return a->check.reason;
}

void lw_figures_of_formats(const lw_figures *figures) {
  const lw_formats *formats = &figures->result->formats;
  for (int i = 0; i < formats->count; i++) {
    const lw_format_answer *a = &formats->answer[i];
    const struct {
      lw_figure_word word;
      lw_number value;
    } all[] = {{{"has", "resistance over demand, of what governs", "", ""}, a->check.has},
               {{"needs", "what is asked there", "", ""}, a->check.needs},
               {{"ratio", "has over needs there", "", ""}, a->check.ratio}};
    char part[64];
    lw_print(part, sizeof part, "formats.%s", a->row->format);
    lw_figures b = lw_figures_below(figures, part);
    for (size_t k = 0; k < sizeof all / sizeof *all; k++)
      lw_figures_put_number(&b, &all[k].word, all[k].value, lw_format_answer_reason(a));
  }
}
