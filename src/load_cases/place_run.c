/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place_run.h"

#include <assert.h>
#include <math.h>

#include "standards/factors.h"
#include "kept.h"
#include "kinds.h"
#include "sliding_wedges.h"

/* What is in hand at one place: a load case, which of the situation's it is, its free body, the next
 * check. */
typedef struct in_hand {
  lw_place_run *run;
  const lw_place *place;
  int situation;
  lw_load_case load_case;
  lw_load_case_name name;
  lw_check_context context;
  int next;
} in_hand;

/* Of load cases that differ by rounding alone the first is kept, which has every load. */
static bool clearly_graver(const lw_check *a, const lw_check *b) {
  bool level = a->has.known && b->has.known && a->made_in.set == b->made_in.set &&
               fabs(a->has.value - b->has.value) <= 1e-13 * fabs(b->has.value);
  return !level && lw_check_graver(a, b);
}

/* Every load case has the same checks in the same order; those of a set before are kept already. */
static bool there_already(const in_hand *h, lw_check *there) {
  const lw_situation *s = &h->run->situation[h->situation];
  lw_gathered *gathered = &h->run->gathered[h->situation];
  int number = h->run->first + h->next;
  if (h->next < gathered->count) return true;
  gathered->count++;
  if (number >= s->check_count) return false;
  *there = lw_situation_check(s, number);
  return true;
}

static void keep_graver(in_hand *h, const lw_check *check) {
  lw_check *there = &h->run->gathered[h->situation].check[h->next];
  bool known = there_already(h, there);
  h->next++;
  assert(!known || (there->kind == check->kind && there->at == check->at && there->joint == check->joint));
  if (!known || clearly_graver(check, there)) *there = *check;
}

static void keep(in_hand *h, lw_check *check) {
  check->factored = h->load_case.actions.factors.factored;
  h->name.divided_by = check->made_in.divided_by;
  check->made_in = h->name;
  lw_factor_set_restrain(h->run->factor_set, check);
  keep_graver(h, check);
  if (!h->run->gravest) return;
  lw_gravest *gravest = &h->run->gravest[h->situation];
  if (gravest->any && !lw_check_graver(check, &gravest->check)) return;
  *gravest = (lw_gravest){true, *check, h->load_case.actions.factors};
}

/* A bonded cap is held by a glue nobody tested: that is said, and does not count either way. */
static void rely_on_bond(const in_hand *h, lw_check *check) {
  if (h->place->at != LW_AT_CAP || !h->run->wall->section.cap_bonded) return;
  lw_check_not_shown(check, LW_REASON_RELIES_ON_BOND);
  check->counts = false;
}

static lw_check make(const lw_check_context *context, const lw_free_body *body, const lw_check_row *row) {
  return row->of_strengths ? lw_check_of_strengths(row->make, context, body) : row->make(context, body, NULL);
}

static void check_all(in_hand *h, const lw_free_body *body) {
  h->next = 0;
  for (int i = 0; i < LW_CHECK_KIND_COUNT; i++) {
    const lw_check_row *row = lw_check_row_of((lw_check_kind)i);
    if (!row->about.at[h->place->at] || (row->asked && !row->asked(h->run->wall))) continue;
    lw_check check = make(&h->context, body, row);
    rely_on_bond(h, &check);
    keep(h, &check);
  }
  h->run->checks = h->next;
}

static void check_with(in_hand *h, const lw_push *push, bool people_down, bool cap_load) {
  double down = h->load_case.actions.people_down_kn_per_m;
  lw_free_body body;
  h->name.people_down = people_down;
  h->name.cap_load = h->load_case.actions.cap_load = cap_load;
  if (!people_down) h->load_case.actions.people_down_kn_per_m = 0.0;
  lw_place_load(h->run->wall, &h->load_case, h->place, push, &body, NULL);
  check_all(h, &body);
  h->load_case.actions.people_down_kn_per_m = down;
}

/* The downward part of people and the load on a cap may be missing while the rest is there. */
static void check_variants(in_hand *h, const lw_push *push) {
  const lw_site *site = &h->run->wall->site;
  bool people = h->load_case.actions.people_down_kn_per_m > 0.0, cap_load = false;
  for (int i = 0; i < site->load_count; i++)
    cap_load = cap_load || (site->load[i].kind == LW_LOAD_CAP && site->load[i].force > 0.0);
  check_with(h, push, true, true);
  if (people) check_with(h, push, false, true);
  if (!cap_load) return;
  check_with(h, push, false, false);
  if (people) check_with(h, push, true, false);
}

/* Every source of load favourable and unfavourable, as far as that makes a difference. */
static void check_leanings(in_hand *h, const lw_push *push) {
  lw_factors factors[LW_LEANINGS];
  int count = lw_factor_set_on_actions(h->run->factor_set, &h->load_case, h->run->wall, factors);
  for (int i = 0; i < count; i++) {
    h->name.leaning = (signed char)i;
    h->load_case.actions.factors = factors[i];
    check_variants(h, push);
  }
}

static in_hand take(lw_place_run *run, const lw_place *place, const lw_listed_case *one) {
  return (in_hand){
      .run = run,
      .place = place,
      .situation = one->situation,
      .load_case = one->load_case,
      .name = {.set = run->factor_set->any, .way = one->way, .people_down = true, .cap_load = true}};
}

static void begin(lw_place_run *run) {
  for (int s = 0; s < run->situation_count; s++) run->gathered[s].count = 0;
}

static void end(lw_place_run *run) {
  for (int s = 0; s < run->situation_count; s++) {
    lw_situation *situation = &run->situation[s];
    const lw_gathered *gathered = &run->gathered[s];
    for (int i = 0; i < gathered->count; i++) {
      int number = run->first + i;
      if (number == situation->check_count)
        lw_situation_keep(situation, &gathered->check[i]);
      else
        lw_check_keep(&gathered->check[i], &situation->kept[number]);
    }
  }
  run->first += run->checks;
}

void lw_place_run_at(lw_place_run *run, const lw_place *place) {
  lw_push push;
  int found = 0;
  begin(run);
  for (int i = 0; i < run->cases->count; i++) {
    const lw_listed_case *one = &run->cases->at[i];
    in_hand h = take(run, place, one);
    h.context = (lw_check_context){run->wall, run->factor_set, &h.load_case, place};
    if (!one->same_push) {
      if (run->first == 0 && i > 0) run->searched[i] = run->searched[found];
      found = i;
      lw_push_find(run->wall, &one->load_case.ground, &place->stack, &run->searched[i], &push, NULL);
    }
    check_leanings(&h, &push);
  }
  end(run);
}

void lw_place_run_unknown(lw_place_run *run) {
  const lw_free_body nothing = {.status = LW_NO_SOLUTION, .reason = LW_REASON_NO_DEPTH};
  const lw_place base = {LW_AT_BASE, 0, {&run->wall->section, 0.0}};
  begin(run);
  for (int i = 0; i < run->cases->count; i++) {
    in_hand h = take(run, &base, &run->cases->at[i]);
    h.context = (lw_check_context){run->wall, run->factor_set, &h.load_case, &base};
    check_all(&h, &nothing);
  }
  end(run);
}
