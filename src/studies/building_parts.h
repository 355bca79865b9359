/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_STUDIES_BUILDING_PARTS_H
#define LOWWALL_STUDIES_BUILDING_PARTS_H

#include <lowwall/studies.h>

#include "balance/weigh.h"

/* What the study of one wall shares: strengths factored by the format, and what it asks. */
typedef struct lw_building_site {
  const lw_tables *tables;
  const lw_wall *wall;
  lw_ground ground; /* strengths by the set of factors */
  const lw_format_row *sliding, *overturning;
} lw_building_site;

void lw_building_site_make(const lw_wall *wall, const lw_tables *tables, lw_building_site *site);

/* The fill against course i (from 0): its height, its soil, its own active push.
 * gives LW_OK, or LW_NO_SOLUTION where the soil has no answer */
lw_status lw_building_fill(const lw_building_site *site, const lw_plant *plant, int i,
                           lw_building_course *course, const lw_working *working);

/* Friction and weight moment that hold courses from..to on the contact under `from` (from 0). */
typedef struct lw_building_hold {
  double friction_kn_per_m, moment_knm_per_m;
} lw_building_hold;
lw_building_hold lw_building_hold_of(const lw_building_site *site, int from, int to,
                                     const lw_working *working);

/* The two checks of a contact under a push. */
typedef struct lw_building_checks {
  lw_check sliding, tilting;
} lw_building_checks;
lw_building_checks lw_building_check(const lw_building_site *site, int from, lw_building_hold hold,
                                     lw_lateral push, const lw_working *working);

/* The gravest contact below the newest course, the layer just compacted pushing and the earth below it. */
void lw_building_lower(const lw_building_site *site, const lw_building *building, int i,
                       lw_building_course *course);

/* How near plant may come. */
void lw_building_stand_off(const lw_building_site *site, const lw_building *building, const lw_plant *plant,
                           lw_stand_off *stand_off, const lw_working *working);

/* The push on the newest course with plant at a distance; 0: touching. */
lw_lateral lw_building_push(const lw_building_course *course, const lw_plant *plant, double distance_m);

#endif
