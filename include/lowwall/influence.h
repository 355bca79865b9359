/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_INFLUENCE_H
#define LOWWALL_INFLUENCE_H

#include <lowwall/checks.h>

LW_PUBLIC_BEGIN

/* The line of influence: from the rear of the base up into the ground. What stands within it leans on the
 * wall; a builder keeps heavy things beyond it. */

typedef struct lw_influence_load {
  int number;            /* on the sheet, from 1 */
  lw_load_kind kind;     /* uniform, strip, line or point */
  double pressure_kpa;   /* of a uniform load or a strip */
  double force;          /* of a line load kN/m, of a point load kN */
  double distance_m;     /* of its near edge, behind the top of the wall */
  double below_m;        /* of the ground's level there */
  double line_m;         /* where the line passes the load's level, behind the top of the wall */
  double move_m;         /* how far back it would have to go to stand on the line; 0: it is outside */
  bool heavy;            /* heavier than garden use; a uniform load: as heavy as a vehicle's */
  bool below_base;       /* it stands below the rear of the base, and does not push the wall */
  bool inside;
} lw_influence_load;

typedef struct lw_influence {
  double angle_rad;      /* from the horizontal */
  double reach_m;        /* so far behind the rear of the top the line comes out of the ground */
  int count;
  lw_influence_load load[LW_LOAD_MAX];
} lw_influence;

/** Every load behind the wall that the sheet gives, held against the line of influence.
 *  in    wall        as lw_wall_build made it
 *        tables      for the garden load and the vehicle's
 *  out   influence   without the load that is only assumed, and without loads on the cap
 *  note  1 The line starts at the rear of the base, not of the pad; the ground's slope is followed.
 *        2 With the width of the wall not known it starts below the rear of the top.
 *  from  [LOWWALL conditions] for the angle, item `method influence line` */
void lw_influence_find(const lw_wall *wall, const lw_tables *tables, lw_influence *influence);

/** How far behind the rear of the top the line comes out of the ground.
 *  in    wall   as lw_wall_build made it
 *  gives the distance in m; 0 where it comes out in front of the top's rear
 *  note  1 Ground that rises as steeply as the line is followed to its bend. */
double lw_influence_reach(const lw_wall *wall);

LW_PUBLIC_END

#endif
