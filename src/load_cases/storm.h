/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_STORM_H
#define LOWWALL_LOAD_CASES_STORM_H

#include <lowwall/studies.h>

/** Where a storm lifts the water to, in a bed whose floor lets none through: rain over drainable porosity.
 *  in    wall    site.storm_rain_m and site.drainable_porosity
 *  out   storm
 *  note  1 The bed's floor is taken at the ground in front, the wall's own trench below it as full: a lower
 *          floor would leave the water lower. Water that stands behind already is risen from.
 *        2 Never above the lower of soil top and overflow: the rest runs off.
 *        3 Rain that falls on the bed itself; a slope or a downpipe above brings more.
 *  from  [LOWWALL water]; tested by tests/load_cases/storm.c */
void lw_storm_find(const lw_wall *wall, lw_storm *storm);

#endif
