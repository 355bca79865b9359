/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_STUDIES_RAIN_SEEPAGE_H
#define LOWWALL_STUDIES_RAIN_SEEPAGE_H

#include <lowwall/studies.h>

/** The push of rain seeping to a working drain beside that of dry and of flooded soil, for this wall.
 *  note  1 Information, and decides nothing: a drain that works is not a blocked one, which decides; but in
 *          heavy rain the soil it drains is not dry either.
 *        2 The drain has to stand on the upright plane of the push: at the wall's own back, or stone that
 *          fills what lies between. */
void lw_rain_seepage_find(const lw_wall *wall, lw_rain_seepage *seepage, const lw_working *working);

#endif
