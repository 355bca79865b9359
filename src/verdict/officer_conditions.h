/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_VERDICT_OFFICER_CONDITIONS_H
#define LOWWALL_VERDICT_OFFICER_CONDITIONS_H

#include "finding.h"

/* What an officer asks besides, each as a condition. What the sheet leaves out is not so. */
lw_so lw_officer_rain_led_away(const lw_facts *facts, lw_finding *found);
lw_so lw_officer_rain_soaks_away(const lw_facts *facts, lw_finding *found);
lw_so lw_officer_easement(const lw_facts *facts, lw_finding *found);
lw_so lw_officer_protected_trees(const lw_facts *facts, lw_finding *found);
lw_so lw_officer_flood_land(const lw_facts *facts, lw_finding *found);
lw_so lw_officer_bushfire_land(const lw_facts *facts, lw_finding *found);
lw_so lw_officer_coast_land(const lw_facts *facts, lw_finding *found);
lw_so lw_officer_sight_lines(const lw_facts *facts, lw_finding *found);
lw_so lw_officer_other_works(const lw_facts *facts, lw_finding *found);
lw_so lw_officer_owner_builds(const lw_facts *facts, lw_finding *found);

/* Parts of conditions that other items answer as well: rain led next door, land that is on a map by name. */
lw_so lw_officer_rain_next_door(const lw_facts *facts, lw_finding *found);
lw_so lw_officer_named_maps(const lw_facts *facts, lw_finding *found);

/* Whether the neighbour has not agreed; the boundary is asked by who calls. */
lw_so lw_officer_no_consent(const lw_facts *facts, lw_finding *found);

/* Whether any of it is told: most sheets have none. */
bool lw_officer_told(const lw_facts *facts);

#endif
