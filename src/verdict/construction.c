/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

/* What the study of building it adds to the reasons. It changes no answer: plant can keep away, and when the
 * wall stands it is over. */

void lw_verdict_construction(const lw_construction *construction, lw_units units, lw_verdict *verdict) {
  lw_reaching to = {LW_DETAIL_EVERYTHING, verdict, &verdict->reasons, NULL};
  char text[480], words[48], keep[80] = "";
  const lw_check *check = &construction->at_distance;
  if (!construction->moves) return;
  lw_check_words(check, words, sizeof words);
  if (construction->stand_off.keep_m.known)
    lw_print(keep, sizeof keep, " Keep it %s away.",
             lw_metres(units, construction->stand_off.keep_m.value, 2).text);
  lw_print(text, sizeof text,
           "While it is built the newest course %s: with the %s at %s, %s has %.2f and needs %.2f.%s",
           check->has.value < 1.0 ? "moves" : "has less margin than asked",
           construction->plant.name[0] ? construction->plant.name : "plant",
           lw_metres(units, construction->distance_m.value, 2).text, words, check->has.value,
           check->needs.value, keep);
  lw_reasons_add(&to,
                 &(lw_because){.answer = LW_ANSWER_STANDS,
                               .origin = LW_GIVEN,
                               .slug = "moves-while-built",
                               .source = "[INGOLD-1979 29(3)]"},
                 text);
}
