/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "soil_push.h"

#include <math.h>

static bool is_of_loads(const lw_force *force) {
  return force->kind == LW_FORCE_SURCHARGE_THRUST || force->kind == LW_FORCE_LOADS_THRUST;
}

static bool is_of_soil(const lw_force *force) {
  return force->kind == LW_FORCE_THRUST || force->kind == LW_FORCE_SEISMIC_THRUST || is_of_loads(force);
}

bool lw_soil_push_find(const lw_free_body *body, lw_soil_push *push) {
  const lw_back_plane *back = &body->back;
  double turns = 0.0, moment = 0.0;
  *push = (lw_soil_push){0};
  if (body->status != LW_OK) return false;
  for (int i = 0; i < body->forces.count; i++) {
    const lw_force *f = &body->forces.force[i];
    if (f->kind == LW_FORCE_LEVEL_THRUST) push->through_ground_kn_per_m += f->horizontal_kn_per_m;
    if (!is_of_soil(f)) continue;
    /* On one line the moments about its foot are as the heights. */
    double across = f->horizontal_kn_per_m + back->lean * f->vertical_kn_per_m;
    push->horizontal_kn_per_m += f->horizontal_kn_per_m;
    push->vertical_kn_per_m += f->vertical_kn_per_m;
    push->loads = push->loads || is_of_loads(f);
    turns += across;
    moment += across * (f->y_m - back->foot_y_m);
  }
  push->kn_per_m = hypot(push->horizontal_kn_per_m, push->vertical_kn_per_m);
  if (push->kn_per_m < 1e-9 || turns < 1e-9) return false;
  push->angle_rad = atan2(push->vertical_kn_per_m, push->horizontal_kn_per_m);
  push->above_foot_m = moment / turns;
  push->x_m = back->foot_x_m - back->lean * push->above_foot_m;
  push->y_m = back->foot_y_m + push->above_foot_m;
  return true;
}
