/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_STUDIES_FENCE_FIND_H
#define LOWWALL_STUDIES_FENCE_FIND_H

#include <lowwall/studies.h>

/** The fence at the back and that on the wall or behind it: soil beside its wind, and wind on the wall.
 *  in    wall   as lw_wall_build made it
 *  out   fence  back and on.present are false where the sheet has no such fence; equal heights, post
 *               and boards are not found */
void lw_fence_weigh(const lw_wall *wall, const lw_tables *tables, lw_fence *fence);
/** Heights of soil found by root, posts and boards, for a report.
 *  in    fence  as lw_fence_weigh left it
 *  out   fence  equal_m, lasting_equal_m, post and boards, where it is the back of a bed */
void lw_fence_study(const lw_wall *wall, const lw_tables *tables, lw_fence *fence);

/** The bed in one of its states. */
lw_fence_bed lw_fence_bed_in(const lw_fence *fence, lw_fence_state state);

#endif
