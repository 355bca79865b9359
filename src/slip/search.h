/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SLIP_SEARCH_H
#define LOWWALL_SLIP_SEARCH_H

#include <lowwall/ground.h>

/* For whoever asks only whether the factor is below another. */
typedef struct lw_slip_aim {
  double enough; /* that other factor; INFINITY searches to the end */
  bool outdone;  /* it is known not to be below: then it is only looked whether there is any circle */
} lw_slip_aim;

/** lw_slip_search that ends as soon as its answer cannot matter any more.
 *  out   at_least   what no circle has less than, as far as the gaps of the search hold; 0: not known
 *        slip       unchanged when false
 *  gives true: it was searched to the end, and slip may be below enough or not · false: it is not below
 *  note  1 It ends early where the best of the grid, or of its first part, lies further above enough than the
 *          best of a grid was found to lie above the least: see the gaps in src/slip/search.c.
 *  from  [BISHOP1955 simplified]; tested by tests/slip/slip_wall.c */
bool lw_slip_search_below(const lw_slip_ground *ground, lw_slip_method method, const lw_slip_aim *aim,
                          double *at_least, lw_slip *slip);

#endif
