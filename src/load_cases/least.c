/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "least.h"

#include "kinds.h"

static void take(const lw_check *check, lw_situation_name situation, lw_least *least) {
  least->outside = least->outside || check->reason == LW_REASON_OUTSIDE_BASE;
  if (!lw_check_tells_of_movement(check)) return;
  if (check->holds == LW_CANNOT_SHOW && !least->not_shown) {
    least->not_shown = true;
    least->reason = check->reason;
  }
  if (!check->has.known || (least->has.known && check->has.value >= least->has.value)) return;
  least->has = check->has;
  least->situation = situation;
  least->kind = check->kind;
  least->at = check->at;
  least->joint = check->joint;
}

lw_least lw_situations_least(const lw_situations *situations) {
  lw_least least = {.has = {0}};
  for (int i = 0; i < situations->count; i++) {
    const lw_situation *s = &situations->situation[i];
    for (int k = 0; s->decides && k < s->check_count; k++) {
      if (!(s->kept[k].marks & LW_KEPT_COUNTS)) continue;
      lw_check check = lw_situation_check(s, k);
      take(&check, s->name, &least);
    }
  }
  return least;
}
