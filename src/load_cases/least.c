/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "least.h"

#include "kinds.h"

static void take(const lw_check *check, lw_situation_name situation, lw_least *least) {
  least->outside = least->outside || check->reason == LW_REASON_OUTSIDE_BASE;
  if (!lw_check_tells_of_movement(check)) return;
  lw_number times = lw_check_times(check);
  if (lw_check_reserve(check) > 1.0) {
    bool least_pressed = times.known && (!least->pressed.known || times.value < least->pressed.value);
    if (least_pressed) least->pressed = times;
    return;
  }
  if (check->holds == LW_CANNOT_SHOW && !least->not_shown) {
    least->not_shown = true;
    least->reason = check->reason;
  }
  if (!times.known || (least->has.known && times.value >= least->has.value)) return;
  least->has = times;
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
