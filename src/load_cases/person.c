/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "person.h"

#include "base/bound.h"
#include "base/working.h"

/* One person at the edge of a bed that is only planted: in place of the light load that is taken there. */

bool lw_plan_person(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan) {
  (void)tables;
  plan->name = LW_SITUATION_PERSON_AT_EDGE;
  plan->kind = LW_USUAL;
  plan->decides = true;
  plan->why = LW_WHY_WEEDING;
  return wall->person.present;
}

void lw_person_stand(const lw_wall *wall, lw_ground *ground) {
  const lw_wall_person *person = &wall->person;
  ground->surcharge_kpa = wall->site.surcharge_kpa - person->planted_kpa;
  ground->person_kpa = person->pressure_kpa;
  ground->person_near_m = person->near_m;
  ground->person_far_m = person->far_m;
}

void lw_person_tell(const lw_wall *wall, const lw_working *working) {
  const lw_wall_person *p = &wall->person;
  const lw_bound bound[] = {{"F", p->force_kn, "kN"}, {"a", p->side_m, "m"}, {"l", p->length_m, "m"}};
  const lw_step step = {"qp", "F/(a l)", NULL, p->pressure_kpa, "kPa", ""};
  lw_working_heading(working, "the person, as a strip:");
  lw_working_bound(working, &step, bound, sizeof bound / sizeof bound[0]);
}
