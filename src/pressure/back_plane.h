/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_BACK_PLANE_H
#define LOWWALL_PRESSURE_BACK_PLANE_H

#include <lowwall/pressure.h>

/* The wall above one contact: all of it, or its courses above a joint. */
typedef struct lw_stack {
  const lw_section *section;
  double below_m; /* from its lowest course down to the contact: under a pad or bed, else 0 */
} lw_stack;

/** The plane on which the thrust of the method acts, for a whole wall or for the courses above a joint.
 *  in    site     any that lw_site_build made
 *        ground   strengths, water and earthquake of the load case
 *        method   any
 *        stack    its section is known
 *  out   back     the lists of its plane up to their counts */
void lw_back_plane_build(const lw_site *site, const lw_ground *ground, const lw_method *method,
                         const lw_stack *stack, lw_back_plane *back);

#endif
