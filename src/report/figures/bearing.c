/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "figures.h"

/* Bearing by theory, author's factors and all: as worked out for the footing that was checked. */

static void put_factors(const lw_figures *figures, const lw_bearing *b, const char *source) {
  const struct {
    const char *tail, *label, *unit;
    double value;
  } rows[] = {
      {"nc", "bearing factor Nc", "", b->nc},
      {"nq", "bearing factor Nq", "", b->nq},
      {"n_gamma", "bearing factor N gamma", "", b->n_gamma},
      {"dc", "depth factor of cohesion", "", b->dc},
      {"dq", "depth factor of overburden", "", b->dq},
      {"d_gamma", "depth factor of weight", "", b->d_gamma},
      {"ic", "inclination factor of cohesion", "", b->ic},
      {"iq", "inclination factor of overburden", "", b->iq},
      {"i_gamma", "inclination factor of weight", "", b->i_gamma},
      {"effective_width_m", "effective width", "m", b->effective_width_m},
      {"ultimate_kpa", "ultimate bearing pressure", "kPa", b->ultimate_kpa},
      {"net_kpa", "ultimate bearing pressure less the overburden", "kPa", b->net_kpa},
  };
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
    lw_figures_put(figures, &(lw_figure_word){rows[i].tail, rows[i].label, rows[i].unit, source},
                   rows[i].value);
}

void lw_figures_of_bearing(const lw_figures *figures, const lw_situation *s, const lw_stage *stage,
                           lw_at at) {
  const lw_wall *wall = &figures->result->wall;
  const lw_bearing_routine *routine = lw_bearing_routine_of(wall->method.bearing);
  if (!routine || stage->status != LW_OK || !stage->contact.inside) return;
  lw_strip strip = lw_situation_strip(wall, s, at);
  lw_bearing bearing;
  lw_error error = {0};
  if (routine->ultimate(&strip, &bearing, &error, NULL) != LW_OK) return;
  lw_figures below = lw_figures_below(figures, "strip");
  put_factors(&below, &bearing, routine->source);
}
