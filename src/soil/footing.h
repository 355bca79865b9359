/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SOIL_FOOTING_H
#define LOWWALL_SOIL_FOOTING_H

#include <lowwall/wall.h>

/* What the wall stands on: the two faces on which it may slide, what the ground bears, bed and pad. The soil
 * of the ground itself stands in the site already. */
void lw_footing_build(const lw_case *c, const lw_tables *tables, lw_site *site);

#endif
