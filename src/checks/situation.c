/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "situation.h"
#include "tier.h"

#include <assert.h>
#include <math.h>
#include <string.h>

/* One situation run: every contact pushed, loaded and checked. Loads that may be absent are tried present and
 * absent, and the graver answer of each check stays. */

enum { CONTACTS = LW_COURSE_MAX + 2, BASE = 0, PAD = 1, FIRST_JOINT = 2 };

/* The courses above each joint, the one under the cap included, and the pushes on every contact. Situations
 * with the same water and soil share the pushes, all of them a wedge that only changes its size. */
typedef struct pushes {
  int joint_count;
  lw_section above[LW_COURSE_MAX + 1];
  lw_push push[CONTACTS + 1];
  lw_wedge_known searched;
} pushes;

typedef struct run {
  const lw_contact_name *only; /* NULL: every contact */
  const lw_wall *wall;         /* its strengths factored, and with the water of this situation */
  const lw_check_context *context;
  const pushes *pushes;
  lw_situation *situation;
  lw_factors factors; /* in hand */
  int next;           /* check of the variant in hand */
  bool any;
  lw_check gravest; /* under this set, and the factors it came about with */
  lw_factors of_gravest;
} run;

static bool asked(const lw_contact_name *only, lw_at at, int joint) {
  return !only || (only->at == at && only->joint == joint);
}

/* The joint under the cap is asked for as the cap. */
static bool asked_joint(const lw_contact_name *only, const lw_section *section, int joint) {
  bool under_cap = section->has_cap && joint == section->course_count;
  return asked(only, under_cap ? LW_AT_CAP : LW_AT_JOINT, under_cap ? 0 : joint);
}

/* No situation changes what stands above a joint. */
static void find_joints(const lw_section *section, const lw_contact_name *only, pushes *all) {
  int courses = section->known ? section->course_count : 0;
  all->searched.known = false;
  all->joint_count = courses > 0 ? courses - 1 + (section->has_cap ? 1 : 0) : 0;
  for (int i = 0; i < all->joint_count; i++)
    if (asked_joint(only, section, i + 1)) lw_section_above(section, i + 1, &all->above[i]);
}

static void find_pushes(const lw_wall *wall, const lw_contact_name *only, pushes *all) {
  const lw_section *section = &wall->section;
  lw_wedge_known *searched = &all->searched;
  double pad = wall->site.pad.thickness_m;
  if (!section->known) return;
  if (asked(only, LW_AT_BASE, 0)) lw_push_find(wall, section, 0.0, searched, &all->push[BASE], NULL);
  if (pad > 0.0 && asked(only, LW_AT_PAD, 0))
    lw_push_find(wall, section, pad, searched, &all->push[PAD], NULL);
  for (int i = 0; i < all->joint_count; i++)
    if (asked_joint(only, section, i + 1))
      lw_push_find(wall, &all->above[i], 0.0, searched, &all->push[FIRST_JOINT + i], NULL);
}

/* Every variant has the same checks in the same order. */
static void keep_graver(run *r, const lw_check *check) {
  lw_situation *s = r->situation;
  lw_check *kept = &s->check[r->next];
  bool first = r->next++ == s->check_count;
  if (first) s->check_count++;
  assert(first || (kept->kind == check->kind && kept->at == check->at && kept->joint == check->joint));
  if (first || lw_check_graver(check, kept)) *kept = *check;
}

static void keep(run *r, lw_check *check) {
  check->factored = r->factors.factored;
  lw_format_restrain(r->context->format, check);
  keep_graver(r, check);
  if (r->wall->governing_only || (r->any && !lw_check_graver(check, &r->gravest))) return;
  r->any = true;
  r->gravest = *check;
  r->of_gravest = r->factors;
}

static void check_base(run *r, const lw_stage *stage) {
  lw_check checks[] = {lw_check_sliding(r->context, stage, LW_AT_BASE, 0),
                       lw_check_overturning(r->context, stage, LW_AT_BASE, 0),
                       lw_check_compression(r->context, stage, LW_AT_BASE, 0),
                       lw_check_bearing(r->context, stage, LW_AT_BASE)};
  for (size_t i = 0; i < sizeof checks / sizeof checks[0]; i++) keep(r, &checks[i]);
}

static void check_pad(run *r, const lw_stage *stage) {
  lw_check checks[] = {lw_check_sliding(r->context, stage, LW_AT_PAD, 0),
                       lw_check_bearing(r->context, stage, LW_AT_PAD)};
  for (size_t i = 0; i < sizeof checks / sizeof checks[0]; i++) keep(r, &checks[i]);
}

static void check_joint(run *r, const lw_stage *stage, int joint) {
  lw_check checks[] = {lw_check_sliding(r->context, stage, LW_AT_JOINT, joint),
                       lw_check_overturning(r->context, stage, LW_AT_JOINT, joint),
                       lw_check_compression(r->context, stage, LW_AT_JOINT, joint)};
  for (size_t i = 0; i < sizeof checks / sizeof checks[0]; i++) keep(r, &checks[i]);
}

/* A bonded cap is held by a glue nobody tested: that is said, and does not count either way. */
static void check_cap(run *r, const lw_stage *stage) {
  lw_check checks[] = {lw_check_sliding(r->context, stage, LW_AT_CAP, 0),
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

static void check_joints(run *r, const lw_actions *actions) {
  lw_stage stage;
  for (int i = 0; i < r->pushes->joint_count; i++) {
    bool under_cap = r->wall->section.has_cap && i == r->pushes->joint_count - 1;
    if (!asked_joint(r->only, &r->wall->section, i + 1)) continue;
    lw_stage_above(r->wall, &r->pushes->above[i], &r->pushes->push[FIRST_JOINT + i], actions, &stage);
    if (under_cap)
      check_cap(r, &stage);
    else
      check_joint(r, &stage, i + 1);
  }
}

/* A wall that is dug away under its front edge rests on nothing that is known. */
static void undermine(const run *r, lw_stage *stage) {
  if (!r->wall->site.undermined || stage->status != LW_OK) return;
  stage->status = LW_NO_SOLUTION;
  stage->reason = LW_REASON_UNDERMINED;
}

static void stage_base(const run *r, const lw_actions *actions, lw_stage *stage) {
  lw_stage_base(r->wall, &r->pushes->push[BASE], actions, stage);
  undermine(r, stage);
}

static void stage_pad(const run *r, const lw_actions *actions, lw_stage *stage) {
  lw_stage_pad(r->wall, &r->pushes->push[PAD], actions, stage);
  undermine(r, stage);
}

static void run_variant(run *r, const lw_actions *actions) {
  lw_stage stage;
  r->next = 0;
  if (asked(r->only, LW_AT_BASE, 0)) {
    stage_base(r, actions, &stage);
    check_base(r, &stage);
  }
  if (r->wall->site.pad.thickness_m > 0.0 && asked(r->only, LW_AT_PAD, 0)) {
    stage_pad(r, actions, &stage);
    check_pad(r, &stage);
  }
  check_joints(r, actions);
}

/* The downward part of people and the load on a cap may be missing while the rest is there. */
static void run_variants(run *r, const lw_actions *actions) {
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
static void run_leanings(run *r, const lw_actions *actions) {
  lw_factors factors[LW_LEANINGS];
  int count = lw_format_factors(r->context->format, r->context->kind, r->wall, factors);
  for (int i = 0; i < count; i++) {
    lw_actions with = *actions;
    with.factors = r->factors = factors[i];
    run_variants(r, &with);
  }
}

/* The stages that the reports show: with all loads there, under the factors of the gravest check. */
static void record(const run *r, const lw_actions *actions) {
  lw_situation *s = r->situation;
  const lw_section *section = &r->wall->section;
  bool has_pad = r->wall->site.pad.thickness_m > 0.0;
  lw_actions with = *actions;
  lw_stage stage;
  with.factors = s->factors = r->of_gravest;
  s->set = r->context->format->any;
  if (asked(r->only, LW_AT_BASE, 0)) {
    stage_base(r, &with, &s->base);
    lw_stage_show(&r->pushes->push[BASE], &s->base);
  }
  if (asked(r->only, LW_AT_PAD, 0)) {
    stage_pad(r, &with, &s->pad);
    if (has_pad) lw_stage_show(&r->pushes->push[PAD], &s->pad);
  }
  s->joint_count = r->pushes->joint_count;
  for (int i = 0; i < s->joint_count; i++) {
    if (!asked_joint(r->only, section, i + 1)) continue;
    lw_stage_above(r->wall, &r->pushes->above[i], &r->pushes->push[FIRST_JOINT + i], &with, &stage);
    lw_stage_show(&r->pushes->push[FIRST_JOINT + i], &stage);
    note_joint(&stage, section->part[i + 1].bottom_m, &s->joint[i]);
  }
}

/* Without a block depth no check can be shown, and each says so. */
static void run_unknown(run *r) {
  lw_stage stage = {.status = LW_NO_SOLUTION, .reason = LW_REASON_NO_DEPTH};
  r->next = 0;
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
  situation->set = NULL;
  situation->factors = (lw_factors){0};
  situation->slip_known = false;
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
  bool windy = a->name == LW_SITUATION_WIND || b->name == LW_SITUATION_WIND;
  return same_water && !shaken && !windy && lw_format_same_ground(format, a->kind, b->kind);
}

/* What all sets of one run of situations share. */
typedef struct follow {
  const lw_wall *wall;
  const lw_contact_name *only;
  const lw_situation_plan *plan;
  int count;
  lw_situation *situation;
  lw_wall *now;                         /* the wall as it stands in the situation in hand */
  lw_check gravest[LW_SITUATION_COUNT]; /* of the sets before */
} follow;

/* The way that is shown comes last: its pushes are then at hand. */
static void follow_plan(follow *f, const lw_format *format, int i, pushes *all, bool again, bool first) {
  const lw_situation_plan *plan = &f->plan[i];
  lw_wall *now = f->now;
  lw_check_context context = {now, format, plan->kind, isfinite(plan->water_depth_m)};
  run r = {.only = f->only, .wall = now, .context = &context, .pushes = all, .situation = &f->situation[i]};
  lw_seismic way[WAYS];
  for (int w = ways_of(f->wall, plan, way) - 1; w >= 0; w--) {
    r.situation->seismic = way[w];
    lw_situation_change(f->wall, format, r.situation, now, NULL);
    if (again) find_pushes(now, f->only, all);
    if (f->wall->section.known)
      run_leanings(&r, &plan->actions);
    else
      run_unknown(&r);
  }
  bool shown = f->wall->section.known && !f->wall->governing_only;
  if (!shown || (!first && !lw_check_graver(&r.gravest, &f->gravest[i]))) return;
  f->gravest[i] = r.gravest;
  record(&r, &plan->actions);
}

/* Situations with the same pushes one after another. */
static void follow_set(follow *f, const lw_format *format, pushes *all, bool first) {
  bool done[LW_SITUATION_COUNT] = {false};
  for (int i = 0; i < f->count; i++) {
    if (done[i]) continue;
    for (int k = i; k < f->count; k++) {
      if (done[k] || (k > i && !same_push(format, &f->plan[i], &f->plan[k]))) continue;
      follow_plan(f, format, k, all, k == i, first);
      done[k] = true;
    }
  }
}

static void follow_all(follow *f, const lw_format_family *family) {
  pushes all;
  bool first = true;
  find_joints(&f->wall->section, f->only, &all);
  for (int i = 0; i < f->count; i++) start(&f->plan[i], &f->situation[i]);
  for (int i = 0; i < family->count; i++) {
    /* What asks for nothing is run only where nothing else is there. */
    if (family->count > 1 && !lw_format_asks(&family->set[i])) continue;
    follow_set(f, &family->set[i], &all, first);
    first = false;
  }
}

/* The steps to the push that is shown. Where it is that of the situation before, nothing new is said. */
static void tell_push(const lw_wall *wall, const lw_tables *tables, const lw_situation *s,
                      const lw_working *working) {
  lw_format format;
  lw_push push;
  lw_wall now;
  lw_format_read_of(tables, s->set, &format);
  lw_working_heading(working, "Push on the base");
  lw_situation_wall(wall, &format, s, &now, working);
  lw_push_find(&now, &now.section, 0.0, NULL, &push, working);
}

static void tell_pushes(const lw_wall *wall, const lw_tables *tables, const lw_situation_plan *plan,
                        const lw_situations *situations, const lw_working *working) {
  for (int i = 0; i < situations->count; i++) {
    const lw_situation *s = &situations->situation[i], *before = s - 1;
    lw_format format;
    lw_format_read_of(tables, s->set, &format);
    lw_working_heading(working, lw_situation_sentence(s->name));
    bool same = i > 0 && s->set == before->set && same_push(&format, &plan[i - 1], &plan[i]);
    if (wall->section.known && !same) tell_push(wall, tables, s, working);
  }
}

void lw_situations_follow(const lw_wall *wall, const lw_tables *tables, const lw_situation_plan *plan,
                          lw_situations *situations, const lw_working *working) {
  lw_format_family family;
  lw_wall now;
  lw_section_copy(&wall->section, &now.section);
  follow f = {.wall = wall,
              .plan = plan,
              .count = situations->count,
              .situation = situations->situation,
              .now = &now};
  lw_format_read(tables, wall->format, &family);
  follow_all(&f, &family);
  lw_slips_check(wall, &family, situations);
  if (working) tell_pushes(wall, tables, plan, situations, working);
}

void lw_situation_contact(const lw_wall *wall, const lw_format_family *family, const lw_situation_plan *plan,
                          const lw_contact_name *only, lw_situation *situation) {
  lw_wall now;
  lw_section_copy(&wall->section, &now.section);
  follow f = {.wall = wall, .only = only, .plan = plan, .count = 1, .situation = situation, .now = &now};
  follow_all(&f, family);
}
