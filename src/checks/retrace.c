/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "situation.h"

#include <math.h>

/* The stage behind a check, found again: a situation keeps only the one that governs, and of the others the
 * answers. Every variant of the check's own set is tried until one gives the same numbers. */

enum { VARIANTS = 4 }; /* people and the load on the cap, each pressing down or not */

typedef struct trace {
  const lw_check *check;
  lw_format format;
  lw_check_context context;
  lw_section above;
  lw_push push;
  lw_retrace *out;
} trace;

static bool near(lw_number a, lw_number b) {
  if (!a.known || !b.known) return a.known == b.known;
  return fabs(a.value - b.value) <= 1e-12 * fmax(fabs(a.value), 1.0);
}

static double extra_depth(const trace *t) {
  return t->check->at == LW_AT_PAD ? lw_site_under(&t->out->wall.site) : 0.0;
}

static void push_on(trace *t) {
  const lw_wall *wall = &t->out->wall;
  int joint = t->check->at == LW_AT_CAP ? wall->section.course_count : t->check->joint;
  bool whole = t->check->at == LW_AT_BASE || t->check->at == LW_AT_PAD;
  if (!whole) lw_section_above(&wall->section, joint, &t->above);
  lw_push_find(wall, whole ? &wall->section : &t->above, extra_depth(t), NULL, &t->push, NULL);
}

static void stage_of(trace *t, const lw_actions *actions) {
  const lw_wall *wall = &t->out->wall;
  lw_stage_show(&t->push, &t->out->stage);
  switch (t->check->at) {
  case LW_AT_BASE: lw_stage_base(wall, &t->push, actions, &t->out->stage); return;
  case LW_AT_PAD: lw_stage_pad(wall, &t->push, actions, &t->out->stage); return;
  default: lw_stage_above(wall, &t->above, &t->push, actions, &t->out->stage);
  }
}

static lw_check again(const trace *t) {
  const lw_check *c = t->check;
  switch (c->kind) {
  case LW_CHECK_OVERTURNING:
  case LW_CHECK_TILTING: return lw_check_overturning(&t->context, &t->out->stage, c->at, c->joint);
  case LW_CHECK_COMPRESSION: return lw_check_compression(&t->context, &t->out->stage, c->at, c->joint);
  case LW_CHECK_BEARING: return lw_check_bearing(&t->context, &t->out->stage, c->at);
  default: return lw_check_sliding(&t->context, &t->out->stage, c->at, c->joint);
  }
}

static void note(trace *t) {
  lw_retrace *out = t->out;
  lw_situation_kind kind = t->context.kind;
  out->on_friction = lw_format_times(&t->format, kind, LW_NEED_FRICTION, LW_NEED_FRICTION_TIMES);
  out->wedges = t->format.on_every_wedge;
  if (out->wedges > 0.0) out->on_friction /= out->wedges;
  out->on_push = out->wedges > 0.0 ? 1.0 : lw_format_mobilized(&t->format, kind, &out->wall.method);
  out->on_sliding =
      lw_format_times(&t->format, kind, LW_NEED_SLIDING_RESISTANCE, LW_NEED_SLIDING_RESISTANCE_TIMES);
  out->on_passive =
      lw_format_times(&t->format, kind, LW_NEED_PASSIVE_RESISTANCE, LW_NEED_PASSIVE_RESISTANCE_TIMES);
  out->on_bearing =
      lw_format_times(&t->format, kind, LW_NEED_BEARING_RESISTANCE, LW_NEED_BEARING_RESISTANCE_TIMES);
  out->ground_holds_kn_per_m = lw_sliding_most(&t->context, &out->stage.contact, t->check->at);
  out->strip = lw_bearing_strip(&t->context, &out->stage, t->check->at);
}

static bool same_answer(trace *t) {
  lw_check c = again(t);
  bool same = near(c.has, t->check->has) && near(c.resistance, t->check->resistance) &&
              near(c.demand, t->check->demand);
  if (same) note(t);
  return same;
}

static bool try_actions(trace *t, const lw_situation *s, const lw_factors *factors) {
  for (int v = 0; v < VARIANTS; v++) {
    lw_actions actions = {.people_down_kn_per_m = v & 1 ? 0.0 : s->people_down_kn_per_m,
                          .people_out_kn_per_m = s->people_out_kn_per_m,
                          .cap_load = !(v & 2),
                          .factors = *factors};
    stage_of(t, &actions);
    if (same_answer(t)) return true;
  }
  return false;
}

bool lw_check_retrace(const lw_wall *wall, const lw_tables *tables, const lw_situation *situation,
                      const lw_check *check, lw_retrace *out) {
  trace t = {.check = check, .out = out};
  lw_factors factors[LW_LEANINGS];
  if (check->at == LW_AT_GROUND || !check->has.known) return false;
  lw_format_read_of(tables, check->by ? check->by : situation->set, &t.format);
  bool wedges = check->kind == LW_CHECK_SLIDING && lw_format_on_every_wedge(&t.format, situation->kind);
  if (wedges) t.format.on_every_wedge = check->has.value;
  lw_situation_wall(wall, &t.format, situation, &out->wall, NULL);
  lw_format_mobilize(&t.format, situation->kind, &out->wall, NULL);
  t.context = (lw_check_context){&out->wall, &t.format, situation->kind, isfinite(situation->water_depth_m)};
  push_on(&t);
  int count = lw_format_factors(&t.format, situation->kind, &out->wall, factors);
  for (int i = 0; i < count; i++)
    if (try_actions(&t, situation, &factors[i])) return true;
  return false;
}
