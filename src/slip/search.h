/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SLIP_SEARCH_H
#define LOWWALL_SLIP_SEARCH_H

#include <lowwall/ground.h>

/** lw_slip_search for whoever asks only whether the factor is below another: ends as soon as it cannot be any
 *  more.
 *  in    enough   that other factor   1   INFINITY searches to the end
 *  out   slip     unchanged when false
 *  gives true: it was searched to the end, and slip may be below enough or not · false: it is not below
 *  note  1 It ends early where the best of the grid, or of its first part, lies further above enough than the
 *          best of a grid was found to lie above the least: see the gaps in src/slip/search.c.
 *  from  [BISHOP1955 simplified]; tested by tests/slip/slip_wall.c */
bool lw_slip_search_below(const lw_slip_ground *ground, lw_slip_method method, double enough, lw_slip *slip);

#endif
