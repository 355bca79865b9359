/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "grade.h"

#include <string.h>

#include "load_cases/kinds.h"
#include "moves.h"
#include "reasons.h"
#include "tables/known.h"

/* Five grades of standing, from both looks. */

static bool below(const lw_least *least, double than) {
  return least->outside || (least->has.known && least->has.value < than) ||
         (least->pressed.known && least->pressed.value < than);
}

/* Where the likely look cannot help it is as grave as it may be. What cannot be shown to stand is not said to
 * stand by likely values: that would be all that people read. */
lw_grade lw_verdict_grade(const lw_graded *of) {
  bool moves_in_both = of->moves && (!of->looked || of->likely->not_shown || below(of->likely, of->margin));
  if (of->stands == LW_HOLDS) return LW_GRADE_HOLDS;
  if (moves_in_both) return LW_GRADE_WOULD_MOVE;
  if (of->stands == LW_CANNOT_SHOW) return LW_GRADE_CANNOT_BE_SHOWN;
  return of->moves ? LW_GRADE_MAY_MOVE : LW_GRADE_LESS_MARGIN;
}

void lw_verdict_choose_grade(const lw_tables *tables, const lw_looks *looks, lw_verdict *verdict) {
  bool bare = looks->looked && looks->bare;
  verdict->grade = lw_verdict_grade(
      &(lw_graded){.stands = verdict->stands,
                   .moves = bare ? below(&looks->cautious, 1.0) : verdict->falls == LW_SHORT_MOVES,
                   .looked = looks->looked,
                   .likely = &looks->likely,
                   .margin = lw_known_value(tables, LW_THRESHOLD_LIKELY_MARGIN)});
}

/* A share in compression is none of what just holds a wall: where it is lost the wall tips, and how far from
 * that it is by likely values the check of tipping has. */
static lw_least likely_of(const lw_result *result, const lw_situation *situation, const lw_check *check,
                          double likely) {
  lw_check other = {.at = check->at, .joint = check->joint};
  double times = likely * lw_check_reserve(check);
  if (lw_check_tells_of_movement(check)) return (lw_least){.has = {times, true}};
  other.kind = check->at == LW_AT_JOINT ? LW_CHECK_TILTING : LW_CHECK_OVERTURNING;
  return (lw_least){.outside = likely <= 0.0, .has = lw_looks_has(result, situation, &other)};
}

lw_grade lw_check_grade(const lw_result *result, const lw_situation *situation, const lw_check *check) {
  lw_number likely = lw_looks_has(result, situation, check);
  lw_least least = likely_of(result, situation, check, likely.value);
  if (!check->counts) return LW_GRADE_COUNT;
  return lw_verdict_grade(&(lw_graded){.stands = check->holds,
                                       .moves = lw_check_would_move(check),
                                       .looked = result->looks.looked && likely.known,
                                       .likely = &least,
                                       .margin = lw_known_value(result->tables, LW_THRESHOLD_LIKELY_MARGIN)});
}

/* "1.2", never a 1.0 that is less than 1, and never a 0.0. */
static const char *times(const lw_least *least, char *out, size_t size) {
  double value = least->has.value;
  if (value >= 9.95) return "more than 9";
  if (value < 0.01) return "less than 0.01";
  lw_print(out, size, "%s", lw_digits_of(value, value < 0.095 ? 2 : 1).text);
  if (value < 1.0 && strcmp(out, "1.0") == 0) lw_print(out, size, "%s", lw_digits_of(value, 2).text);
  return out;
}

const char *lw_looks_words(const lw_looks *looks, char *out, size_t size) {
  char usual[32], poor[32];
  out[0] = '\0';
  if (!looks->looked || !looks->likely.has.known || !looks->cautious.has.known) return out;
  /* It is not this that moves. */
  if (below(&looks->cautious, 1.0) && looks->cautious.has.value >= 1.0) return out;
  lw_print(out, size,
           "with soil and loads as they usually are it has %s times what just holds it; with poor but "
           "possible ones %s",
           times(&looks->likely, usual, sizeof usual), times(&looks->cautious, poor, sizeof poor));
  return out;
}
