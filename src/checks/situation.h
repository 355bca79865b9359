/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECKS_SITUATION_H
#define LOWWALL_CHECKS_SITUATION_H

#include "stage.h"

/* What one situation is going to be. */
typedef struct lw_situation_plan {
  lw_situation_name name;
  lw_situation_kind kind;
  bool decides;
  const char *why;
  double water_depth_m;
  lw_actions actions;
  double seismic_horizontal, seismic_vertical; /* both 0: no earthquake */
} lw_situation_plan;

/* Run every plan on the wall; situations->count says how many there are. */
void lw_situations_follow(const lw_wall *wall, const lw_tables *tables, const lw_situation_plan *plan,
                          lw_situations *situations, const lw_working *working);

#endif
