/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_STUDIES_FENCE_WIND_H
#define LOWWALL_STUDIES_FENCE_WIND_H

#include <lowwall/studies.h>

/** From what distance on the critical wedge of the drained wall does not take the push of the posts.
 *  in    situations   as run
 *  out   wind         its clear_m; not known where nothing stands behind, or at rest
 *  note  1 Some twenty searches of the wedge: once a wall, not in a search over walls.
 *  from  [COULOMB1776 trial wedge] with a level push on the ground */
void lw_fence_clear(const lw_situations *situations, lw_fence_wind *wind);

#endif
