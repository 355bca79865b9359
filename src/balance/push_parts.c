/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "push_parts.h"

#include <math.h>

#include "base/extremes.h"

/* One thrust at one height, divided among soil, surcharge, earthquake and loads. Each keeps the height that
 * it has by itself; what the height of the whole leaves over goes to the loads at a distance, whose height is
 * the least certain, then to the soil, then to the rest. */

static double moment_of(const lw_lateral *part) {
  return part->thrust_kn_per_m * part->height_m;
}

static double within(double height_m, double plane_m) {
  return lw_smaller(lw_larger(height_m, 0.0), plane_m);
}

/* No part is more than what is left of the thrust. */
static lw_lateral take(double thrust_kn_per_m, double height_m, double plane_m, double *left) {
  double taken = lw_smaller(lw_larger(thrust_kn_per_m, 0.0), lw_larger(*left, 0.0));
  *left -= taken;
  return (lw_lateral){taken, within(height_m, plane_m)};
}

/* Move arms up towards the top of the plane, or down towards its foot, all by one share of their way. */
static void move_arms(lw_lateral *part, int count, double plane_m, double *missing_knm_per_m) {
  bool up = *missing_knm_per_m > 0.0;
  double room = 0.0;
  for (int i = 0; i < count; i++)
    room += part[i].thrust_kn_per_m * (up ? plane_m - part[i].height_m : part[i].height_m);
  if (room <= 0.0) return;
  double share = lw_smaller(fabs(*missing_knm_per_m) / room, 1.0);
  for (int i = 0; i < count; i++) part[i].height_m += share * ((up ? plane_m : 0.0) - part[i].height_m);
  *missing_knm_per_m -= (up ? share : -share) * room;
}

/* What a thrust says of its parts is what it is made of: of a formula's they may not add up to a wedge. */
static void tell(lw_push *push) {
  const lw_lateral *load = &push->part[LW_PART_OF_SURCHARGE], *shake = &push->part[LW_PART_OF_EARTHQUAKE];
  push->thrust.surcharge_kn_per_m = load->thrust_kn_per_m;
  push->thrust.surcharge_height_m = load->thrust_kn_per_m > 0.0 ? load->height_m : 0.0;
  push->thrust.seismic_kn_per_m = shake->thrust_kn_per_m;
  push->thrust.seismic_height_m = shake->thrust_kn_per_m > 0.0 ? shake->height_m : 0.0;
}

void lw_push_divide(lw_push *push) {
  const lw_thrust *t = &push->thrust;
  lw_lateral *part = push->part;
  double plane = push->back.plane.height_m, left = t->total_kn_per_m;
  double whole = left * t->height_of_action_m, unloaded = moment_of(&push->unloaded);
  part[LW_PART_OF_PUSHES] = take(push->by_pushes.thrust_kn_per_m, push->by_pushes.height_m, plane, &left);
  part[LW_PART_OF_LOADS] = take(push->by_loads.thrust_kn_per_m, push->by_loads.height_m, plane, &left);
  part[LW_PART_OF_EARTHQUAKE] = take(t->seismic_kn_per_m, t->seismic_height_m, plane, &left);
  part[LW_PART_OF_SURCHARGE] = take(t->surcharge_kn_per_m, t->surcharge_height_m, plane, &left);
  double others = moment_of(&part[LW_PART_OF_EARTHQUAKE]) + moment_of(&part[LW_PART_OF_SURCHARGE]);
  double pushes = moment_of(&part[LW_PART_OF_PUSHES]) + moment_of(&part[LW_PART_OF_LOADS]);
  double soil = (push->unloaded.thrust_kn_per_m > 0.0 ? unloaded : whole - pushes) - others;
  part[LW_PART_OF_SOIL] = take(left, left > 0.0 ? soil / left : 0.0, plane, &left);
  double missing = whole - pushes - others - moment_of(&part[LW_PART_OF_SOIL]);
  move_arms(&part[LW_PART_OF_LOADS], 2, plane, &missing);
  move_arms(&part[LW_PART_OF_SOIL], 1, plane, &missing);
  move_arms(&part[LW_PART_OF_SURCHARGE], 2, plane, &missing);
  tell(push);
}
