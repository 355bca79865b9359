/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_DIAGRAM_H
#define LOWWALL_PRESSURE_DIAGRAM_H

#include <lowwall/diagram.h>

/* A way's pressure at a depth below its own plane's top: the whole, and what of it the uniform load makes. */
typedef struct lw_way_pressure {
  lw_number soil_kpa, uniform_kpa; /* level */
} lw_way_pressure;
lw_way_pressure lw_way_pressure_at(const lw_diagram *diagram, lw_way way, double depth_m, bool below);

/* The plane of a way, and how far its top lies above that of the back. */
const lw_plane *lw_way_plane(const lw_diagram *diagram, lw_way way);
double lw_way_above(const lw_diagram *diagram, lw_way way);

/* Vertical effective stress of the soil alone at a depth, and summed down to it. */
typedef struct lw_stress_down {
  double kpa, sum_kn_per_m;
} lw_stress_down;
lw_stress_down lw_stress_down_to(const lw_plane *plane, double depth_m);

/* The rows, when the ways are found. */
void lw_diagram_fill_depths(lw_diagram *diagram);

#endif
