/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "load_cases/kinds.h"
#include "run/again.h"
#include "contacts.h"

#include <math.h>

/* What a check rests on. Its contact is shown under the set of factors that governs the situation, with every
 * load there; a check keeps the worst of all sets and loads, so that it may rest on another load case. */

static bool close(double a, double b) {
  return fabs(a - b) <= 1e-12 * fmax(fabs(b), 1.0);
}

static bool agrees(lw_number number, double value) {
  return number.known && fabs(number.value - value) <= 1e-9 * fmax(fabs(value), 1.0);
}

static bool same_sums(const lw_contact *a, const lw_contact *b) {
  return close(a->vertical_kn_per_m, b->vertical_kn_per_m) &&
         close(a->horizontal_kn_per_m, b->horizontal_kn_per_m) &&
         close(a->resisting_knm_per_m, b->resisting_knm_per_m) &&
         close(a->overturning_knm_per_m, b->overturning_knm_per_m);
}

static int joint_of(const lw_result *result, const lw_check *check) {
  return check->at == LW_AT_CAP ? result->wall.section.course_count : check->joint;
}

static const lw_contact *shown(const lw_bases *bases, const lw_check *check) {
  const lw_situation *s = bases->situation;
  if (check->at == LW_AT_BASE) return &s->base.contact;
  if (check->at == LW_AT_PAD) return &s->pad.contact;
  return &s->joint[joint_of(bases->result, check) - 1].contact;
}

/* From sliding, passive apart. */
static double ground_of(const lw_basis *by) {
  const lw_contact *c = &by->body.contact;
  double friction = by->friction * fmax(c->vertical_kn_per_m, 0.0);
  return fmin(by->on_sliding * (friction + by->bond_kn_per_m), by->ground_holds_kn_per_m);
}

static double people_down(const lw_free_body *body) {
  double down = 0.0;
  for (int i = 0; i < body->forces.count; i++)
    if (body->forces.force[i].kind == LW_FORCE_PEOPLE) down += body->forces.force[i].vertical_kn_per_m;
  return down;
}

static void add_base(lw_bases *bases, const lw_check *check, const lw_basis *by) {
  const lw_situation *s = bases->situation;
  const lw_factor_row *set = by->load_case.set;
  char at[24];
  json_t *entry = lw_json_entry(bases->list);
  int joint = check->at == LW_AT_BASE || check->at == LW_AT_PAD ? 0 : joint_of(bases->result, check);
  lw_check_print_at(check, at, sizeof at);
  lw_json_set_count(entry, "number", bases->count);
  lw_json_set_text(entry, "at", at);
  lw_json_set_text(entry, "set", set ? set->factor_set : "");
  if (s->people_down_kn_per_m > 0.0)
    lw_json_set_double(entry, "people_down_kn_per_m", people_down(&by->body));
  if (s->name == LW_SITUATION_EARTHQUAKE) {
    lw_json_set_double(entry, "seismic_horizontal", by->load_case.ground.seismic.horizontal);
    lw_json_set_double(entry, "seismic_vertical", by->load_case.ground.seismic.vertical);
  }
  if (by->wedges > 0.0) lw_json_set_double(entry, "strengths_divided_by", by->wedges);
  lw_json_free_body(entry, bases->result, &by->body, joint);
  if (joint > 0 && bases->result->wall.section.shell_m > 0.0)
    lw_json_set_double(entry, "shell_m", bases->result->wall.section.shell_m);
}

/* Its number; 0: the one that is shown. */
static int number_of(lw_bases *bases, const lw_check *check, const lw_basis *by) {
  if (by->wedges <= 0.0 && same_sums(shown(bases, check), &by->body.contact)) return 0;
  for (int i = 0; i < bases->count; i++) {
    if (bases->base[i].at != check->at || bases->base[i].joint != check->joint) continue;
    if (!close(bases->base[i].divided, by->wedges)) continue;
    if (same_sums(&bases->base[i].contact, &by->body.contact)) return i + 1;
  }
  bases->base[bases->count].at = check->at;
  bases->base[bases->count].joint = check->joint;
  bases->base[bases->count].divided = by->wedges;
  bases->base[bases->count++].contact = by->body.contact;
  add_base(bases, check, by);
  return bases->count;
}

/* The ground in front as this check counts it, beside what holds by itself or off the push, or not at all. */
static void set_passive(json_t *object, const lw_check *check, const lw_basis *by, double ground) {
  double passive = by->on_passive * by->body.passive_kn_per_m, factor = by->wedges > 0.0 ? by->wedges : 1.0;
  double push = by->body.contact.horizontal_kn_per_m;
  bool beside = agrees(check->resistance, factor * (ground + passive)) && agrees(check->demand, push);
  bool off_push = !beside && agrees(check->demand, fmax(push - passive, 0.0)) && passive > 0.0;
  lw_json_set_double(object, "passive_kn_per_m", beside || off_push ? passive : 0.0);
  lw_json_set_flag(object, "passive_off_push", off_push);
}

static void set_sliding(json_t *entry, const lw_check *check, const lw_basis *by) {
  json_t *object = lw_json_object(entry, "holds_by");
  lw_json_set_double(object, "friction", by->friction);
  lw_json_set_double(object, "bond_kn_per_m", by->bond_kn_per_m);
  lw_json_set_double(object, "times", by->on_sliding);
  if (isfinite(by->ground_holds_kn_per_m))
    lw_json_set_double(object, "at_most_kn_per_m", by->ground_holds_kn_per_m);
  set_passive(object, check, by, ground_of(by));
}

/* The load case that is shown, without people. */
void lw_json_lighter(lw_bases *bases) {
  const lw_situation *s = bases->situation;
  lw_check before = {0};
  bool any = false;
  lw_load_case_name lighter = s->shown_in;
  lighter.people_down = false;
  if (s->people_down_kn_per_m <= 0.0) return;
  for (int i = 0; i < s->check_count; i++) {
    lw_check check = lw_situation_check(s, i);
    lw_basis by;
    bool same = any && before.at == check.at && before.joint == check.joint;
    before = check;
    any = true;
    check.made_in = lighter;
    if (!same && check.demand.known && lw_again_basis(bases->result, s, &check, &by))
      (void)number_of(bases, &check, &by);
  }
}

void lw_json_basis(lw_bases *bases, json_t *entry, const lw_check *check) {
  lw_basis by;
  if (!check->demand.known || !lw_again_basis(bases->result, bases->situation, check, &by)) return;
  lw_json_set_count(entry, "load_case", number_of(bases, check, &by));
  if (lw_check_about_of(check->kind)->needs == LW_FACTOR_SLIDING) set_sliding(entry, check, &by);
}
