/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TRENCH_H
#define LOWWALL_TRENCH_H

#include <lowwall/checks.h>

LW_PUBLIC_BEGIN

/* Digging in front of the toe: what an open trench does to a wall, and where nobody may dig. */

typedef struct lw_trench {
  double depth_m, distance_m;     /* of the trench: below the ground in front, from the toe; depth 0: none */
  double floor_m;                 /* of its floor above the base; below 0: deeper than the base */
  bool undermines;                /* deeper than the base, and too near: the base cannot be shown */
  lw_number thrust_times, moment_times; /* of the soil's push if the ground down to the floor were held too */
  double keep_out_depth_m;        /* nobody digs deeper than this below the ground in front ... */
  double keep_out_distance_m;     /* ... nearer than this to the toe */
} lw_trench;

/** A trench in front of a wall, and the ground to leave alone.
 *  in    wall     site.trench_depth_m, site.trench_distance_m
 *        tables   threshold keep-out-front
 *  out   trench   thrust_times and moment_times are known where the floor lies below the base
 *  note  1 Undermined: the floor lies below the base inside the line at 45 degrees down and forwards from its
 *          front edge, or from that of the pad, or the trench cuts into the pad.
 *        2 Push grows with the square of the height held, its moment with the cube; loads are left out.
 *        3 To be left alone: down to the base; from the ground on where what stands in front of the wall is
 *          counted (passive, or depth in a bearing theory).
 *  from  [LOWWALL trench]; tested by tests/load_cases/trench.c */
void lw_trench_find(const lw_wall *wall, const lw_tables *tables, lw_trench *trench);

LW_PUBLIC_END

#endif
