/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_SEISMIC_H
#define LOWWALL_PRESSURE_SEISMIC_H

#include <lowwall/seismic.h>

/* Add what an earthquake adds to a static thrust, at its own height.
 * Without an earthquake it stays as it is. */
void lw_seismic_add(const lw_plane *plane, const lw_seismic_part *part, lw_thrust *thrust,
                    const lw_working *working);

#endif
