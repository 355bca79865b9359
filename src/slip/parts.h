/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SLIP_PARTS_H
#define LOWWALL_SLIP_PARTS_H

#include <lowwall/ground.h>

#include "base/extremes.h"
#include "search.h"

/* A cross-section cut at every x where something begins, ends or bends: between two of them all is straight,
 * so that a slice is weighed from a few numbers. */

typedef struct lw_slip_line {
  double start, end; /* level at both ends of the strip */
} lw_slip_line;

typedef struct lw_slip_strip {
  double from_x_m, to_x_m, over_width; /* the last: of 1 */
  lw_slip_line soil;                   /* the ground's surface */
  lw_slip_line bottom, top;            /* of the wall, where it stands here */
  lw_slip_line water;                  /* -INFINITY: none */
  lw_slip_line paired;                 /* below it the ground's cohesion of a pair counts */
  bool has_body, layered, raised;
  double pressure_kpa;    /* of loads that stand on the ground */
  double spare_kn_per_m3; /* by how much its soil may be lighter */
} lw_slip_strip;

/* The lower side of wall and pad, from the front: what hangs below each of its corners hangs below all. */
typedef struct lw_slip_hull {
  int count; /* 0: there is no wall */
  lw_corner corner[LW_OUTLINE_MAX + 2];
} lw_slip_hull;

typedef struct lw_slip_strips {
  const lw_slip_ground *ground;
  double tan_friction[LW_SOIL_MAX], tan_below;
  double load_y_m[LW_SLIP_LOAD_MAX]; /* of those below the ground; INFINITY: on it */
  bool by_slice;                     /* some load is a line, or below the ground */
  lw_slip_hull wall;                 /* what circles pass below, whatever their ends */
  bool bounds[LW_SLIP_GROUND_MAX];   /* whether a corner of the ground does, between their ends */
  int count;
  lw_slip_strip strip[LW_SLIP_STRIP_MAX];
} lw_slip_strips;

/* The least factor after each stage of a search: an eighth of the grid, all of it, the bottom of the best's
 * hollow, the end. Filled up to the stage at which a search ends early. */
typedef struct lw_slip_stages {
  double eighth, grid, hollow, least;
} lw_slip_stages;

/* How hard the worst circle is searched for. */
enum { LW_SLIP_STARTS_MAX = 8, LW_SLIP_EFFORTS_MAX = 2 };
typedef struct lw_slip_effort {
  const char *name;
  bool near;                  /* among ends no further off than four of the box's half distances */
  int exits, entries, depths; /* of the grid */
  int coarse, fine;           /* slices while it is searched, and at the end */
  int starts;                 /* from how many of the grid's best, at most LW_SLIP_STARTS_MAX */
  int turns, last_turns;      /* of line searches from each, and from the best of all at the end */
  int line_steps;             /* of Brent's method along a line */
  double worth;               /* a turn that lowers the factor by a smaller share is the last */
  lw_slip_stages gaps;        /* how many times the least factor each stage may be; the last: of any search */
} lw_slip_effort;

/* The searches that a cross-section asks for: near the wall, and where a rise or fall goes on, over all of
 * it. gives how many, at most LW_SLIP_EFFORTS_MAX */
int lw_slip_efforts(const lw_slip_ground *ground, const lw_slip_effort *efforts[LW_SLIP_EFFORTS_MAX]);

/* One of them, as lw_slip_search_below, with its stages told, for whoever measures what it misses. */
bool lw_slip_search_by(const lw_slip_effort *effort, const lw_slip_ground *ground, lw_slip_method method,
                       const lw_slip_aim *aim, lw_slip_stages *stages, lw_slip *slip);

void lw_slip_cut(const lw_slip_ground *ground, lw_slip_strips *strips);

/* The ground's surface at x; at a step the level on the side asked for. */
double lw_slip_surface(const lw_slip_ground *ground, double x_m, bool from_behind);

/* Slices of a circle; false when there are too many. */
bool lw_slip_slice_up(const lw_slip_strips *strips, const lw_slip_circle *circle, int slices,
                      lw_slip_slices *list);

/* The factors with the loads or without them and with the lightest ground in front, whichever is worse; the
 * list is left as that has it. */
lw_status lw_slip_worse(lw_slip_slices *list, const lw_slip_circle *circle, double seismic,
                        lw_slip_method method, lw_slip *slip);

/* True: by Bishop, and without an earthquake, lw_slip_worse finds nothing as low as this factor, over 0.
 * False: not known. */
bool lw_slip_above(const lw_slip_slices *list, double factor);

/* Which corners bound circles. */
void lw_slip_hull_of(const lw_slip_ground *ground, lw_slip_strips *strips);

/* True when the circle passes below wall, pad and ground, and not below the floor. */
bool lw_slip_clear(const lw_slip_strips *strips, const lw_slip_circle *circle);

/* How far the arc must hang below the chord between its ends to be clear. */
double lw_slip_least_sag(const lw_slip_strips *strips, const lw_slip_circle *ends, double half_m);

/* Whether a caller's cross-section, or a list of slices, can be asked about: numbers, within the lists. */
bool lw_slip_ground_holds(const lw_slip_ground *ground);
bool lw_slip_slices_hold(const lw_slip_slices *list);

#endif
