/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "pad_trench.h"

#include <math.h>

#include "base/tell.h"
#include "base/working.h"
#include "passive.h"

static bool is_dug_in(const lw_wall *wall) {
  bool all_counts_already = wall->method.passive_share > 0.0;
  return wall->site.pad.in_known_ground && wall->method.pad_in_trench == LW_COUNTED && !all_counts_already;
}

/* What grows from the ground down, and what is even over it. */
static void sum_pushes(const lw_forces *forces, double *growing, double *even) {
  *growing = *even = 0.0;
  for (int i = 0; i < forces->count; i++) {
    const lw_force *f = &forces->force[i];
    if (f->kind == LW_FORCE_THRUST || f->kind == LW_FORCE_WATER) *growing += f->horizontal_kn_per_m;
    if (f->kind == LW_FORCE_SURCHARGE_THRUST) *even += f->horizontal_kn_per_m;
  }
}

static double on_rear_side(const lw_wall *wall, const lw_push *push, const lw_forces *forces,
                           const lw_working *working) {
  double growing, even, thick = wall->site.pad.thickness_m, deep = push->back.plane.height_m;
  sum_pushes(forces, &growing, &even);
  double above = fmax(1.0 - thick / deep, 0.0);
  lw_step step = {.symbol = "Hr",
                  .formula = "on the pad's rear side: (soil and water) (1 - (1 - t/D)^2) + load t/D",
                  .value = fmax(growing, 0.0) * (1.0 - above * above) + even * (1.0 - above),
                  .unit = "kN/m"};
  lw_working_line(working, &step, "%.5f (1 - (1 - %.4f/%.4f)^2) + %.5f x %.4f/%.4f",
                  lw_tell(working, "kN/m", fmax(growing, 0.0)), lw_tell(working, "m", thick),
                  lw_tell(working, "m", deep), lw_tell(working, "kN/m", even), lw_tell(working, "m", thick),
                  lw_tell(working, "m", deep));
  return step.value;
}

static double before_front_side(const lw_wall *wall, const lw_ground *ground, const lw_working *working) {
  double over = fmax(ground->front.embedment_m - ground->front.dug_m, 0.0);
  double under = ground->front.embedment_m - ground->front.dug_m + wall->site.pad.thickness_m;
  bool wet = isfinite(ground->water_depth_m) || ground->led_away || ground->seeping;
  double whole = lw_passive_beside_pad(wall, ground, under, wet, working);
  double above = lw_passive_beside_pad(wall, ground, over, wet, NULL);
  lw_step step = {.symbol = "Hf",
                  .formula = "before its front side: Pp to its underside - Pp to its top",
                  .value = fmax(whole - above, 0.0),
                  .unit = "kN/m"};
  lw_working_line(working, &step, "%.5f - %.5f", lw_tell(working, "kN/m", whole),
                  lw_tell(working, "kN/m", above));
  return step.value;
}

double lw_pad_held_in_trench(const lw_wall *wall, const lw_ground *ground, const lw_push *push,
                             const lw_forces *forces, const lw_working *working) {
  if (!is_dug_in(wall)) return 0.0;
  lw_working_heading(working, "the pad in its trench:");
  double rear = on_rear_side(wall, push, forces, working);
  double front = before_front_side(wall, ground, working);
  return fmin(rear, front);
}
