/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_STUDIES_FENCE_TOLD_H
#define LOWWALL_STUDIES_FENCE_TOLD_H

#include <lowwall/studies.h>

/** The steps of a fence that carries soil.
 *  in    fence   found: soil and wind against it; one post, what holds it, and the boards */
void lw_fence_tell_pushes(const lw_fence *fence, const lw_working *working);
void lw_fence_tell_post(const lw_fence *fence, const lw_working *working);

/* The steps to what the wind does to fence and wall, a metre run. */
void lw_fence_tell_wind(const lw_wall *wall, const lw_fence_wind *wind, const lw_working *working);

#endif
