/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_PAD_TRENCH_H
#define LOWWALL_BALANCE_PAD_TRENCH_H

#include "push.h"

/** A pad lies in a trench: what pushes on its rear side is held by the ground before its front side, as far
 *  as that goes. What is left of that ground helps nothing.
 *  in    push      on the wall down to the pad's underside
 *        forces    what pushes, gathered and factored
 *        working   its steps; NULL allowed
 *  gives kN/m, without a factor; 0 where the ground has no name, or the method counts it otherwise
 *  note  1 The push on the rear side is told too low rather than too high: of soil and water as if it grew
 *          evenly from the ground down, of an even load as an even part, of all others nothing.
 *        2 Ground in front is wet wherever water is behind.
 *  from  statics; [RANKINE1857 level ground] */
double lw_pad_held_in_trench(const lw_wall *wall, const lw_ground *ground, const lw_push *push,
                             const lw_forces *forces, const lw_working *working);

#endif
