/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

/* How loads behind the wall stand to the line of influence. */

static void of_influence_load(const lw_figures *influence, const lw_influence_load *load) {
  char part[24];
  lw_print(part, sizeof part, "load-%d", load->number);
  lw_figures b = lw_figures_below(influence, part);
  lw_figures_put(&b, &(lw_figure_word){"distance_m", "near edge of the load behind the top", "m", ""},
                 load->distance_m);
  lw_figures_put(&b, &(lw_figure_word){"below_m", "the load below the ground there", "m", ""}, load->below_m);
  lw_figures_put(
      &b, &(lw_figure_word){"line_m", "line of influence at the load's level, behind the top", "m", ""},
      load->line_m);
  lw_figures_put(
      &b, &(lw_figure_word){"move_m", "how far back it would have to go to stand on the line", "m", ""},
      load->move_m);
}

void lw_figures_of_influence(const lw_figures *figures) {
  const lw_influence *all = &figures->result->influence;
  lw_figures b = lw_figures_below(figures, "influence");
  if (all->count == 0) return;
  lw_figures_put(&b, &(lw_figure_word){"angle_deg", "line of influence from the horizontal", "deg", ""},
                 all->angle_rad * LW_DEG_PER_RAD);
  for (int i = 0; i < all->count; i++) of_influence_load(&b, &all->load[i]);
}
