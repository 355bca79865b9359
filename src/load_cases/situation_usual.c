/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "situation_usual.h"

#include "tables/known.h"

/* The wall as built, and people on it. */

static double load_of(const lw_tables *tables, lw_known_row load) {
  return lw_known_load(tables, load)->value;
}

bool lw_plan_drained(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan) {
  (void)wall;
  (void)tables;
  plan->name = LW_SITUATION_DRAINED;
  plan->kind = LW_USUAL;
  plan->decides = true;
  plan->why = LW_WHY_AS_BUILT;
  return true;
}

bool lw_plan_sitting(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan) {
  plan->name = LW_SITUATION_PEOPLE_SITTING;
  plan->kind = LW_USUAL;
  plan->decides = true;
  plan->why = LW_WHY_SITTING;
  plan->people_down_kn_per_m = load_of(tables, LW_LOAD_OF_PEOPLE_SITTING_DOWN);
  plan->people_out_kn_per_m = load_of(tables, LW_LOAD_OF_PEOPLE_SITTING_OUT);
  return wall->people_on_cap;
}

bool lw_plan_leaning(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan) {
  bool guard = wall->site.soil_below_top_m > wall->site.lean_height_m;
  plan->name = LW_SITUATION_PEOPLE_LEANING;
  plan->kind = guard ? LW_UNUSUAL : LW_WHAT_IF;
  plan->decides = guard;
  plan->why = guard ? LW_WHY_GUARD : LW_WHY_NO_GUARD;
  plan->people_out_kn_per_m = load_of(tables, LW_LOAD_OF_PEOPLE_LEANING);
  return true;
}
