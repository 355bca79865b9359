/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_STUDIES_WATER_LIMITS_H
#define LOWWALL_STUDIES_WATER_LIMITS_H

#include <lowwall/studies.h>

/** The water level at which each check of base, pad, joints and cap first falls short, by a scan of levels
 *  and Brent's method on one contact at a time.
 *  in    blocked   the situation outlet-blocked of this wall, as run: kind, full level and its checks
 *        scratch   a situation to run in
 *  out   limits    a check that does not count has none
 *  note  1 From the foot of the contact up, or from the water that stands there anyway, to the full level.
 *        2 The first level where it falls short counts, should it hold again above.
 *  from  [LOWWALL water]; tested by tests/studies/water_limits.c */
void lw_water_limits_find(const lw_wall *wall, const lw_tables *tables, const lw_situation *blocked,
                          lw_situation *scratch, lw_water_limits *limits);

/** True when a falls short at a lower level than b, or is the less sure: which of two to tell. */
bool lw_water_limit_graver(const lw_water_limit *a, const lw_water_limit *b);

#endif
