/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "looks.h"

#include "load_cases/least.h"
#include "load_cases/situations.h"
#include "once.h"
#include "standards/factors.h"
#include "verdict/verdict.h"
#include "wall/wall.h"

/* The second look at a wall. */

/* Under partial factors nothing is compared with 1 as it is: the looks are then of the project's own set. */
static const char WITHOUT_FACTORS[] = "lowwall";

bool lw_looks_bare(const lw_result *result) {
  lw_factor_set_family family;
  lw_factor_set_read(result->tables, result->wall.factor_set, &family);
  for (int i = 0; i < family.count; i++)
    for (int kind = LW_USUAL; kind <= LW_EXTREME; kind++)
      if (lw_factor_set_is_partial(&family.set[i], (lw_situation_kind)kind)) return true;
  return false;
}

bool lw_looks_complete(lw_case *c, lw_look look, const lw_tables *tables) {
  lw_faults faults = {.count = 0};
  c->look = look;
  c->complete = false;
  return lw_case_complete(tables, c, &faults) == LW_OK;
}

/* The case as it is looked at beside the one that decides. gives whether it could be completed */
static bool change(lw_case *c, lw_look look, bool bare, const lw_tables *tables) {
  if (bare) lw_print(c->method.factor_set.text, sizeof c->method.factor_set.text, "%s", WITHOUT_FACTORS);
  return lw_looks_complete(c, look, tables);
}

/* In `to`, whose case is there. Only the least is asked for, and from LW_DETAIL_CHECKS on each check. */
static void run(lw_result *to, const lw_tables *tables, lw_detail detail) {
  lw_wall_build(&to->given, tables, &to->wall);
  if (detail > LW_DETAIL_VERDICT)
    lw_situations_run(&to->wall, tables, detail, &to->situations);
  else
    lw_situations_run_least(&to->wall, tables, &to->situations);
}

static void note(const lw_situation *from, lw_likely_situation *to) {
  to->name = from->name;
  to->check_count = from->check_count;
  for (int i = 0; i < from->check_count; i++) {
    const lw_kept_check *kept = &from->kept[i];
    bool known = (kept->marks & LW_KEPT_HAS) != 0;
    to->check[i] = (lw_likely_check){known ? kept->has : 0.0, kept->kind, kept->at, kept->joint, known};
  }
}

static bool is_same(const lw_likely_check *one, const lw_check *check) {
  return one->kind == check->kind && one->at == check->at && one->joint == check->joint;
}

static void note_all(const lw_situations *situations, lw_looks *looks) {
  looks->situation_count = situations->count;
  for (int i = 0; i < situations->count; i++) note(&situations->situation[i], &looks->situation[i]);
}

/* Both looks where partial factors hide what the wall has, else the likely one, in the place of `to`. */
static void look(const lw_case *c, const lw_tables *tables, bool bare, lw_detail detail, lw_result *to,
                 lw_looks *looks) {
  looks->bare = bare;
  looks->situation_count = 0;
  looks->looked = false;
  to->given = *c;
  if (bare) {
    if (!change(&to->given, LW_LOOK_CAUTIOUS, true, tables)) return;
    run(to, tables, detail);
    looks->cautious = lw_situations_least(&to->situations);
    to->given = *c;
  }
  if (!change(&to->given, LW_LOOK_LIKELY, bare, tables)) return;
  run(to, tables, detail);
  looks->likely = lw_situations_least(&to->situations);
  looks->looked = true;
  if (detail >= LW_DETAIL_CHECKS) note_all(&to->situations, looks);
}

void lw_looks_before(lw_result *result) {
  const lw_case given = result->given;
  if (given.look == LW_LOOK_LIKELY) return;
  look(&given, result->tables, lw_looks_bare(result), LW_DETAIL_CHECKS, result, &result->looks);
  result->given = given;
  lw_wall_build(&result->given, result->tables, &result->wall);
}

/* gives whether the check is among them; all of its situation are then noted */
static bool note_where(const lw_situation *situation, const lw_check *check, const lw_situations *likely,
                       lw_looks *looks) {
  for (int i = 0; i < likely->count; i++) {
    if (likely->situation[i].name != situation->name) continue;
    note(&likely->situation[i], &looks->situation[0]);
    looks->situation_count = 1;
    for (int k = 0; k < looks->situation[0].check_count; k++)
      if (is_same(&looks->situation[0].check[k], check)) return true;
  }
  return false;
}

/* The check that governs is named beside the least. A slip that governs by cautious values may be none that
 * the least by likely ones was searched for: then all are. */
static void note_governing(lw_result *result, lw_result *scratch) {
  const lw_situations *all = &result->situations;
  if (!result->looks.looked || !all->governed) return;
  const lw_situation *situation = &all->situation[all->governing_situation];
  lw_check check = lw_situation_check(situation, all->governing_check);
  if (note_where(situation, &check, &scratch->situations, &result->looks) || check.at != LW_AT_GROUND) return;
  lw_situations_run(&scratch->wall, result->tables, LW_DETAIL_CHECKS, &scratch->situations);
  note_where(situation, &check, &scratch->situations, &result->looks);
}

void lw_looks_take(lw_result *result, lw_result *scratch) {
  run(scratch, result->tables, LW_DETAIL_VERDICT);
  result->looks.bare = false;
  result->looks.situation_count = 0;
  result->looks.likely = lw_situations_least(&scratch->situations);
  result->looks.looked = true;
  result->looks.cautious = lw_situations_least(&result->situations);
  note_governing(result, scratch);
  lw_verdict_reach(result, result->detail);
}

void lw_looks_find(lw_result *result, lw_result *scratch) {
  if (result->given.look == LW_LOOK_LIKELY || result->detail >= LW_DETAIL_EVERYTHING) return;
  look(&result->given, result->tables, lw_looks_bare(result), LW_DETAIL_VERDICT, scratch, &result->looks);
  if (!result->looks.bare) result->looks.cautious = lw_situations_least(&result->situations);
  note_governing(result, scratch);
  lw_verdict_reach(result, result->detail);
}

lw_number lw_looks_has(const lw_result *result, const lw_situation *situation, const lw_check *check) {
  const lw_looks *looks = &result->looks;
  for (int i = 0; looks->looked && i < looks->situation_count; i++) {
    const lw_likely_situation *s = &looks->situation[i];
    for (int k = 0; s->name == situation->name && k < s->check_count; k++) {
      const lw_likely_check *one = &s->check[k];
      if (is_same(one, check)) return (lw_number){one->has, one->known};
    }
  }
  return (lw_number){0};
}
