/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_WEDGE_SHAPE_H
#define LOWWALL_PRESSURE_WEDGE_SHAPE_H

#include <lowwall/pressure.h>

/* The body between the plane, the ground and a failure plane through the plane's foot: axes at the foot, x into
 * the soil, y up. */
typedef struct lw_wedge_body {
  double weight_kn_per_m;       /* soil and loads */
  double x_m, y_m;              /* centroid of that weight */
  double friction_tan;          /* along the failure plane, shared out by the stress on each layer */
  double cohesion_kn_per_m;     /* along the failure plane */
  double reach_m;               /* where it meets the ground, behind the plane's top */
} lw_wedge_body;

/* False when the failure plane never meets the ground. */
bool lw_wedge_body_of(const lw_plane *plane, double angle_rad, lw_wedge_body *body);

/* Angle of the failure plane that meets the ground at x behind the plane's top. */
double lw_wedge_angle_to(const lw_plane *plane, double x_m);

#endif
