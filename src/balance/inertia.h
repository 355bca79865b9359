/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_INERTIA_H
#define LOWWALL_BALANCE_INERTIA_H

#include <lowwall/checks.h>

bool lw_seismic_acts(const lw_seismic *seismic);
/* The inertia of one weight, under an index of its own. */
lw_force lw_seismic_inertia(const lw_seismic *seismic, const lw_force *weight, int index);

/* What an earthquake does to a section beside the thrust: inertia of the wall and of what stands on it, and
 * open water. Nothing without one. */
void lw_seismic_on_wall(const lw_site *site, const lw_ground *ground, const lw_section *section,
                        const lw_back_plane *back, lw_forces *forces);

#endif
