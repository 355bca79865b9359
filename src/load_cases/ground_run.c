/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ground_run.h"

#include <math.h>

#include "governing.h"
#include "kept.h"
#include "kinds.h"
#include "least.h"
#include "load_case.h"
#include "standards/factors.h"

/* The checks of the ground as a whole, in every situation that they are looked at in, under every set. */

/* People on the top, and wind on a fence, which turns to and fro, are not looked at. */
static bool looked_at(lw_situation_name name) {
  return name == LW_SITUATION_DRAINED || name == LW_SITUATION_SOAKED || name == LW_SITUATION_OUTLET_BLOCKED ||
         name == LW_SITUATION_STORM || name == LW_SITUATION_EARTHQUAKE || name == LW_SITUATION_TRENCH;
}

/* Where no set asks anything of a slip it is printed under the first. */
static bool under(const lw_factor_set_family *family, int set) {
  int first = -1;
  for (int i = family->count - 1; i >= 0; i--)
    if (family->count == 1 || lw_factor_set_asks(&family->set[i])) first = i;
  return set == first || family->set[set].row[LW_FACTOR_SLIP] != NULL;
}

/* What the situations have so far. */
static void begin(const lw_situations *all, lw_ground_try *try) {
  int situation, check;
  try->governing = try->least = INFINITY;
  try->falls_short = false;
  if (try->aim == LW_GROUND_ALL) return;
  lw_least least = lw_situations_least(all);
  if (least.has.known) try->least = least.has.value;
  if (try->aim == LW_GROUND_LEAST || !lw_situations_governing(all, &situation, &check)) return;
  lw_check governing = lw_situation_check(&all->situation[situation], check);
  if (!governing.ratio.known || governing.holds == LW_CANNOT_SHOW) return;
  try->governing = governing.ratio.value;
  try->falls_short = governing.holds == LW_FALLS_SHORT;
}

/* Of several sets of factors the gravest answer stays. gives whether it is this one */
static bool add(const lw_check_context *context, lw_check *check, lw_situation *situation) {
  check->factored = lw_factor_set_is_partial(context->factor_set, context->load_case->kind);
  check->made_in =
      (lw_load_case_name){.set = context->factor_set->any, .people_down = true, .cap_load = true};
  lw_factor_set_restrain(context->factor_set, check);
  for (int i = 0; i < situation->check_count; i++) {
    lw_check old = lw_situation_check(situation, i);
    if (old.kind != check->kind || old.at != check->at) continue;
    bool graver = lw_check_graver(check, &old);
    if (graver) lw_check_keep(check, &situation->kept[i]);
    return graver;
  }
  lw_situation_keep(situation, check);
  return true;
}

static void take(const lw_check_context *context, lw_ground_check *made, lw_situation *situation) {
  if (!add(context, &made->check, situation) || !made->searched) return;
  situation->slip_known = true;
  situation->slip = made->slip;
  situation->slip_light = made->light;
  situation->slip_bare = made->bare;
  situation->slip_bare_has = made->bare_has;
  situation->slip_bare_needs = made->bare_needs;
  situation->slip_set = context->factor_set->any;
}

/* All sets of one run of the ground, in one situation after the other. */
typedef struct run {
  const lw_wall *wall;
  const lw_factor_set_family *family;
  lw_ground_aim aim;
  lw_situations *all;
  lw_slip_searched searched;
} run;

static void check_situation(run *r, lw_situation *situation) {
  for (int i = 0; i < r->family->count; i++) {
    if (!under(r->family, i)) continue;
    lw_load_case load_case = lw_slip_load_case(r->wall, &r->family->set[i], situation);
    lw_check_context context = {r->wall, &r->family->set[i], &load_case, NULL};
    for (int k = 0; k < LW_CHECK_KIND_COUNT; k++) {
      const lw_check_row *row = lw_check_row_of((lw_check_kind)k);
      if (!row->make_ground) continue;
      lw_ground_try try = {.context = &context, .aim = r->aim, .searched = &r->searched};
      lw_ground_check made;
      begin(r->all, &try);
      made.searched = false;
      made.check =
          (lw_check){.kind = (lw_check_kind)k, .at = LW_AT_GROUND, .unit = row->about.unit, .counts = true};
      if (row->make_ground(&try, &made)) take(&context, &made, situation);
    }
  }
}

/* The highest water first: where that holds, it shows that the others need no search. */
static int order(const run *r, lw_situation *in_turn[LW_SITUATION_COUNT]) {
  double depth_m[LW_SITUATION_COUNT];
  int count = 0;
  for (int i = 0; i < r->all->count; i++) {
    lw_situation *s = &r->all->situation[i];
    if (!looked_at(s->name) || (r->aim < LW_GROUND_ALL && !s->decides)) continue;
    double depth = lw_slip_water_depth(r->wall, s);
    int k = count++;
    for (; k > 0 && depth_m[k - 1] > depth; k--) {
      depth_m[k] = depth_m[k - 1];
      in_turn[k] = in_turn[k - 1];
    }
    depth_m[k] = depth;
    in_turn[k] = s;
  }
  return count;
}

void lw_ground_run(const lw_wall *wall, const lw_factor_set_family *family, lw_ground_aim aim,
                   lw_situations *situations) {
  lw_situation *in_turn[LW_SITUATION_COUNT];
  if (!wall->section.known || (!lw_slip_looked_for(wall) && wall->bed_slope_rad <= 0.0)) return;
  run r = {.wall = wall, .family = family, .aim = aim, .all = situations};
  int count = order(&r, in_turn);
  for (int i = 0; i < count; i++) check_situation(&r, in_turn[i]);
}
