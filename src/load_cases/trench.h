/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_TRENCH_H
#define LOWWALL_LOAD_CASES_TRENCH_H

#include <lowwall/studies.h>
#include "situation_plan.h"

bool lw_plan_trench(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan);

/* What a trench in front takes away from the support of the wall. */
void lw_trench_open(const lw_wall *wall, lw_ground *ground);

/** A trench in front of a wall, and the ground to leave alone.
 *  in    wall     site.trench_depth_m, site.trench_distance_m
 *        tables   threshold keep-out-front
 *  out   trench   thrust_times and moment_times are known where the floor lies below the base
 *  note  1 Undermined: the floor lies below the base inside the line of threshold trench-line, down and
 *          forwards from its front edge or from that of the pad, or the trench cuts into the pad.
 *        2 Push grows with the square of the height held, its moment with the cube; loads are left out.
 *        3 To be left alone: down to the base; from the ground on where what stands in front of the wall is
 *          counted (passive, or depth in a bearing theory).
 *  from  [LOWWALL trench]; tested by tests/load_cases/trench.c */
void lw_trench_find(const lw_wall *wall, const lw_tables *tables, lw_trench *trench);

#endif
