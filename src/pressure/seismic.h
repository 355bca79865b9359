/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_SEISMIC_H
#define LOWWALL_PRESSURE_SEISMIC_H

#include <lowwall/seismic.h>

/* Add what an earthquake adds to a static thrust, at its own height.
 * Without an earthquake it stays as it is. */
void lw_seismic_add(lw_earth_state state, const lw_plane *plane, const lw_seismic_part *part,
                    lw_thrust *thrust, const lw_working *working);

/* --- its working: seismic_record.c --- */

/* A thrust before the earthquake. */
typedef struct lw_still {
  double thrust_kn_per_m, height_m;
} lw_still;

/* The angle psi and the coefficient of each layer, above water and below it. */
void lw_seismic_tell_layers(lw_earth_state state, const lw_plane *plane, const lw_working *working);
/* The increment, its height, and the thrust with it. */
void lw_seismic_tell(const lw_plane *plane, const lw_seismic_part *part, const lw_still *before,
                     const lw_thrust *thrust, const lw_working *working);

#endif
