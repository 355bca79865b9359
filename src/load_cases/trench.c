/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/studies.h>

#include <math.h>

#include "trench.h"
#include "balance/weigh.h"
#include "base/angles.h"

/* A trench open in front of the toe, taken as endless to the front: nobody knows how wide it will be. */

static const double CLOSE = 1e-9;

/* How far the pad stands out in front of the base. */
static double pad_beyond(const lw_wall *wall) {
  return fmax(0.5 * (wall->site.pad.width_m - wall->section.base_width_m), 0.0);
}

static double floor_of(const lw_wall *wall) {
  return wall->section.embedment_m - wall->site.trench_depth_m;
}

/* Inside the line down and forwards from the front edge of the base or of the pad, or into the pad. */
static bool undermines(const lw_wall *wall) {
  const lw_pad *pad = &wall->site.pad;
  double below = -floor_of(wall), run = 1.0 / wall->site.trench_line_fall;
  if (wall->site.trench_depth_m <= 0.0 || below <= CLOSE) return false;
  double of_pad = pad->thickness_m > 0.0 ? pad_beyond(wall) + run * fmax(below - pad->thickness_m, 0.0) : 0.0;
  return wall->site.trench_distance_m < fmax(run * below, of_pad) - CLOSE;
}

/* Where the plane of passive failure from the lowest foot comes out of the ground in front. */
static double passive_reach(const lw_wall *wall) {
  double depth = wall->section.embedment_m + wall->site.pad.thickness_m;
  return depth * tan(LW_QUARTER_PI + 0.5 * wall->site.footing.friction_rad);
}

/* How far the ground that a strip footing heaves up reaches in front of it. [PRANDTL-1920 mechanism] */
static double bearing_reach(const lw_wall *wall) {
  double phi = wall->site.footing.friction_rad;
  double width = fmax(wall->site.pad.width_m, wall->section.base_width_m);
  return width * tan(LW_QUARTER_PI + 0.5 * phi) * exp(LW_HALF_PI * tan(phi));
}

void lw_trench_open(const lw_wall *wall, lw_ground *ground) {
  double distance = wall->site.trench_distance_m, floor = floor_of(wall);
  lw_front *front = &ground->front;
  front->undermined = undermines(wall);
  bool passive = distance < passive_reach(wall), bearing = distance < bearing_reach(wall);
  if (floor < 0.0 && distance > 0.0) front->slope_rad = fmax(front->slope_rad, atan(-floor / distance));
  if (passive) front->embedment_m = floor;
  if (!bearing) return;
  double left = fmax(floor, -wall->site.pad.thickness_m);
  front->bearing_embedment_m = fmin(front->bearing_embedment_m, left);
}

bool lw_plan_trench(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan) {
  (void)tables;
  plan->name = LW_SITUATION_TRENCH;
  plan->kind = LW_UNUSUAL;
  plan->decides = true;
  plan->why = LW_WHY_DIGGING;
  return wall->site.trench_depth_m > 0.0;
}

/* What stands in front of the wall counts: then nothing of it may be taken away. */
static bool counts_the_front(const lw_wall *wall) {
  bool theory = wall->method.bearing != LW_BEARING_PRESUMPTIVE && wall->section.bearing_embedment_m > 0.0;
  return theory || wall->method.passive_share > 0.0;
}

void lw_trench_find(const lw_wall *wall, const lw_tables *tables, lw_trench *trench) {
  double heights = lw_known_value(tables, LW_THRESHOLD_KEEP_OUT_FRONT);
  double held = wall->section.height_m - wall->site.soil_below_top_m;
  *trench = (lw_trench){
      .depth_m = wall->site.trench_depth_m,
      .distance_m = wall->site.trench_distance_m,
      .floor_m = floor_of(wall),
      .undermines = undermines(wall),
      .keep_out_depth_m = counts_the_front(wall) ? 0.0 : wall->section.embedment_m,
      .keep_out_distance_m = heights * (wall->section.height_m + wall->site.pad.thickness_m),
  };
  if (trench->depth_m <= 0.0 || trench->floor_m >= -CLOSE || held <= 0.0) return;
  double times = (held - trench->floor_m) / held;
  trench->thrust_times = lw_known(times * times);
  trench->moment_times = lw_known(times * times * times);
}
