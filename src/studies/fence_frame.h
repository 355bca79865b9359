/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_STUDIES_FENCE_FRAME_H
#define LOWWALL_STUDIES_FENCE_FRAME_H

#include <lowwall/studies.h>

/** What the soil does to one post, and what the ground around it holds, as the working has it.
 *  in    fence   found */
void lw_fence_write_post(const lw_fence *fence, const lw_working *working);

#endif
