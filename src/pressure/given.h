/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_GIVEN_H
#define LOWWALL_PRESSURE_GIVEN_H

#include <lowwall/pressure.h>

/** The routine of a coefficient that is given, in place of a formula's: K of the whole thrust, for every
 *  layer; cohesion takes off 2 c sqrt(K) but at rest. Along the ground or at the wall friction.
 *  gives its descriptor, which has no source; its thrust answers LW_NO_SOLUTION with the reason given-number
 *        (passive, an earthquake, no coefficient) or what lw_rankine_thrust refuses of any plane */
const lw_pressure_routine *lw_given_routine(void);

#endif
