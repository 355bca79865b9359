/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

#include <string.h>

static void say(void *context, const lw_unchecked *unchecked) {
  lw_page_say(context, "  - ", unchecked->text);
}

void lw_text_unchecked(const lw_page *page, const lw_result *result) {
  lw_page given = *page;
  lw_page_heading(page, "Not checked");
  lw_unchecked_each(result, say, &given);
}

/* The engineer's last word stands in each remedy, so that none is quoted without it; here once is enough. */
static void remedy(const lw_page *page, const lw_remedy *r) {
  char text[sizeof r->text];
  lw_print(text, sizeof text, "%s", r->text);
  char *repeated = strstr(text, " The engineer decides");
  if (repeated) *repeated = '\0';
  lw_page_say(page, r->enough ? "  + " : "  - ", text);
}

static void remedies(const lw_page *page, const lw_result *result) {
  lw_page_heading(page, "What would make it stand, each alone (+ enough, - not enough)");
  for (int i = 0; i < result->remedy_count; i++) remedy(page, &result->remedy[i]);
  if (result->verdict.who == LW_WHO_ENGINEER)
    lw_page_say(page, "  ", "None of these is a way round the engineer, who decides all the same.");
}

static const char *stands_then(lw_holds stands) {
  if (stands == LW_HOLDS) return "every deciding check would hold";
  return stands == LW_FALLS_SHORT ? "it would still fall short" : "it could still not be shown to stand";
}

static const char *who_then(lw_who who) {
  if (who == LW_WHO_ENGINEER) return "an engineer would still design it";
  return who == LW_WHO_COUNCIL ? "the council would be asked" : "it would be below the limit on file";
}

void lw_text_remedies(const lw_page *page, const lw_result *result) {
  if (result->remedy_count > 0) remedies(page, result);
  if (result->asking_count == 0) return;
  const lw_asking *a = &result->asking[0];
  lw_page_heading(page, "The one answer most worth finding out");
  lw_page_sayf(page, "  ", "%s Taken meanwhile: %s = %s. Were it %s: %s; %s.", a->question, a->item,
               a->assumed, a->favourable, stands_then(a->stands_then), who_then(a->who_then));
}
