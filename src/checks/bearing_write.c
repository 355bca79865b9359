/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "base/bound.h"
#include "bearing_common.h"

/* The working of a strip footing: its symbols with their units, and where its factors are from. */

enum { SYMBOLS = 26 };

static void symbols_of(const bearing_work *work, double value, lw_bound bound[SYMBOLS]) {
  const lw_strip *s = work->strip;
  const lw_bearing *b = work->found;
  const lw_bound all[SYMBOLS] = {{"B", s->width_m, "m"},
                                 {"e", s->eccentricity_m, "m"},
                                 {"B'", b->effective_width_m, "m"},
                                 {"Df", s->depth_m, "m"},
                                 {"k", work->way->depth_ratio, ""},
                                 {"phi", s->friction_rad * LW_DEG_PER_RAD, "deg"},
                                 {"c", s->cohesion_kpa, "kPa"},
                                 {"q'", s->overburden_kpa, "kPa"},
                                 {"gamma", s->unit_weight_kn_per_m3, "kN/m3"},
                                 {"V", s->vertical_kn_per_m, "kN/m"},
                                 {"H", s->horizontal_kn_per_m, "kN/m"},
                                 {"Hg", value, "kN/m"},
                                 {"omega", work->way->load_angle_rad * LW_DEG_PER_RAD, "deg"},
                                 {"Kpg", work->way->kp_gamma, ""},
                                 {"Nqp", work->way->nq_prandtl, ""},
                                 {"Nc", b->nc, ""},
                                 {"Nq", b->nq, ""},
                                 {"Ngamma", b->n_gamma, ""},
                                 {"dc", b->dc, ""},
                                 {"dq", b->dq, ""},
                                 {"dgamma", b->d_gamma, ""},
                                 {"ic", b->ic, ""},
                                 {"iq", b->iq, ""},
                                 {"igamma", b->i_gamma, ""},
                                 {"qu", b->ultimate_kpa, "kPa"},
                                 {"qnet", value, "kPa"}};
  memcpy(bound, all, sizeof all);
}

void lw_bearing_write_from(const bearing_work *work, const char *symbol, const char *formula, double value,
                           const char *source) {
  lw_bound bound[SYMBOLS];
  lw_step step = {.symbol = symbol, .formula = formula, .value = value, .unit = "", .source = source};
  if (work->working == NULL) return;
  symbols_of(work, value, bound);
  for (int i = 0; i < SYMBOLS; i++)
    if (strcmp(bound[i].symbol, symbol) == 0) step.unit = bound[i].unit;
  lw_working_bound(work->working, &step, bound, SYMBOLS);
}

void lw_bearing_write(const bearing_work *work, const char *symbol, const char *formula, double value) {
  lw_bearing_write_from(work, symbol, formula, value, work->author->routine->source);
}

void lw_bearing_write_inclination(const bearing_work *work, const char *symbol, const char *formula,
                                  double value) {
  lw_bearing_write_from(work, symbol, formula, value, work->author->inclination_source);
}
