/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_PASSIVE_H
#define LOWWALL_BALANCE_PASSIVE_H

#include <lowwall/checks.h>

/** Passive resistance of the ground in front, as far as the method counts it: its level part, less the
 *  friction under base or pad that is lost where it turns up and lifts the wall.
 *  in    ground    of the load case
 *        below_m   below the base: the pad's thickness under the pad, else 0   m   0 or more
 *        working   its steps; NULL allowed
 *  gives kN/m, the share included; 0 when none is counted, or where it has no answer
 *  from  [RANKINE1857 level ground]; [COULOMB1776 general form] */
double lw_passive_resistance(const lw_wall *wall, const lw_ground *ground, double below_m,
                             const lw_working *working);

/** All that the ground in front holds from its surface down to a depth, whatever the method counts: without
 *  friction on what it holds, so that it lifts nothing.
 *  in    depth_m   of the pad's underside, or of its top, below that surface   m
 *        wet       water stands there: the ground weighs less
 *        working   as above
 *  gives kN/m; 0 where there is no ground, or no answer
 *  from  as above */
double lw_passive_beside_pad(const lw_wall *wall, const lw_ground *ground, double depth_m, bool wet,
                             const lw_working *working);

#endif
