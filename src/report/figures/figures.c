/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"
#include "slip.h"

/* The result flattened once. JSON prints all figures, every other form picks from them. */

static void (*const parts[])(const lw_figures *figures) = {
    lw_figures_of_wall,       lw_figures_of_site,         lw_figures_of_influence, lw_figures_of_tier,
    lw_figures_of_situations, lw_figures_of_construction, lw_figures_of_narrow,    lw_figures_of_water,
    lw_figures_of_trench,     lw_figures_of_factor_sets,  lw_figures_of_fence,     lw_figures_of_advice};

void lw_figures_each(const lw_result *result, lw_figure_taker taker, void *context) {
  lw_figures figures = {.taker = taker, .context = context, .result = result};
  for (size_t i = 0; i < sizeof parts / sizeof *parts; i++) parts[i](&figures);
}
