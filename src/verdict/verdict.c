/* SPDX-License-Identifier: GPL-3.0-or-later */
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
static void who(const lw_facts *f, lw_verdict *v) {
  lw_verdict_limits(f, v);
  lw_verdict_conditions(f, v);
  lw_verdict_clearances(f, v);
}

void lw_verdict_reach(const lw_case *c, const lw_tables *tables, const lw_wall *wall,
                      const lw_situations *situations, lw_detail detail, lw_verdict *verdict) {
  lw_facts facts;
  lw_facts_gather(c, tables, wall, &facts);
  /* The lists are filled up to their counts. */
  memset(verdict, 0, offsetof(lw_verdict, reason));
  verdict->who = LW_WHO_BUILDER;
  verdict->headline_only = detail < LW_DETAIL_EVERYTHING;
  verdict->place_known = facts.place_known;
  verdict->total_to_pad_m = facts.to_pad_m;
  memcpy(verdict->height_m, facts.height_m, sizeof verdict->height_m);
  lw_verdict_what(&facts, verdict);
  lw_verdict_reason *stands = lw_verdict_stands(&facts, situations, verdict);
  who(&facts, verdict);
  verdict->told_reason = stands ? (int)(stands - verdict->reason) : -1;
  if (stands) lw_verdict_tell_stands(situations, verdict, stands);
  if (detail >= LW_DETAIL_EVERYTHING) lw_verdict_cautions(&facts, verdict);
  lw_verdict_headline(&facts, verdict);
  verdict->exit_status = exit_of(verdict);
}
