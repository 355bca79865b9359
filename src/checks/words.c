/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/checks.h>

/* What a check and a situation are called when one speaks to people. */

static void words_of_base(const lw_check *check, char *out, size_t size) {
  static const char *const words[] = {[LW_CHECK_SLIDING] = "sliding on its base",
                                      [LW_CHECK_OVERTURNING] = "tipping over its toe",
                                      [LW_CHECK_COMPRESSION] = "pressed share of base",
                                      [LW_CHECK_BEARING] = "ground under the base",
                                      [LW_CHECK_TILTING] = "tipping over its toe",
                                      [LW_CHECK_SLIP] = "slip of wall and ground"};
  lw_print(out, size, "%s", words[check->kind]);
}

static void words_of_joint(const lw_check *check, char *out, size_t size) {
  static const char *const words[] = {[LW_CHECK_SLIDING] = "sliding on joint %d",
                                      [LW_CHECK_OVERTURNING] = "tipping at joint %d",
                                      [LW_CHECK_COMPRESSION] = "pressed share, joint %d",
                                      [LW_CHECK_BEARING] = "pressure in joint %d",
                                      [LW_CHECK_TILTING] = "tipping at joint %d",
                                      [LW_CHECK_SLIP] = "slip through joint %d"};
  lw_print(out, size, words[check->kind], check->joint);
}

void lw_check_words(const lw_check *check, char *out, size_t size) {
  bool slides = check->kind == LW_CHECK_SLIDING;
  switch (check->at) {
  case LW_AT_BASE: words_of_base(check, out, size); break;
  case LW_AT_PAD: lw_print(out, size, "%s", slides ? "sliding under the pad" : "ground under the pad"); break;
  case LW_AT_JOINT: words_of_joint(check, out, size); break;
  case LW_AT_GROUND:
    lw_print(out, size, slides ? "bed sliding downhill" : "slip of wall and ground");
    break;
  case LW_AT_CAP: lw_print(out, size, "%s", slides ? "cap sliding" : "cap tipping"); break;
  }
}

const char *lw_situation_short(lw_situation_name name) {
  static const char *const words[] = {[LW_SITUATION_DRAINED] = "as built",
                                      [LW_SITUATION_OUTLET_BLOCKED] = "outlet blocked",
                                      [LW_SITUATION_STORM] = "storm",
                                      [LW_SITUATION_PEOPLE_SITTING] = "people sitting",
                                      [LW_SITUATION_PEOPLE_LEANING] = "people leaning",
                                      [LW_SITUATION_EARTHQUAKE] = "an earthquake",
                                      [LW_SITUATION_TRENCH] = "trench in front",
                                      [LW_SITUATION_WIND] = "wind on fence"};
  return (size_t)name < LW_SITUATION_COUNT ? words[name] : "";
}
