/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "situations.h"

#include <assert.h>

#include "kept.h"
#include "person.h"
#include "situation_earthquake.h"
#include "situation_soaked.h"
#include "situation_usual.h"
#include "situation_water.h"
#include "situations_run.h"
#include "governing.h"
#include "ground_run.h"
#include "trench.h"
#include "wind.h"

/* Which situations a wall is checked in, of what kind each is, and which decide. */

static const lw_plan PLANS[] = {lw_plan_drained, lw_plan_soaked,  lw_plan_blocked, lw_plan_storm,
                                lw_plan_person,  lw_plan_sitting, lw_plan_leaning, lw_plan_earthquake,
                                lw_plan_trench,  lw_plan_wind};

enum { PLAN_COUNT = sizeof PLANS / sizeof *PLANS };
static_assert(PLAN_COUNT == (int)LW_SITUATION_COUNT, "a situation has one plan");

/* Those that the wall is checked in, started. */
static void plan_all(const lw_wall *wall, const lw_tables *tables, lw_situations *situations) {
  situations->count = 0;
  for (int i = 0; i < PLAN_COUNT; i++) {
    lw_situation_plan plan = {.water_depth_m = wall->site.water_depth_m};
    if (PLANS[i](wall, tables, &plan)) lw_situation_start(&plan, &situations->situation[situations->count++]);
  }
}

static void run(const lw_wall *wall, const lw_tables *tables, lw_detail detail, lw_ground_aim aim,
                lw_situations *situations) {
  lw_factor_set_family family;
  lw_factor_set_read(tables, wall->factor_set, &family);
  plan_all(wall, tables, situations);
  lw_situations_follow(wall, &family, detail, situations);
  lw_ground_run(wall, &family, aim, situations);
}

void lw_situations_run(const lw_wall *wall, const lw_tables *tables, lw_detail detail,
                       lw_situations *situations) {
  run(wall, tables, detail, detail > LW_DETAIL_VERDICT ? LW_GROUND_ALL : LW_GROUND_GOVERNING, situations);
  lw_situations_weigh(situations);
}

void lw_situations_run_least(const lw_wall *wall, const lw_tables *tables, lw_situations *situations) {
  run(wall, tables, LW_DETAIL_VERDICT, LW_GROUND_LEAST, situations);
}
