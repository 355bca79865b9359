/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_STUDIES_CONSTRUCTION_PARTS_H
#define LOWWALL_STUDIES_CONSTRUCTION_PARTS_H

#include <lowwall/studies.h>

#include "balance/weigh.h"

/* What the study of one wall shares: strengths factored by the set, and what it asks. */
typedef struct lw_construction_site {
  const lw_tables *tables;
  const lw_wall *wall;
  lw_ground ground; /* strengths by the set of factors */
  const lw_factor_row *sliding, *overturning;
} lw_construction_site;

void lw_construction_site_make(const lw_wall *wall, const lw_tables *tables, lw_construction_site *site);

/* The fill against course i (from 0): its height, its soil, its own active push.
 * gives LW_OK, or LW_NO_SOLUTION where the soil has no answer */
lw_status lw_construction_fill(const lw_construction_site *site, const lw_plant *plant, int i,
                               lw_construction_course *course, const lw_working *working);

/* Friction and weight moment that hold courses from..to on the contact under `from` (from 0). */
typedef struct lw_construction_hold {
  double friction_kn_per_m, moment_knm_per_m;
} lw_construction_hold;
lw_construction_hold lw_construction_hold_of(const lw_construction_site *site, int from, int to,
                                             const lw_working *working);

/* The two checks of a contact under a push. */
typedef struct lw_construction_checks {
  lw_check sliding, tilting;
} lw_construction_checks;
lw_construction_checks lw_construction_check(const lw_construction_site *site, int from,
                                             lw_construction_hold hold, lw_lateral push,
                                             const lw_working *working);

/* The gravest contact below the newest course, the layer just compacted pushing and the earth below it. */
void lw_construction_lower(const lw_construction_site *site, const lw_construction *construction, int i,
                           lw_construction_course *course);

/* How near plant may come. */
void lw_construction_stand_off(const lw_construction_site *site, const lw_construction *construction,
                               const lw_plant *plant, lw_stand_off *stand_off, const lw_working *working);

/* The push on the newest course with plant at a distance; 0: touching. */
lw_lateral lw_construction_push(const lw_construction_course *course, const lw_plant *plant,
                                double distance_m);

#endif
