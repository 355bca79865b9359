/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "figures.h"

/* Pressure down the plane: an entry at its ends and at every break, two where it jumps. */
void lw_figures_of_profile(const lw_figures *figures, const lw_stage *stage) {
  for (int i = 0; stage->status == LW_OK && i < stage->thrust.profile_count; i++) {
    const lw_profile_point *p = &stage->thrust.profile[i];
    char part[24];
    lw_print(part, sizeof part, "profile-%d", i + 1);
    lw_figures b = lw_figures_below(figures, part);
    lw_figures_put(&b, &(lw_figure_word){"depth_m", "depth below the top of the plane", "m", ""}, p->depth_m);
    lw_figures_put(&b, &(lw_figure_word){"soil_kpa", "pressure of the soil, load included", "kPa", ""},
                   p->soil_kpa);
    lw_figures_put(&b, &(lw_figure_word){"surcharge_kpa", "part of it from the uniform load", "kPa", ""},
                   p->surcharge_kpa);
    lw_figures_put(&b, &(lw_figure_word){"water_kpa", "pressure of the water", "kPa", ""}, p->water_kpa);
  }
}
