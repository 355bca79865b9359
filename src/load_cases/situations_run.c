/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "situations_run.h"

#include "balance/weigh.h"
#include "checks/bearing.h"
#include "compare.h"
#include "kept.h"
#include "place_run.h"
#include "balance/free_body.h"

/* Every situation of a wall under every set of factors, place by place; then the free bodies that are
 * shown. */

void lw_situation_start(const lw_situation_plan *plan, lw_situation *situation) {
  situation->name = plan->name;
  situation->kind = plan->kind;
  situation->decides = plan->decides;
  situation->why = plan->why;
  situation->water_depth_m = plan->water_depth_m;
  situation->seeping = plan->seeping;
  situation->people_down_kn_per_m = plan->people_down_kn_per_m;
  situation->people_out_kn_per_m = plan->people_out_kn_per_m;
  situation->check_count = 0;
  situation->slip_known = situation->slip_bare = false;
  situation->slip_bare_has = situation->slip_bare_needs = (lw_number){0};
}

/* What all sets of one run share. */
typedef struct follow {
  const lw_wall *wall;
  int count;
  bool deciding; /* what does not decide is left without checks */
  lw_situation *situation;
  lw_gravest *shown; /* of the set under which each situation is shown; NULL: none is */
} follow;

/* Of several sets the one with the gravest check is shown, with all loads and the first way of an
 * earthquake. */
static void show_graver(const follow *f, const lw_load_cases *cases, const lw_gravest *under, bool first) {
  for (int i = 0; i < cases->count; i++) {
    const lw_listed_case *one = &cases->at[i];
    lw_gravest *shown = &f->shown[one->situation];
    const lw_gravest *now = &under[one->situation];
    if (one->way > 0 || (!first && !lw_check_graver(&now->check, &shown->check))) continue;
    *shown = *now;
    f->situation[one->situation].load_case = one->load_case;
    f->situation[one->situation].load_case.actions.factors = now->factors;
    f->situation[one->situation].shown_in = (lw_load_case_name){.set = now->check.made_in.set,
                                                                .leaning = now->check.made_in.leaning,
                                                                .people_down = true,
                                                                .cap_load = true};
  }
}

/* No wedge is searched yet under this set. */
static void begin(const lw_load_cases *cases, lw_trial_wedge_known searched[LW_LOAD_CASES_MAX],
                  lw_gravest under[LW_SITUATION_COUNT]) {
  for (int i = 0; i < cases->count; i++) {
    searched[i].known = false;
    under[cases->at[i].situation].any = false;
  }
}

static void follow_set(const follow *f, const lw_factor_set *factor_set, bool first) {
  lw_load_cases cases;
  lw_gravest under[LW_SITUATION_COUNT];
  lw_trial_wedge_known searched[LW_LOAD_CASES_MAX];
  lw_gathered gathered[LW_SITUATION_COUNT];
  lw_section above;
  lw_place place;
  lw_load_cases_list(f->wall, factor_set, f->situation, f->count, f->deciding, &cases);
  begin(&cases, searched, under);
  lw_place_run run = {.wall = f->wall,
                      .factor_set = factor_set,
                      .cases = &cases,
                      .situation = f->situation,
                      .situation_count = f->count,
                      .gathered = gathered,
                      .searched = searched,
                      .gravest = f->shown ? under : NULL};
  if (!f->wall->section.known) {
    lw_place_run_unknown(&run);
    return;
  }
  for (int i = 0; i < lw_place_count(f->wall); i++) {
    lw_place_find(f->wall, i, &above, &place);
    lw_place_run_at(&run, &place);
  }
  if (f->shown) show_graver(f, &cases, under, first);
}

static bool is_run(const lw_factor_set_family *family, int set) {
  return family->count == 1 || lw_factor_set_asks(&family->set[set]);
}

static void note_joint(const lw_free_body *body, double height_m, lw_joint *joint) {
  *joint = (lw_joint){.status = body->status,
                      .reason = body->reason,
                      .height_m = height_m,
                      .thrust_kn_per_m = body->thrust.total_kn_per_m,
                      .thrust_height_m = body->thrust.height_of_action_m,
                      .elastic_kn_per_m = body->wedge_governs ? 0.0 : body->elastic.push_kn_per_m,
                      .elastic_height_m = body->wedge_governs ? 0.0 : body->elastic.height_m,
                      .wedge_kn_per_m = body->wedge.thrust_kn_per_m,
                      .wedge_known = body->wedge_known,
                      .faulty = body->faulty,
                      .contact = body->contact};
}

/* One place in the load case that is shown. */
static void show_place(const lw_wall *wall, const lw_place *place, lw_trial_wedge_known *searched,
                       lw_situation *situation) {
  lw_push push;
  lw_free_body joint, *body = place->at == LW_AT_BASE  ? &situation->base
                              : place->at == LW_AT_PAD ? &situation->pad
                                                       : &joint;
  lw_push_find(wall, &situation->load_case.ground, &place->stack, searched, &push, NULL);
  lw_place_load(wall, &situation->load_case, place, &push, body, NULL);
  lw_free_body_show(&push, body);
  if (body != &joint) return;
  double height = wall->section.part[place->joint].bottom_m;
  note_joint(&joint, height, &situation->joint[situation->joint_count++]);
}

static void show(const lw_wall *wall, lw_situations *situations) {
  lw_trial_wedge_known searched = {.known = false};
  lw_section above;
  lw_place place;
  for (int s = 0; s < situations->count; s++) {
    lw_situation *situation = &situations->situation[s];
    situation->joint_count = 0;
    situation->pad = (lw_free_body){.status = LW_NO_SOLUTION, .reason = LW_REASON_NO_PAD};
    for (int i = 0; i < lw_place_count(wall); i++) {
      lw_place_find(wall, i, &above, &place);
      show_place(wall, &place, &searched, situation);
    }
    lw_bearing_show(wall, &situation->load_case.ground, &situation->base, LW_AT_BASE, &situation->base_bears);
    lw_bearing_show(wall, &situation->load_case.ground, &situation->pad, LW_AT_PAD, &situation->pad_bears);
    lw_compare_methods(wall, situation);
  }
}

static void show_nothing(lw_situations *situations) {
  for (int s = 0; s < situations->count; s++) {
    lw_situation *situation = &situations->situation[s];
    situation->load_case = (lw_load_case){.situation = situation->name, .kind = situation->kind};
    situation->base = (lw_free_body){.status = LW_NO_SOLUTION, .reason = LW_REASON_NO_DEPTH};
    situation->pad = (lw_free_body){.status = LW_NO_SOLUTION, .reason = LW_REASON_NO_PAD};
    situation->base_bears.known = situation->pad_bears.known = false;
    situation->joint_count = 0;
  }
}

void lw_situations_follow(const lw_wall *wall, const lw_factor_set_family *family, lw_detail detail,
                          lw_situations *situations) {
  bool everything = detail >= LW_DETAIL_EVERYTHING, shown = everything && wall->section.known, first = true;
  lw_gravest gravest[LW_SITUATION_COUNT];
  follow f = {wall, situations->count, detail <= LW_DETAIL_VERDICT, situations->situation,
              shown ? gravest : NULL};
  for (int i = 0; i < family->count; i++) {
    if (!is_run(family, i)) continue;
    follow_set(&f, &family->set[i], first);
    first = false;
  }
  if (!everything) return;
  if (shown)
    show(wall, situations);
  else
    show_nothing(situations);
}

void lw_situation_at(const lw_wall *wall, const lw_factor_set_family *family, const lw_check *where,
                     lw_situation *situation) {
  lw_load_cases cases;
  lw_trial_wedge_known searched[LW_LOAD_CASES_MAX];
  lw_gravest under[LW_SITUATION_COUNT];
  lw_gathered gathered;
  lw_section above;
  lw_place place;
  lw_place_of_check(wall, where, &above, &place);
  for (int i = 0; i < family->count; i++) {
    if (!is_run(family, i)) continue;
    lw_load_cases_list(wall, &family->set[i], situation, 1, false, &cases);
    begin(&cases, searched, under);
    lw_place_run run = {.wall = wall,
                        .factor_set = &family->set[i],
                        .cases = &cases,
                        .situation = situation,
                        .situation_count = 1,
                        .gathered = &gathered,
                        .searched = searched};
    lw_place_run_at(&run, &place);
  }
}
