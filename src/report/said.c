/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

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

/* A share of the base, and a value that is allowed rather than one that breaks the ground, say nothing of
 * movement. */
static bool measures_movement(const lw_check *check) {
  bool allowed = check->by && strcmp(check->by->quantity, "bearing-presumptive") == 0;
  return check->kind != LW_CHECK_COMPRESSION && !(check->kind == LW_CHECK_BEARING && allowed);
}

bool lw_check_would_move(const lw_check *check) {
  if (!check->counts || check->holds != LW_FALLS_SHORT) return false;
  if (check->reason == LW_REASON_OUTSIDE_BASE) return true;
  /* Between design values there is margin on both sides. */
  return measures_movement(check) && !check->factored && check->has.known && check->has.value < 1.0;
}

bool lw_result_would_move(const lw_result *result) {
  for (int i = 0; i < result->situations.count; i++) {
    const lw_situation *s = &result->situations.situation[i];
    for (int k = 0; s->decides && k < s->check_count; k++) {
      if (lw_check_would_move(&s->check[k])) return true;
    }
  }
  return false;
}

lw_seen lw_check_seen(const lw_check *check, lw_situation_kind kind) {
  if (!check->by) return LW_SEEN;
  int at = kind == LW_WHAT_IF ? LW_UNUSUAL : (int)kind;  /* as lw_format_value reads the row */
  if (isnan(check->by->needs[at])) at = LW_USUAL;
  return check->by->needs_seen[at];
}

const lw_check *lw_result_governing(const lw_result *result, const lw_situation **situation) {
  const lw_verdict *v = &result->verdict;
  if (!v->governed) return NULL;
  const lw_situation *s = &result->situations.situation[v->governing_situation];
  if (situation) *situation = s;
  return &s->check[v->governing_check];
}
