/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "who.h"

#include <lowwall/base.h>

/* Whatever the sums say: those stand below it. */
void lw_precheck_who(const lw_verdict *verdict, char *out, size_t size) {
  static const char *const WORDS[] = {
      [LW_WHO_BUILDER] = "nobody beyond who builds it, by the limits on file; confirm with the authority",
      [LW_WHO_COUNCIL] = "the council, before work starts",
      [LW_WHO_ENGINEER] = "a licensed engineer, before work starts"};
  bool idle = verdict->who == LW_WHO_BUILDER && verdict->stands != LW_HOLDS;
  bool rests = verdict->who != LW_WHO_BUILDER && !verdict->called_for_certain && verdict->rests_on[0];
  lw_print(out, size, "%s%s%s%s", WORDS[verdict->who],
           idle ? "; but it is not shown to stand, and is not to be built so" : "",
           rests ? "; it rests on what is not known: " : "", rests ? verdict->rests_on : "");
}
