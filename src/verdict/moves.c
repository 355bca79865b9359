/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "moves.h"

#include "load_cases/kinds.h"

/* Of checks that fall short the gravest is told: one that says the wall would move before one that only lacks
 * margin, though that may lack more of it. */

/* Between design values there is margin on both sides. */
bool lw_check_would_move(const lw_check *check) {
  return check->counts && !check->factored && check->holds == LW_FALLS_SHORT && lw_check_is_lost(check);
}

static lw_short short_of(const lw_check *check) {
  if (lw_check_would_move(check)) return LW_SHORT_MOVES;
  return check->factored && lw_check_is_lost(check) ? LW_SHORT_BY_DESIGN : LW_SHORT_OF_MARGIN;
}

/* What is left of what just holds it: of checks that move, what they ask beyond that is beside the point. */
static double left_of(const lw_check *check) {
  lw_number times = lw_check_times(check);
  return check->reason == LW_REASON_OUTSIDE_BASE || !times.known ? 0.0 : times.value;
}

static bool worse(const lw_check *a, const lw_check *b) {
  return left_of(a) < left_of(b);
}

bool lw_check_told_before(const lw_check *a, const lw_check *b) {
  bool moves = lw_check_would_move(a);
  if (moves != lw_check_would_move(b)) return moves;
  if (moves && (worse(a, b) || worse(b, a))) return worse(a, b);
  return lw_check_graver(a, b);
}

/* The first deciding check that cannot be shown. gives false where each can */
static bool find_not_shown(const lw_situations *situations, lw_verdict *v) {
  for (int i = 0; i < situations->count; i++) {
    const lw_situation *s = &situations->situation[i];
    for (int k = 0; s->decides && k < s->check_count; k++) {
      if (s->kept[k].holds != LW_CANNOT_SHOW || !(s->kept[k].marks & LW_KEPT_COUNTS)) continue;
      v->told_situation = i;
      v->told_check = k;
      return true;
    }
  }
  return false;
}

/* One that may slide or tip, for all that can be shown, does not stand with less margin than asked. */
static void look_beyond_margin(const lw_situations *situations, lw_verdict *v) {
  bool margin = v->stands == LW_FALLS_SHORT && v->falls == LW_SHORT_OF_MARGIN;
  if (margin && find_not_shown(situations, v)) v->stands = LW_CANNOT_SHOW;
}

void lw_verdict_choose_told(const lw_situations *situations, lw_verdict *v) {
  v->told_situation = v->governing_situation;
  v->told_check = v->governing_check;
  if (!v->governed || v->stands == LW_HOLDS) return;
  lw_check worst = lw_situation_check(&situations->situation[v->told_situation], v->told_check);
  v->falls = short_of(&worst);
  for (int i = 0; i < situations->count; i++) {
    const lw_situation *s = &situations->situation[i];
    for (int k = 0; s->decides && k < s->check_count; k++) {
      if (s->kept[k].holds != LW_FALLS_SHORT) continue;
      lw_check check = lw_situation_check(s, k);
      if (!lw_check_would_move(&check) || !lw_check_told_before(&check, &worst)) continue;
      worst = check;
      v->told_situation = i;
      v->told_check = k;
      v->falls = LW_SHORT_MOVES;
    }
  }
  look_beyond_margin(situations, v);
}
