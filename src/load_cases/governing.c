/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "governing.h"

#include "balance/weigh.h"

/* Which check of all situations governs, and what it says. */

/* A fault of the program governs wherever it shows: who computes one thing wrong is not believed another. */
static bool weighs(const lw_situation *at, const lw_kept_check *kept) {
  if (kept->holds == LW_CANNOT_SHOW && lw_reason_is_faulty((lw_reason)kept->reason)) return true;
  return at->decides && (kept->marks & LW_KEPT_COUNTS) &&
         ((kept->marks & LW_KEPT_RATIO) || kept->holds != LW_HOLDS);
}

/* Of two that hold, each with a ratio, the one with more to spare is not looked at whole. */
static bool outdone(const lw_kept_check *kept, const lw_check *worst) {
  bool hold = kept->holds == LW_HOLDS && worst->holds == LW_HOLDS;
  return hold && kept->has / kept->needs > worst->ratio.value;
}

bool lw_situations_governing(const lw_situations *situations, int *situation, int *check) {
  lw_check worst = {0};
  bool any = false;
  for (int s = 0; s < situations->count; s++) {
    const lw_situation *at = &situations->situation[s];
    for (int i = 0; i < at->check_count; i++) {
      if (!weighs(at, &at->kept[i]) || (any && outdone(&at->kept[i], &worst))) continue;
      lw_check whole = lw_situation_check(at, i);
      if (any && !lw_check_graver(&whole, &worst)) continue;
      worst = whole;
      any = true;
      *situation = s;
      *check = i;
    }
  }
  return any;
}

static bool anything_counts(const lw_situations *situations) {
  for (int s = 0; s < situations->count; s++) {
    const lw_situation *at = &situations->situation[s];
    for (int i = 0; at->decides && i < at->check_count; i++)
      if (at->kept[i].marks & LW_KEPT_COUNTS) return true;
  }
  return false;
}

void lw_situations_weigh(lw_situations *all) {
  all->governed = lw_situations_governing(all, &all->governing_situation, &all->governing_check);
  if (all->governed)
    all->stands = (lw_holds)all->situation[all->governing_situation].kept[all->governing_check].holds;
  else
    all->stands = anything_counts(all) ? LW_HOLDS : LW_CANNOT_SHOW;
}
