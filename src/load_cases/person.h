/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_PERSON_H
#define LOWWALL_LOAD_CASES_PERSON_H

#include "situation_plan.h"

bool lw_plan_person(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan);
/* Put the person on the ground of a load case. */
void lw_person_stand(const lw_wall *wall, lw_ground *ground);
/* How the strip comes of the person. */
void lw_person_tell(const lw_wall *wall, const lw_working *working);

#endif
