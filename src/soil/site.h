/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SOIL_SITE_H
#define LOWWALL_SOIL_SITE_H

#include <lowwall/wall.h>

/** The site of a settled case.
 *  in    c        a settled case
 *        tables   for whether a named soil drains freely or is refused as backfill
 *  out   site */
void lw_site_build(const lw_case *c, const lw_tables *tables, lw_site *site);

/** Ways out for water, as design of the situations has them: outlets, + 1 open joints, + 1 draining ground;
 *  none unless the retained soil drains freely or the stone is as wide as leads its water. */
int lw_site_ways_out(const lw_site *site);

/** Where water stands with its way out blocked, below the top of the wall: up to the lower of the soil's top
 *  and the overflow, or higher where it stands there anyway. */
double lw_site_blocked_depth(const lw_site *site);

/** How far below the base the wall meets the ground: under the pad, or under the bed; 0: neither.
 *  note  1 Nothing is known of a bed that is only taken: it weighs nothing and spreads no load. */
double lw_site_under(const lw_site *site);

/** The least angle of friction of the soils behind; 0 without any. */
double lw_site_least_friction(const lw_site *site);

/** How far back a line from a foot up into the ground comes out of it, where the ground rises without end.
 *  in    depth_m   of the foot below the ground above it      m   0 or more
 *        run       of the line, back for each metre up        1   0 or more
 *        rise      of the ground, up for each metre back      1   any
 *  gives m; INFINITY where the ground is as steep as the line */
double lw_line_out(double depth_m, double run, double rise);

/** The same where the ground is level beyond slope_run_m of the site. */
double lw_site_line_out(const lw_site *site, double depth_m, double run, double rise);

/** The index of the soil at a depth below the top of the wall; on a boundary, the lower one. */
int lw_site_soil_at(const lw_site *site, double depth_m);

#endif
