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

static void ask(const lw_page *page, const lw_result *result) {
  const lw_asking *a = &result->asking[0];
  const lw_verdict *v = &result->verdict;
  bool same = a->stands_then == v->stands && a->who_then == v->who;
  lw_page_sayf(page, "  ", "%s Taken meanwhile: %s = %s. Were it %s: %s; %s.%s", a->question, a->item,
               a->assumed, a->favourable, stands_then(a->stands_then), who_then(a->who_then),
               same ? " No one answer alone changes that; this one helps most." : "");
}

/* The one thing for which there is no safe value comes before whatever was assumed. */
static void ask_for_depth(const lw_page *page, const lw_result *result) {
  bool courses = result->wall.section.kind == LW_WALL_COURSES;
  lw_page_sayf(page, "  ",
               "%s Nothing is taken meanwhile: there is no safe guess for it, and without it nothing can be "
               "shown to stand. Give it as %s.",
               courses ? "How deep are the blocks, from front to back?" : "How wide is the wall at its base?",
               courses ? "block depth" : "base width");
}

void lw_text_remedies(const lw_page *page, const lw_result *result) {
  bool depth = !result->wall.section.known;
  if (result->remedy_count > 0) remedies(page, result);
  if (result->asking_count == 0 && !depth) return;
  lw_page_heading(page, "The one answer most worth finding out");
  if (depth)
    ask_for_depth(page, result);
  else
    ask(page, result);
}
