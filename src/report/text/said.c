/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "said.h"

#include <math.h>
#include <string.h>

/* What every form of report says of a check in the same words. */

void lw_check_outcome(const lw_check *check, char *out, size_t size) {
  double percent = check->ratio.known ? 100.0 * (1.0 - check->ratio.value) : 100.0;
  if (!check->counts) {
    lw_print(out, size, "%s", check->has.known ? "no requirement" : "not checked");
  } else if (check->holds == LW_HOLDS) {
    lw_print(out, size, "holds");
  } else if (check->holds == LW_CANNOT_SHOW) {
    lw_print(out, size, "cannot be shown");
  } else if (check->reason == LW_REASON_OUTSIDE_BASE) {
    lw_print(out, size, "falls short: tips");
  } else {
    lw_print(out, size, percent < 1.0 ? "falls short by %.1f %%" : "falls short by %.0f %%",
             percent < 0.1 ? 0.1 : percent);
  }
}

bool lw_result_would_move(const lw_result *result) {
  return result->verdict.grade == LW_GRADE_WOULD_MOVE || result->verdict.grade == LW_GRADE_MAY_MOVE;
}

lw_seen lw_check_seen(const lw_check *check, lw_situation_kind kind) {
  if (!check->by) return LW_SEEN;
  int at = kind == LW_WHAT_IF ? LW_UNUSUAL : (int)kind; /* as lw_factor_value reads the row */
  if (isnan(check->by->needs[at])) at = LW_USUAL;
  return check->by->needs_seen[at];
}

const lw_situation *lw_result_told(const lw_result *result, lw_check *check) {
  const lw_verdict *v = &result->verdict;
  if (!v->governed) return NULL;
  const lw_situation *situation = &result->situations.situation[v->told_situation];
  *check = lw_situation_check(situation, v->told_check);
  return situation;
}

static bool is_limit(const lw_verdict_reason *r) {
  return strncmp(r->slug, "limit-", 6) == 0;
}

bool lw_reason_said_before(const lw_verdict *v, int index) {
  for (int i = 0; i < index && is_limit(&v->reasons.reason[index]); i++) {
    const lw_verdict_reason *r = &v->reasons.reason[i];
    if (is_limit(r) && r->who == v->reasons.reason[index].who) return true;
  }
  return false;
}
