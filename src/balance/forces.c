/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "forces.h"

/* No default: whoever adds a kind says whose factor it takes. */
double lw_factor_of(const lw_factors *factors, lw_force_kind kind) {
  switch (kind) {
  case LW_FORCE_PART: return factors->wall_weight;
  case LW_FORCE_SOIL_ON_WALL: return factors->soil_weight;
  case LW_FORCE_SURCHARGE_ON_WALL: return factors->surcharge_on_wall;
  case LW_FORCE_THRUST: return factors->earth_pressure;
  case LW_FORCE_SURCHARGE_THRUST:
  case LW_FORCE_LOADS_THRUST: return factors->variable;
  case LW_FORCE_LEVEL_THRUST: return factors->level_push;
  case LW_FORCE_WATER:
  case LW_FORCE_UPLIFT: return factors->water;
  case LW_FORCE_FRONT_WATER: return factors->front_water;
  case LW_FORCE_PEOPLE:
  case LW_FORCE_CAP_LOAD: return factors->variable_on_wall;
  case LW_FORCE_TRENCH: return factors->trench;
  /* An earthquake is an extreme situation, and its own action takes no factor there. */
  case LW_FORCE_SEISMIC_THRUST:
  case LW_FORCE_INERTIA:
  case LW_FORCE_SEISMIC_WATER: break;
  }
  return 1.0;
}

double lw_forces_factor(const lw_forces *forces, lw_force_kind kind) {
  return forces->factors.factored ? lw_factor_of(&forces->factors, kind) : 1.0;
}
