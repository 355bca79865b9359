/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_PUSH_H
#define LOWWALL_BALANCE_PUSH_H

#include <lowwall/checks.h>
#include <lowwall/lateral.h>

#include "pressure/back_plane.h"

/* Whose a part of a thrust is: each has a partial factor of its own. */
typedef enum lw_push_part {
  LW_PART_OF_SOIL,
  LW_PART_OF_SURCHARGE,
  LW_PART_OF_EARTHQUAKE,
  LW_PART_OF_LOADS,  /* at a distance, where the wedge carries them */
  LW_PART_OF_PUSHES, /* level ones on the ground */
  LW_PUSH_PARTS
} lw_push_part;

/* The push on one contact: it depends on soil and water only, so situations with the same water share it. */
typedef struct lw_push {
  lw_status status;
  lw_reason reason; /* why there is none, or what is wrong with a faulty one */
  const lw_pressure_routine *formula;
  double formula_kn_per_m;
  lw_elastic elastic; /* of the loads at a distance, level; not used where the wedge governs */
  lw_load_pressure elastic_by;
  lw_trial_wedge wedge;
  bool wedge_known, wedge_governs, faulty;
  lw_lateral by_rain;             /* what rain that seeps to a drain adds to the formula's thrust */
  lw_lateral by_loads, by_pushes; /* what loads at a distance and level pushes add to a thrust */
  lw_lateral unloaded;            /* the wedge without both, where it has them; thrust 0: it has none */
  lw_lateral part[LW_PUSH_PARTS]; /* the thrust again, each part along it and at its own height */
  lw_thrust thrust;
  lw_back_plane back;
} lw_push;

/* A wedge that was searched, and on which plane. */
typedef struct lw_trial_wedge_known {
  bool known;
  lw_plane plane;
  lw_trial_wedge wedge;
} lw_trial_wedge_known;

/* searched: of a push found before, and replaced by one that is searched here; NULL allowed. Where both
 * planes are the same figure at another size its wedge is scaled instead of searched again. */
void lw_push_find(const lw_wall *wall, const lw_ground *ground, const lw_stack *stack,
                  lw_trial_wedge_known *searched, lw_push *push, const lw_working *working);

#endif
