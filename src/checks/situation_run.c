/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "situation_run.h"

#include <assert.h>

/* Every contact in one situation, pushed, loaded and checked. */

/* Every variant has the same checks in the same order. */
static void keep_graver(lw_situation_run *r, const lw_check *check) {
  lw_situation *s = r->situation;
  lw_check *kept = &s->check[r->next];
  bool first = r->next++ == s->check_count;
  if (first) s->check_count++;
  assert(first || (kept->kind == check->kind && kept->at == check->at && kept->joint == check->joint));
  if (first || lw_check_graver(check, kept)) *kept = *check;
}

static void keep(lw_situation_run *r, lw_check *check) {
  check->factored = r->factors.factored;
  lw_format_restrain(r->context->format, check);
  keep_graver(r, check);
  if (r->wall->governing_only || (r->any && !lw_check_graver(check, &r->gravest))) return;
  r->any = true;
  r->gravest = *check;
  r->of_gravest = r->factors;
}

/* joint: in the section, the one under the cap too */
static lw_check sliding_of(const lw_situation_run *r, const lw_stage *stage, lw_at at, int joint) {
  if (stage->status != LW_OK || !lw_format_on_every_wedge(r->context->format, r->context->kind))
    return lw_check_sliding(r->context, stage, at, at == LW_AT_CAP ? 0 : joint);
  lw_wedges wedges = {.wall = r->whole,
                      .format = r->context->format,
                      .situation = r->situation,
                      .actions = r->actions,
                      .at = at,
                      .joint = joint};
  return lw_check_sliding_of_wedges(&wedges);
}

static void check_base(lw_situation_run *r, const lw_stage *stage) {
  lw_check checks[] = {sliding_of(r, stage, LW_AT_BASE, 0),
                       lw_check_overturning(r->context, stage, LW_AT_BASE, 0),
                       lw_check_compression(r->context, stage, LW_AT_BASE, 0),
                       lw_check_bearing(r->context, stage, LW_AT_BASE)};
  for (size_t i = 0; i < sizeof checks / sizeof checks[0]; i++) keep(r, &checks[i]);
}

static void check_pad(lw_situation_run *r, const lw_stage *stage) {
  lw_check checks[] = {sliding_of(r, stage, LW_AT_PAD, 0), lw_check_bearing(r->context, stage, LW_AT_PAD)};
  for (size_t i = 0; i < sizeof checks / sizeof checks[0]; i++) keep(r, &checks[i]);
}

static void check_joint(lw_situation_run *r, const lw_stage *stage, int joint) {
  lw_check checks[] = {sliding_of(r, stage, LW_AT_JOINT, joint),
                       lw_check_overturning(r->context, stage, LW_AT_JOINT, joint),
                       lw_check_compression(r->context, stage, LW_AT_JOINT, joint)};
  for (size_t i = 0; i < sizeof checks / sizeof checks[0]; i++) keep(r, &checks[i]);
}

/* A bonded cap is held by a glue nobody tested: that is said, and does not count either way. */
static void check_cap(lw_situation_run *r, const lw_stage *stage) {
  lw_check checks[] = {sliding_of(r, stage, LW_AT_CAP, r->wall->section.course_count),
                       lw_check_overturning(r->context, stage, LW_AT_CAP, 0)};
  for (size_t i = 0; i < sizeof checks / sizeof checks[0]; i++) {
    if (r->wall->section.cap_bonded) {
      lw_check_not_shown(&checks[i], LW_REASON_RELIES_ON_BOND);
      checks[i].counts = false;
    }
    keep(r, &checks[i]);
  }
}

static void note_joint(const lw_stage *stage, double height_m, lw_joint *joint) {
  *joint = (lw_joint){.status = stage->status,
                      .reason = stage->reason,
                      .height_m = height_m,
                      .thrust_kn_per_m = stage->thrust.total_kn_per_m,
                      .thrust_height_m = stage->thrust.height_of_action_m,
                      .elastic_kn_per_m = stage->wedge_governs ? 0.0 : stage->elastic.push_kn_per_m,
                      .elastic_height_m = stage->wedge_governs ? 0.0 : stage->elastic.height_m,
                      .wedge_kn_per_m = stage->wedge.thrust_kn_per_m,
                      .wedge_known = stage->wedge_known,
                      .faulty = stage->faulty,
                      .contact = stage->contact};
}

static void check_joints(lw_situation_run *r, const lw_actions *actions) {
  lw_stage stage;
  for (int i = 0; i < r->pushes->joint_count; i++) {
    bool under_cap = r->wall->section.has_cap && i == r->pushes->joint_count - 1;
    if (!lw_joint_asked(r->only, &r->wall->section, i + 1)) continue;
    lw_stage_above(r->wall, &r->pushes->above[i], &r->pushes->push[LW_PUSH_FIRST_JOINT + i], actions, &stage);
    if (under_cap)
      check_cap(r, &stage);
    else
      check_joint(r, &stage, i + 1);
  }
}

/* A wall that is dug away under its front edge rests on nothing that is known. */
static void undermine(const lw_situation_run *r, lw_stage *stage) {
  if (!r->wall->site.undermined || stage->status != LW_OK) return;
  stage->status = LW_NO_SOLUTION;
  stage->reason = LW_REASON_UNDERMINED;
}

static void stage_base(const lw_situation_run *r, const lw_actions *actions, lw_stage *stage) {
  lw_stage_base(r->wall, &r->pushes->push[LW_PUSH_BASE], actions, stage);
  undermine(r, stage);
}

static void stage_pad(const lw_situation_run *r, const lw_actions *actions, lw_stage *stage) {
  lw_stage_pad(r->wall, &r->pushes->push[LW_PUSH_PAD], actions, stage);
  undermine(r, stage);
}

static void run_variant(lw_situation_run *r, const lw_actions *actions) {
  lw_stage stage;
  r->next = 0;
  r->actions = actions;
  if (lw_contact_asked(r->only, LW_AT_BASE)) {
    stage_base(r, actions, &stage);
    check_base(r, &stage);
  }
  if (lw_site_under(&r->wall->site) > 0.0 && lw_contact_asked(r->only, LW_AT_PAD)) {
    stage_pad(r, actions, &stage);
    check_pad(r, &stage);
  }
  check_joints(r, actions);
}

/* The downward part of people and the load on a cap may be missing while the rest is there. */
static void run_variants(lw_situation_run *r, const lw_actions *actions) {
  lw_actions lighter = *actions;
  bool cap_load = false;
  for (int i = 0; i < r->wall->site.load_count; i++)
    cap_load = cap_load || (r->wall->site.load[i].kind == LW_LOAD_CAP && r->wall->site.load[i].force > 0.0);
  run_variant(r, actions);
  if (actions->people_down_kn_per_m > 0.0) {
    lighter.people_down_kn_per_m = 0.0;
    run_variant(r, &lighter);
  }
  if (!cap_load) return;
  lighter.cap_load = false;
  run_variant(r, &lighter);
  lighter.people_down_kn_per_m = actions->people_down_kn_per_m;
  if (actions->people_down_kn_per_m > 0.0) run_variant(r, &lighter);
}

/* Every source of load favourable and unfavourable, as far as that makes a difference. */
static void run_leanings(lw_situation_run *r, const lw_actions *actions) {
  lw_factors factors[LW_LEANINGS];
  int count = lw_format_factors(r->context->format, r->context->kind, r->wall, factors);
  for (int i = 0; i < count; i++) {
    lw_actions with = *actions;
    with.factors = r->factors = factors[i];
    run_variants(r, &with);
  }
}

/* Without a block depth no check can be shown, and each says so. */
static void run_unknown(lw_situation_run *r) {
  lw_stage stage = {.status = LW_NO_SOLUTION, .reason = LW_REASON_NO_DEPTH};
  r->next = 0;
  check_base(r, &stage);
  r->situation->base = stage;
  r->situation->pad = (lw_stage){.status = LW_NO_SOLUTION, .reason = LW_REASON_NO_PAD};
}

void lw_situation_check(lw_situation_run *r, const lw_actions *actions) {
  if (r->wall->section.known)
    run_leanings(r, actions);
  else
    run_unknown(r);
}

void lw_situation_record(const lw_situation_run *r, const lw_actions *actions) {
  lw_situation *s = r->situation;
  const lw_section *section = &r->wall->section;
  bool has_pad = lw_site_under(&r->wall->site) > 0.0;
  lw_actions with = *actions;
  lw_stage stage;
  with.factors = s->factors = r->of_gravest;
  s->set = r->context->format->any;
  if (lw_contact_asked(r->only, LW_AT_BASE)) {
    stage_base(r, &with, &s->base);
    lw_stage_show(&r->pushes->push[LW_PUSH_BASE], &s->base);
  }
  if (lw_contact_asked(r->only, LW_AT_PAD)) {
    stage_pad(r, &with, &s->pad);
    if (has_pad) lw_stage_show(&r->pushes->push[LW_PUSH_PAD], &s->pad);
  }
  s->joint_count = r->pushes->joint_count;
  for (int i = 0; i < s->joint_count; i++) {
    if (!lw_joint_asked(r->only, section, i + 1)) continue;
    lw_stage_above(r->wall, &r->pushes->above[i], &r->pushes->push[LW_PUSH_FIRST_JOINT + i], &with, &stage);
    lw_stage_show(&r->pushes->push[LW_PUSH_FIRST_JOINT + i], &stage);
    note_joint(&stage, section->part[i + 1].bottom_m, &s->joint[i]);
  }
}
