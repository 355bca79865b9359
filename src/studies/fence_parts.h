/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_STUDIES_FENCE_PARTS_H
#define LOWWALL_STUDIES_FENCE_PARTS_H

#include <lowwall/studies.h>

/* The wind that a fence at the back was built for: of what is not known, the least. */
void lw_fence_built_for(const lw_tables *tables, const lw_back_fence *back, lw_fence *fence);
/* The wind that pushes the wall: of what is not known, the most. */
void lw_fence_find_wind(const lw_tables *tables, const lw_wall *wall, lw_fence_wind *wind);
void lw_fence_find_post(const lw_tables *tables, const lw_wall *wall, lw_fence *fence);
void lw_fence_find_boards(const lw_tables *tables, const lw_back_fence *back, lw_fence *fence);

#endif
