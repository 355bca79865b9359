/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "telling.h"

#include "load_cases/kinds.h"
#include "parts.h"

/* Nothing is said twice: what a check has and needs stands for how much it lacks. */

static const char *stood_on(const lw_check *check) {
  if (check->at == LW_AT_PAD) return "pad";
  return check->at == LW_AT_JOINT || check->at == LW_AT_CAP ? "joint" : "base";
}

/* Where the resultant is outside the ratio is 0 whatever the numbers say: some would mislead. */
static bool numbers_tell(const lw_check *check) {
  if (!check->has.known || !check->ratio.known) return false;
  lw_number times = lw_check_times(check);
  bool lost = times.known && times.value > 0.0 && times.value < 1.0;
  return check->reason != LW_REASON_OUTSIDE_BASE || lost;
}

/* What there is to say of it between its name and its situation. */
static void has_words(const lw_check *check, char *out, size_t size) {
  if (check->holds == LW_CANNOT_SHOW)
    lw_print(out, size, "cannot be shown, for %s", lw_reason_sentence(check->reason));
  else if (numbers_tell(check))
    lw_print(out, size, "has %s and needs %s", lw_two_decimals(check->has.value).text,
             lw_two_decimals(check->needs.known ? check->needs.value : 1.0).text);
  else if (check->reason == LW_REASON_OUTSIDE_BASE)
    lw_print(out, size, "fails, for push and weight together come down outside the %s", stood_on(check));
  else
    lw_print(out, size, "fails, for %s", lw_reason_sentence(check->reason));
}

/* It holds of the whole wall in every case: neither check nor case explains it. */
static bool is_of_wall(const lw_check *check) {
  static const lw_reason OF_WALL[] = {LW_REASON_NO_DEPTH, LW_REASON_ONE_WALL, LW_REASON_NOT_FOR_DECISIONS,
                                      LW_REASON_PROPOSED_FACTORS, LW_REASON_PART_OF_FACTOR_SET};
  for (size_t i = 0; check->holds == LW_CANNOT_SHOW && i < sizeof OF_WALL / sizeof *OF_WALL; i++)
    if (check->reason == OF_WALL[i]) return true;
  return false;
}

void lw_telling_check(const lw_check *check, const lw_situation *situation, char *out, size_t size) {
  char words[48], has[160];
  if (is_of_wall(check)) {
    lw_print(out, size, "%s", lw_reason_sentence(check->reason));
    return;
  }
  lw_check_words(check, words, sizeof words);
  has_words(check, has, sizeof has);
  lw_print(out, size, "%s %s (%s)", words, has, lw_situation_sentence(situation->name));
}

void lw_telling_name(const lw_check *check, const lw_situation *situation, char *out, size_t size) {
  char words[48];
  lw_check_words(check, words, sizeof words);
  lw_print(out, size, "%s (%s)", words, lw_situation_sentence(situation->name));
}

/* What a ratio below one means to people; the share in compression and an allowable pressure have margin in
 * them. */
const char *lw_telling_meaning(const lw_check *check) {
  const char *below_one = lw_check_about_of(check->kind)->below_one;
  lw_number times = lw_check_times(check);
  bool below = times.known && times.value < 1.0;
  if (check->reason == LW_REASON_OUTSIDE_BASE)
    return check->factored ? "by its design values it would tip" : "it would tip";
  if (check->factored && below) return "it does not stand by the design values, which hold the margin";
  if (below) return below_one;
  return times.known && check->has.value < 1.0 ? "the ground is pressed harder than it may be"
                                               : "less margin than asked";
}
