/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_PLACE_H
#define LOWWALL_BALANCE_PLACE_H

#include "pressure/back_plane.h"
#include "push.h"

/* One contact of a wall, and what stands on it. */
typedef struct lw_place {
  lw_at at;
  int joint; /* in the section, 1 is the lowest; the one under the cap too; 0 elsewhere */
  lw_stack stack;
} lw_place;

/* Base, pad (where there is one), joints from below, cap. */
int lw_place_count(const lw_wall *wall);
/* above: room for the courses above a joint, which the place then points to */
void lw_place_find(const lw_wall *wall, int index, lw_section *above, lw_place *place);
/* The place that a check is made at. */
void lw_place_of_check(const lw_wall *wall, const lw_check *check, lw_section *above, lw_place *place);

/* The number that its checks go by: that under the cap has none. */
int lw_place_joint(const lw_place *place);

/* The contact in a load case. working may be NULL. */
void lw_place_load(const lw_wall *wall, const lw_load_case *load_case, const lw_place *place,
                   const lw_push *push, lw_free_body *body, const lw_working *working);

#endif
