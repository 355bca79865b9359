/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_PROFILE_RECORD_H
#define LOWWALL_PRESSURE_PROFILE_RECORD_H

#include "profile.h"

/* A pressure diagram as it is written to the working: the points that it was integrated over, in their order,
 * and with the last point of each stretch what the stretch comes to. */

typedef struct lw_told_point {
  double depth_m, stress_kpa; /* the load included */
  double soil_kpa, load_kpa;
  int layer;
  bool wet, begins, ends; /* first point of a stretch, last one */
  bool curved, skipped;   /* no K; the pressure is taken straight past this point */
  double k, cut_kpa, weight_kn_per_m3;
  double area, moment, load_area, load_moment; /* of the stretch, about the foot, where it ends */
} lw_told_point;

enum { LW_TOLD_MAX = 110 };

typedef struct lw_told {
  int count;
  lw_told_point point[LW_TOLD_MAX];
} lw_told;

/* The weights below water, the load on this plane, the points with areas and moments, and their sums. */
void lw_profile_record(const lw_plane *plane, const lw_law *law, const lw_told *told,
                       const lw_thrust *thrust);

/* Before the lines of a layer: which it is, where there are several. */
void lw_layer_heading(const lw_plane *plane, int layer, const lw_working *working);

/* Whether the plane passes through a layer. */
bool lw_layer_is_met(const lw_plane *plane, int layer);

/* pc = 2 c sqrt(K), which cohesion takes off an active pressure; symbol names K. */
void lw_cohesion_record(const char *symbol, double k, double cohesion_kpa, const lw_working *working);

#endif
