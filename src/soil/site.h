/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SOIL_SITE_H
#define LOWWALL_SOIL_SITE_H

#include <lowwall/wall.h>

/** The site of a complete case.
 *  in    c        a complete case
 *        tables   for whether a named soil drains freely or is refused as backfill
 *  out   site */
void lw_site_build(const lw_case *c, const lw_tables *tables, lw_site *site);

/** Where water stands with its way out blocked, below the top of the wall: up to the lower of the soil's top
 *  and the overflow, or higher where it stands there anyway. */
double lw_site_blocked_depth(const lw_site *site);

/** The least angle of friction of the soils behind; 0 without any. */
double lw_site_least_friction(const lw_site *site);

/** Whether ground counts as level: no steeper than the threshold level-ground, up or down. A slope typed as
 *  it stands in the table is level in any unit. */
bool lw_site_is_level(const lw_site *site, double slope_rad);

/** The index of the soil at a depth below the top of the wall; on a boundary, the lower one. */
int lw_site_soil_at(const lw_site *site, double depth_m);

#endif
