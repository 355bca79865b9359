/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "situation.h"

/* Which situations a wall is checked in, of what kind each is, and which decide. */

/* People lean on a wall as on a guard where its top stands this far above the ground behind. */
static const double LEANS_ABOVE_M = 0.6;

static double load_of(const lw_tables *tables, const char *slug) {
  const lw_load_row *row = lw_tables_load(tables, slug);
  return row ? row->value : 0.0;
}

static void drained(lw_situation_plan *plan) {
  plan->name = LW_SITUATION_DRAINED;
  plan->kind = LW_USUAL;
  plan->decides = true;
  plan->why = "the wall as built must stand";
}

/* Water up to the lower of the soil's top and the overflow, or higher where it stands there anyway. */
static void blocked(const lw_site *site, lw_situation_plan *plan) {
  static const char *const WHY[] = {
      "no way out for water is known, so a wet bed is the usual state",
      "there is one way out for water, and it will block one day",
      "there are two or more ways out for water, so all of them blocked is printed and does not decide"};
  static const lw_situation_kind KIND[] = {LW_USUAL, LW_UNUSUAL, LW_WHAT_IF};
  int ways = lw_site_ways_out(site);
  int at = ways < 2 ? ways : 2;
  plan->name = LW_SITUATION_OUTLET_BLOCKED;
  plan->kind = KIND[at];
  plan->decides = at < 2;
  plan->why = WHY[at];
  plan->water_depth_m = fmin(fmax(site->soil_below_top_m, site->overflow_below_top_m), site->water_depth_m);
}

static void sitting(const lw_tables *tables, lw_situation_plan *plan) {
  plan->name = LW_SITUATION_PEOPLE_SITTING;
  plan->kind = LW_USUAL;
  plan->decides = true;
  plan->why = "people sit on a wall of this height";
  plan->actions.people_down_kn_per_m = load_of(tables, "people-sitting-down");
  plan->actions.people_out_kn_per_m = load_of(tables, "people-sitting-out");
}

static void leaning(const lw_site *site, const lw_tables *tables, lw_situation_plan *plan) {
  bool guard = site->soil_below_top_m > LEANS_ABOVE_M;
  plan->name = LW_SITUATION_PEOPLE_LEANING;
  plan->kind = guard ? LW_UNUSUAL : LW_WHAT_IF;
  plan->decides = guard;
  plan->why = guard ? "the top stands so far above the ground behind that people lean on it as on a guard"
                    : "the top is low above the ground behind; nobody leans on it as on a guard";
  plan->actions.people_out_kn_per_m = load_of(tables, "people-leaning");
}

/* With the water that is usual: where it has no way out, that is a wet bed. Nobody sits there. */
static void earthquake(const lw_wall *wall, const lw_situation_plan *blocked_plan, lw_situation_plan *plan) {
  plan->name = LW_SITUATION_EARTHQUAKE;
  plan->kind = LW_EXTREME;
  plan->decides = true;
  plan->why = "earthquake coefficients are given";
  plan->seismic_horizontal = wall->seismic_horizontal;
  plan->seismic_vertical = wall->seismic_vertical;
  if (blocked_plan->kind == LW_USUAL) plan->water_depth_m = blocked_plan->water_depth_m;
}

void lw_situations_run(const lw_wall *wall, const lw_tables *tables, lw_situations *situations,
                       const lw_working *working) {
  lw_situation_plan plan[LW_SITUATION_COUNT];
  int count = 0;
  for (int i = 0; i < LW_SITUATION_COUNT; i++)
    plan[i] = (lw_situation_plan){.water_depth_m = wall->site.water_depth_m, .actions = {.cap_load = true}};
  drained(&plan[count++]);
  blocked(&wall->site, &plan[count++]);
  if (wall->people_on_cap) sitting(tables, &plan[count++]);
  leaning(&wall->site, tables, &plan[count++]);
  if (wall->seismic_horizontal > 0.0 || wall->seismic_vertical > 0.0)
    earthquake(wall, &plan[1], &plan[count++]);
  situations->count = count;
  lw_situations_follow(wall, tables, plan, situations, working);
}

bool lw_situations_governing(const lw_situations *situations, int *situation, int *check) {
  const lw_check *worst = NULL;
  for (int s = 0; s < situations->count; s++) {
    const lw_situation *at = &situations->situation[s];
    for (int i = 0; at->decides && i < at->check_count; i++) {
      const lw_check *c = &at->check[i];
      bool weighs = c->counts && (c->ratio.known || c->holds != LW_HOLDS);
      if (!weighs || (worst && !lw_check_graver(c, worst))) continue;
      worst = c;
      *situation = s;
      *check = i;
    }
  }
  return worst != NULL;
}

lw_holds lw_situations_stand(const lw_situations *situations) {
  int s = 0, c = 0;
  if (!lw_situations_governing(situations, &s, &c)) return LW_HOLDS;
  return situations->situation[s].check[c].holds;
}
