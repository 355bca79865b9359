/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "verdict.h"

#include "grade.h"
#include "parts.h"

#include <stddef.h>
#include <string.h>

/* Gravest first: 5 engineer, 4 does not stand or cannot be shown to, 3 council, 0. */
static int exit_of(const lw_verdict *v) {
  if (v->who == LW_WHO_ENGINEER) return 5;
  if (v->stands != LW_HOLDS) return 4;
  return v->who == LW_WHO_COUNCIL ? 3 : 0;
}

/* Heights before conditions before distances: of several reasons for the same call the first is the
 * headline's. */
static void who(const lw_facts *f, lw_reaching *to) {
  lw_verdict_limits(f, to);
  lw_verdict_conditions(f, to);
  lw_verdict_clearances(f, to);
}

/* The lists are filled up to their counts: with the sentences of all reasons cleared as well a garden bed's
 * row is about 4 % dearer. */
static void start(const lw_facts *f, const lw_reaching *to) {
  lw_verdict *verdict = to->verdict;
  memset(verdict, 0, offsetof(lw_verdict, headline));
  verdict->who = LW_WHO_BUILDER;
  verdict->place_known = f->place_known;
  verdict->total_to_pad_m = f->to_pad_m;
  memcpy(verdict->height_m, f->height_m, sizeof verdict->height_m);
  to->reasons->count = to->reasons->caution_count = 0;
}

void lw_verdict_reach(lw_result *result, lw_detail detail) {
  lw_facts facts;
  lw_reasons of_headline;
  lw_verdict *verdict = &result->verdict;
  bool everything = detail >= LW_DETAIL_EVERYTHING;
  lw_reaching to = {detail, verdict, everything ? &verdict->reasons : &of_headline, &result->looks};
  lw_facts_gather(result, &facts);
  start(&facts, &to);
  lw_verdict_what(&facts, &to);
  lw_verdict_reason *stands = lw_verdict_stands(&facts, &result->situations, &to);
  lw_verdict_choose_grade(result->tables, &result->looks, verdict);
  who(&facts, &to);
  to.reasons->told = stands ? (int)(stands - to.reasons->reason) : -1;
  if (stands) lw_verdict_tell_stands(&result->situations, verdict, stands);
  if (everything) lw_verdict_cautions(&facts, &to);
  lw_verdict_headline(&facts, &result->situations, &to);
  verdict->exit_status = exit_of(verdict);
}

bool lw_verdict_governing(const lw_result *result, lw_check *check) {
  const lw_verdict *v = &result->verdict;
  if (!v->governed) return false;
  *check = lw_situation_check(&result->situations.situation[v->governing_situation], v->governing_check);
  return true;
}
