/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ground_factors.h"

#include <math.h>

/* The factors of a set on a cross-section through wall and ground. */

static void weigh(lw_slip_soil *soil, double permanent) {
  soil->unit_weight_kn_per_m3 *= permanent;
  soil->saturated_unit_weight_kn_per_m3 *= permanent;
  soil->spare_kn_per_m3 *= permanent;
}

void lw_factor_set_weigh_ground(const lw_factor_set *factor_set, lw_situation_kind kind, bool light,
                                lw_slip_ground *ground) {
  double permanent = lw_factor_set_or(
             factor_set, light ? LW_FACTOR_PERMANENT_FAVOURABLE : LW_FACTOR_PERMANENT, kind, 1.0),
         variable = lw_factor_set_or(factor_set, LW_FACTOR_VARIABLE, kind, 1.0);
  for (int i = 0; i < ground->soil_count; i++) weigh(&ground->soil[i], permanent);
  weigh(&ground->below, permanent);
  ground->raised_kn_per_m3 *= permanent;
  ground->body_kn_per_m3 *= permanent;
  ground->water.unit_weight_kn_per_m3 *= permanent;
  for (int i = 0; i < ground->load_count; i++) {
    ground->load[i].pressure_kpa *= variable;
    ground->load[i].force_kn_per_m *= variable;
  }
}

bool lw_factor_set_weighs_twice(const lw_factor_set *factor_set, lw_situation_kind kind) {
  return fabs(lw_factor_set_or(factor_set, LW_FACTOR_PERMANENT, kind, 1.0) -
              lw_factor_set_or(factor_set, LW_FACTOR_PERMANENT_FAVOURABLE, kind, 1.0)) > 1e-12;
}
