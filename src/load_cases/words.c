/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/checks.h>

#include "kinds.h"

/* What a check and a situation are called when one speaks to people. */

void lw_check_words(const lw_check *check, char *out, size_t size) {
  const char *words = lw_check_about_of(check->kind)->at[check->at];
  lw_print(out, size, words ? words : "", check->joint);
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
  return words[name];
}
