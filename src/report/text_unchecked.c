/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

static void say(void *context, const lw_unchecked *unchecked) {
  lw_page_say(context, "  - ", unchecked->text);
}

void lw_text_unchecked(const lw_page *page, const lw_result *result) {
  lw_page given = *page;
  lw_page_heading(page, "Not checked");
  lw_unchecked_each(result, say, &given);
}

/* Several changes, each alone: none of them is a way round the engineer. */
void lw_text_remedies(const lw_page *page, const lw_result *result) {
  if (result->remedy_count > 0) {
    lw_page_heading(page, "What would make it stand, each alone");
    for (int i = 0; i < result->remedy_count; i++) {
      lw_page_say(page, result->remedy[i].enough ? "  + " : "  - ", result->remedy[i].text);
    }
  }
  if (result->asking_count == 0) return;
  const lw_asking *a = &result->asking[0];
  lw_page_heading(page, "The one answer worth finding out");
  lw_page_sayf(page, "  ", "%s Taken meanwhile: %s = %s. Were it %s: %s; %s.", a->question, a->item, a->assumed,
               a->favourable,
               a->stands_then == LW_HOLDS         ? "every deciding check would hold"
               : a->stands_then == LW_FALLS_SHORT ? "it would still fall short"
                                                  : "it could still not be shown to stand",
               a->who_then == LW_WHO_ENGINEER  ? "an engineer would still design it"
               : a->who_then == LW_WHO_COUNCIL ? "the council would be asked"
                                               : "it would be below the limit on file");
}
