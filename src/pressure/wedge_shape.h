/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_WEDGE_SHAPE_H
#define LOWWALL_PRESSURE_WEDGE_SHAPE_H

#include <lowwall/pressure.h>

/* A plane with its angles' tangents at hand: a search asks for hundreds of bodies. */
typedef struct lw_wedge_frame {
  const lw_plane *plane;
  double tan_slope;
  lw_corner top;                /* of the plane, seen from its foot */
  bool one_zone;                /* one soil at one weight */
  double tan_friction;          /* of the first layer */
} lw_wedge_frame;

/* The body between the plane, the ground and a failure plane through the plane's foot: axes at the foot, x into
 * the soil, y up. */
typedef struct lw_wedge_body {
  double weight_kn_per_m;       /* soil and loads */
  double x_m, y_m;              /* centroid of that weight */
  double friction_tan;          /* along the failure plane, shared out by the stress on each layer */
  double cohesion_kn_per_m;     /* along the failure plane */
  double reach_m;               /* where it meets the ground, behind the plane's top */
} lw_wedge_body;

lw_wedge_frame lw_wedge_frame_of(const lw_plane *plane);

/* The body above a failure plane that rises as (run, rise), a unit vector. False when that plane never meets
 * the ground. */
bool lw_wedge_body_of(const lw_wedge_frame *frame, double run, double rise, lw_wedge_body *body);

/* Angle of the failure plane that meets the ground at x behind the plane's top. */
double lw_wedge_angle_to(const lw_wedge_frame *frame, double x_m);

#endif
