/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "situation.h"

#include <math.h>
#include <string.h>

/* One situation run: every contact pushed, loaded and checked. Loads that may be absent are tried present and
 * absent, and the graver answer of each check stays. */

enum { CONTACTS = LW_COURSE_MAX + 2, BASE = 0, PAD = 1, FIRST_JOINT = 2 };

/* Pushes on every contact; situations with the same water and soil share them. */
typedef struct pushes {
  bool again;      /* they are not known yet for the situation in hand */
  int joint_count; /* the joint under the cap included */
  lw_section above[LW_COURSE_MAX + 1];
  lw_push push[CONTACTS + 1];
} pushes;

typedef struct run {
  const lw_contact_name *only; /* NULL: every contact */
  const lw_wall *wall; /* factored, and with the water of this situation */
  const lw_check_context *context;
  const pushes *pushes;
  lw_situation *situation;
  bool shown; /* its stages are the ones that reports show */
} run;

static bool asked(const lw_contact_name *only, lw_at at, int joint) {
  return !only || (only->at == at && only->joint == joint);
}

/* The joint under the cap is asked for as the cap. */
static bool asked_joint(const lw_contact_name *only, const lw_section *section, int joint) {
  bool under_cap = section->has_cap && joint == section->course_count;
  return asked(only, under_cap ? LW_AT_CAP : LW_AT_JOINT, under_cap ? 0 : joint);
}

/* The base's wedge is searched; pad and joints whose planes are the same figure take it at their own size. */
static void find_pushes(const lw_wall *wall, const lw_contact_name *only, pushes *all,
                        const lw_working *working) {
  int courses = wall->section.course_count;
  all->joint_count = 0;
  if (!wall->section.known) return;
  lw_working_heading(working, "Push on the base");
  lw_push *base = only && only->at != LW_AT_BASE ? NULL : &all->push[BASE];
  if (base) lw_push_find(wall, &wall->section, 0.0, NULL, base, working);
  if (wall->site.pad.thickness_m > 0.0 && asked(only, LW_AT_PAD, 0))
    lw_push_find(wall, &wall->section, wall->site.pad.thickness_m, base, &all->push[PAD], NULL);
  all->joint_count = courses > 0 ? courses - 1 + (wall->section.has_cap ? 1 : 0) : 0;
  for (int i = 0; i < all->joint_count; i++) {
    if (!asked_joint(only, &wall->section, i + 1)) continue;
    lw_section_above(&wall->section, i + 1, &all->above[i]);
    lw_push_find(wall, &all->above[i], 0.0, base, &all->push[FIRST_JOINT + i], NULL);
  }
}

static void keep(lw_situation *situation, const lw_check *check) {
  for (int i = 0; i < situation->check_count; i++) {
    lw_check *old = &situation->check[i];
    if (old->kind != check->kind || old->at != check->at || old->joint != check->joint) continue;
    if (lw_check_graver(check, old)) *old = *check;
    return;
  }
  situation->check[situation->check_count++] = *check;
}

static void check_base(const run *r, const lw_stage *stage) {
  lw_check checks[] = {lw_check_sliding(r->context, stage, LW_AT_BASE, 0),
                       lw_check_overturning(r->context, stage, LW_AT_BASE, 0),
                       lw_check_compression(r->context, stage, LW_AT_BASE, 0),
                       lw_check_bearing(r->context, stage, LW_AT_BASE)};
  for (size_t i = 0; i < sizeof checks / sizeof checks[0]; i++) keep(r->situation, &checks[i]);
}

static void check_pad(const run *r, const lw_stage *stage) {
  if (stage->status != LW_OK && stage->reason == LW_REASON_NO_PAD) return;
  lw_check checks[] = {lw_check_sliding(r->context, stage, LW_AT_PAD, 0),
                       lw_check_bearing(r->context, stage, LW_AT_PAD)};
  for (size_t i = 0; i < sizeof checks / sizeof checks[0]; i++) keep(r->situation, &checks[i]);
}

static void check_joint(const run *r, const lw_stage *stage, int joint) {
  lw_check checks[] = {lw_check_sliding(r->context, stage, LW_AT_JOINT, joint),
                       lw_check_overturning(r->context, stage, LW_AT_JOINT, joint),
                       lw_check_compression(r->context, stage, LW_AT_JOINT, joint)};
  for (size_t i = 0; i < sizeof checks / sizeof checks[0]; i++) keep(r->situation, &checks[i]);
}

/* A bonded cap is held by a glue nobody tested: that is said, and does not count either way. */
static void check_cap(const run *r, const lw_stage *stage) {
  lw_check checks[] = {lw_check_sliding(r->context, stage, LW_AT_CAP, 0),
                       lw_check_overturning(r->context, stage, LW_AT_CAP, 0)};
  for (size_t i = 0; i < sizeof checks / sizeof checks[0]; i++) {
    if (r->wall->section.cap_bonded) {
      lw_check_not_shown(&checks[i], LW_REASON_RELIES_ON_BOND);
      checks[i].counts = false;
    }
    keep(r->situation, &checks[i]);
  }
}

static void note_joint(const lw_stage *stage, double height_m, lw_joint *joint) {
  *joint = (lw_joint){.status = stage->status,
                      .reason = stage->reason,
                      .height_m = height_m,
                      .thrust_kn_per_m = stage->thrust.total_kn_per_m,
                      .thrust_height_m = stage->thrust.height_of_action_m,
                      .wedge_kn_per_m = stage->wedge.thrust_kn_per_m,
                      .wedge_known = stage->wedge_known,
                      .faulty = stage->faulty,
                      .contact = stage->contact};
}

static void run_joints(const run *r, const lw_actions *actions, bool first) {
  const lw_section *section = &r->wall->section;
  lw_stage stage;
  for (int i = 0; i < r->pushes->joint_count; i++) {
    bool under_cap = section->has_cap && i == r->pushes->joint_count - 1;
    if (!asked_joint(r->only, section, i + 1)) continue;
    lw_stage_above(r->wall, &r->pushes->above[i], &r->pushes->push[FIRST_JOINT + i], actions, &stage);
    if (first) note_joint(&stage, section->part[i + 1].bottom_m, &r->situation->joint[i]);
    if (under_cap)
      check_cap(r, &stage);
    else
      check_joint(r, &stage, i + 1);
  }
  if (first) r->situation->joint_count = r->pushes->joint_count;
}

/* A wall that is dug away under its front edge rests on nothing that is known. */
static void undermine(const run *r, lw_stage *stage) {
  if (!r->wall->site.undermined || stage->status != LW_OK) return;
  stage->status = LW_NO_SOLUTION;
  stage->reason = LW_REASON_UNDERMINED;
}

static void run_base(const run *r, const lw_actions *actions, bool first) {
  lw_stage stage;
  lw_stage_base(r->wall, &r->pushes->push[BASE], actions, &stage);
  undermine(r, &stage);
  check_base(r, &stage);
  if (first) r->situation->base = stage;
}

static void run_pad(const run *r, const lw_actions *actions, bool first) {
  lw_stage stage;
  lw_stage_pad(r->wall, &r->pushes->push[PAD], actions, &stage);
  undermine(r, &stage);
  check_pad(r, &stage);
  if (first) r->situation->pad = stage;
}

static void run_variant(const run *r, const lw_actions *actions, bool first) {
  if (asked(r->only, LW_AT_BASE, 0)) run_base(r, actions, first);
  if (asked(r->only, LW_AT_PAD, 0)) run_pad(r, actions, first);
  run_joints(r, actions, first);
}

/* The downward part of people and the load on a cap may be missing while the rest is there. */
static void run_variants(const run *r, const lw_actions *actions) {
  lw_actions lighter = *actions;
  bool cap_load = false;
  for (int i = 0; i < r->wall->site.load_count; i++)
    cap_load = cap_load || r->wall->site.load[i].kind == LW_LOAD_CAP;
  run_variant(r, actions, r->shown);
  if (actions->people_down_kn_per_m > 0.0) {
    lighter.people_down_kn_per_m = 0.0;
    run_variant(r, &lighter, false);
  }
  if (!cap_load) return;
  lighter.cap_load = false;
  run_variant(r, &lighter, false);
  lighter.people_down_kn_per_m = actions->people_down_kn_per_m;
  if (actions->people_down_kn_per_m > 0.0) run_variant(r, &lighter, false);
}

/* Without a block depth no check can be shown, and each says so. */
static void run_unknown(const run *r) {
  lw_stage stage = {.status = LW_NO_SOLUTION, .reason = LW_REASON_NO_DEPTH};
  check_base(r, &stage);
  r->situation->base = stage;
  r->situation->pad = (lw_stage){.status = LW_NO_SOLUTION, .reason = LW_REASON_NO_PAD};
}

static void start(const lw_situation_plan *plan, lw_situation *situation) {
  situation->name = plan->name;
  situation->kind = plan->kind;
  situation->decides = plan->decides;
  situation->why = plan->why;
  situation->water_depth_m = plan->water_depth_m;
  situation->people_down_kn_per_m = plan->actions.people_down_kn_per_m;
  situation->people_out_kn_per_m = plan->actions.people_out_kn_per_m;
  situation->joint_count = situation->check_count = 0;
}

/* The ways in which an earthquake may act: weight made lighter or heavier, wet ground with its water or the
 * water by itself. Without one there is a single way, which is none. */
enum { WAYS = 4 };

static int ways_of(const lw_wall *wall, const lw_situation_plan *plan, lw_seismic way[WAYS]) {
  double up = plan->seismic_vertical, share = wall->method.seismic_height;
  bool shaken = plan->seismic_horizontal > 0.0 || up > 0.0;
  bool wet = plan->water_depth_m < wall->section.height_m + wall->site.pad.thickness_m;
  int count = 0;
  way[count++] = shaken ? (lw_seismic){plan->seismic_horizontal, up, share, true} : (lw_seismic){0};
  if (shaken && up > 0.0) way[count++] = (lw_seismic){plan->seismic_horizontal, -up, share, true};
  for (int i = 0, dry = count; shaken && wet && i < dry; i++) {
    way[count] = way[i];
    way[count++].pervious = false;
  }
  return count;
}

static bool same_push(const lw_format *format, const lw_situation_plan *a, const lw_situation_plan *b) {
  bool same_water = a->water_depth_m <= b->water_depth_m && a->water_depth_m >= b->water_depth_m;
  bool shaken = a->name == LW_SITUATION_EARTHQUAKE || b->name == LW_SITUATION_EARTHQUAKE;
  return same_water && !shaken && (a->kind == b->kind || !format->row[LW_NEED_FRICTION]);
}

static void follow(const lw_wall *wall, const lw_format *format, const lw_situation_plan *plan, pushes *all,
                   lw_situation *situation, const lw_working *working) {
  lw_seismic way[WAYS];
  int ways = ways_of(wall, plan, way);
  start(plan, situation);
  situation->seismic = way[0];
  for (int i = 0; i < ways; i++) {
    lw_wall now;
    lw_check_context context = {&now, format, plan->kind, isfinite(plan->water_depth_m)};
    run r = {NULL, &now, &context, all, situation, i == 0};
    lw_situation_wall(wall, format, situation, &now);
    now.site.seismic = way[i];
    if (all->again) find_pushes(&now, NULL, all, i == 0 ? working : NULL);
    if (wall->section.known)
      run_variants(&r, &plan->actions);
    else
      run_unknown(&r);
  }
}

void lw_situations_follow(const lw_wall *wall, const lw_tables *tables, const lw_situation_plan *plan,
                          lw_situations *situations, const lw_working *working) {
  pushes all;
  lw_format format;
  int pushed_for = -1;
  lw_format_read(tables, wall->format, &format);
  for (int i = 0; i < situations->count; i++) {
    all.again = pushed_for < 0 || !same_push(&format, &plan[pushed_for], &plan[i]);
    lw_working_heading(working, lw_situation_sentence(plan[i].name));
    follow(wall, &format, &plan[i], &all, &situations->situation[i], working);
    if (all.again) pushed_for = i;
  }
}

void lw_situation_contact(const lw_wall *wall, const lw_format *format, const lw_situation_plan *plan,
                          const lw_contact_name *only, lw_situation *situation) {
  pushes all;
  lw_wall now;
  lw_check_context context = {&now, format, plan->kind, isfinite(plan->water_depth_m)};
  run r = {only, &now, &context, &all, situation, true};
  start(plan, situation);
  situation->seismic = (lw_seismic){0};
  lw_situation_wall(wall, format, situation, &now);
  find_pushes(&now, only, &all, NULL);
  if (wall->section.known) run_variants(&r, &plan->actions);
}
