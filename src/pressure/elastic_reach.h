/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_ELASTIC_REACH_H
#define LOWWALL_PRESSURE_ELASTIC_REACH_H

#include <lowwall/lateral.h>

/* A load nearer than this counts as this far away. */
#define LW_ELASTIC_NEAREST_M 0.001

/* One load against the plane: depths below the load's level. */
typedef struct lw_elastic_reach {
  const lw_plane_load *load;
  lw_load_pressure by;
  lw_elastic_face face;
  double below_top_m; /* of the load's level; negative: the ground rises to it */
  double lean;        /* how far the plane comes nearer with each metre of depth */
  double height_m;    /* from the load's level to the foot */
  double beside;      /* share of a point load's curve that the metre in front feels */
  bool turning;       /* integrate pressure times depth */
} lw_elastic_reach;

lw_elastic_reach lw_elastic_reach_of(const lw_plane *plane, const lw_plane_load *load, lw_load_pressure by);

/* Whether force and moment need no integral. */
bool lw_elastic_has_closed_form(const lw_elastic_reach *reach);

#endif
