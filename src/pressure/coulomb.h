/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_COULOMB_H
#define LOWWALL_PRESSURE_COULOMB_H

#include <lowwall/pressure.h>

/* Coulomb's coefficient, as the working has it. */
void lw_coulomb_write(lw_earth_state state, const lw_wall_angles *angles, double k,
                      const lw_working *working);

#endif
