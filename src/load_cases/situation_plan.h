/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_SITUATION_PLAN_H
#define LOWWALL_LOAD_CASES_SITUATION_PLAN_H

#include <lowwall/checks.h>

/* What one situation is going to be. How to add one: a line in LW_SITUATIONS, a function that makes its plan
 * in a file situation_*.c of its own, a line in the list of situations.c; what it changes of the ground
 * beyond the water behind goes into lw_load_case_ground. */
typedef struct lw_situation_plan {
  lw_situation_name name;
  lw_situation_kind kind;
  bool decides;
  lw_situation_why why;
  double water_depth_m;
  bool seeping;
  double people_down_kn_per_m, people_out_kn_per_m;
} lw_situation_plan;

/* Each fills in its plan, which has the water of the site already; false when the wall is not checked in
 * it. */
typedef bool (*lw_plan)(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan);

#endif
