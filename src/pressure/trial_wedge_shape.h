/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_TRIAL_WEDGE_SHAPE_H
#define LOWWALL_PRESSURE_TRIAL_WEDGE_SHAPE_H

#include <lowwall/pressure.h>

/* A zone of ground at one weight: a layer, or the part of it below the water. It reaches up to the one above,
 * the first as far as there is ground. */
typedef struct lw_wedge_zone {
  int layer;
  double low_m;            /* its bottom, above the plane's foot */
  double effective, moved; /* unit weight that presses, and that an earthquake moves */
  double below_kpa;        /* what all zones below it weigh on a level */
} lw_wedge_zone;

enum { LW_WEDGE_ZONES = LW_SOIL_MAX + 1 };

/* The units of such a term, as a step has them. */
typedef struct lw_wedge_units {
  const char *size, *each;
} lw_wedge_units;

/* What one body is made of, for the working: an area or a width and what stands on it, a length of the
 * failure plane and what holds on it. */
typedef struct lw_wedge_term {
  double size, each, moved; /* moved: what an earthquake moves in place of each */
  int layer;
  const lw_wedge_units *in;
} lw_wedge_term;

enum { LW_WEDGE_TERMS = LW_WEDGE_ZONES + 2 * LW_SITE_LOAD_MAX + 1 };

typedef struct lw_trial_wedge_told {
  int weight_count, held_count, rub_count;
  lw_wedge_term weight[LW_WEDGE_TERMS], held[LW_WEDGE_ZONES], rub[LW_WEDGE_ZONES];
} lw_trial_wedge_told;

/* A plane with its angles' tangents and its zones, from the top down, at hand: a search asks for dozens of
 * bodies. */
typedef struct lw_wedge_frame {
  const lw_plane *plane;
  double tan_slope;
  lw_corner top; /* of the plane, seen from its foot */
  int zone_count;
  lw_wedge_zone zone[LW_WEDGE_ZONES];
  double tan_friction[LW_SOIL_MAX];
  lw_trial_wedge_told *told; /* NULL: nobody asks */
} lw_wedge_frame;

/* A failure plane through the foot: a unit vector up into the soil. Where it ends in a crack, in one of the
 * layers, the body ends there too; -1: no crack. */
typedef struct lw_wedge_line {
  double run, rise;
  int cracked_in;
} lw_wedge_line;

/* The body between the plane, the ground and a failure plane through the plane's foot: axes at the foot, x
 * into the soil, y up. */
typedef struct lw_wedge_body {
  double weight_kn_per_m;   /* effective, with the loads on it */
  double moved_kn_per_m;    /* weight that an earthquake moves: below water more than the effective one */
  double x_m, y_m;          /* its centroid */
  double cohesion_kn_per_m; /* along the failure plane */
  double friction_tan;      /* along the failure plane, weighted by the stress on each stretch */
  int cracked_in;           /* as its line's */
  double reach_m;           /* where it ends on the ground, behind the plane's top */
  double crack_depth_m;     /* there; 0: the plane itself meets the ground */
  double push_kn_per_m;     /* level, of the loads, towards the wall; it acts at push_x_m, push_y_m */
  double push_x_m, push_y_m;
} lw_wedge_body;

lw_wedge_frame lw_wedge_frame_of(const lw_plane *plane);

/* The body above a failure plane. False when that plane never meets the ground, or misses the layer to be
 * cracked. */
bool lw_wedge_body_of(const lw_wedge_frame *frame, const lw_wedge_line *line, lw_wedge_body *body);

/* Level force on the body towards the wall: an earthquake's (away from it when passive, sign -1), a push. */
double lw_wedge_level(double sign, const lw_plane *plane, const lw_wedge_body *body);

/* Angle of the failure plane that meets the ground at x behind the plane's top. */
double lw_wedge_angle_to(const lw_wedge_frame *frame, double x_m);

/* The same for one edge of a load, at the level where it meets the ground. */
double lw_wedge_angle_to_load(const lw_wedge_frame *frame, const lw_plane_load *load, double x_m);

/* Record the critical wedge: plane, weight, cohesion, and the thrust with its numbers put in. */
void lw_trial_wedge_record(lw_earth_state state, const lw_wedge_frame *frame, const lw_wedge_body *body,
                           const lw_trial_wedge *wedge, const lw_working *working);

#endif
