/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_SEEPAGE_RECORD_H
#define LOWWALL_PRESSURE_SEEPAGE_RECORD_H

#include <lowwall/lateral.h>

/** Record the thrust of seeping soil, along its direction, on the plane at an angle that pushes most. */
void lw_seepage_write_along(const lw_plane *plane, double angle_rad, double thrust_kn_per_m,
                            const lw_working *working);

/** Record that, and the level pushes of dry, seeping and blocked soil beside each other; k is Coulomb's. */
void lw_seepage_write(const lw_plane *plane, const lw_seepage *seepage, double k, const lw_working *working);

#endif
