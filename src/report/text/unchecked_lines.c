/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "parts.h"
#include "said.h"
#include "unchecked.h"

static void say(void *context, const lw_unchecked *unchecked) {
  lw_page_say(context, "  - ", unchecked->text);
}

void lw_text_unchecked(const lw_page *page, const lw_result *result) {
  lw_page given = *page;
  lw_page_heading(page, "Not checked");
  lw_unchecked_each(result, say, &given);
}

/* An item is never broken at the end of a line: it is copied as it stands. */
void lw_text_type_in(const lw_page *page, const lw_typed *typed) {
  static const char first[] = "    Type in:", next[] = "            ";
  char line[256];
  size_t used = (size_t)lw_print(line, sizeof line, "%s", first);
  for (int i = 0; i < typed->count; i++) {
    size_t more = strlen(typed->item[i]) + 3;
    bool full = used + more > (size_t)page->style.columns || used + more >= sizeof line;
    if (full && used > sizeof first - 1) {
      lw_page_linef(page, LW_TONE_PLAIN, "%s", line);
      used = (size_t)lw_print(line, sizeof line, "%s", next);
    }
    used += (size_t)lw_print(line + used, sizeof line - used, " '%s'", typed->item[i]);
  }
  lw_page_linef(page, LW_TONE_PLAIN, "%s", line);
}

/* The engineer's last word stands in each remedy, so that none is quoted without it; here once is enough. */
static void remedy(const lw_page *page, const lw_remedy *r) {
  char text[sizeof r->text];
  lw_print(text, sizeof text, "%s", r->text);
  char *repeated = strstr(text, " The engineer decides");
  if (repeated) *repeated = '\0';
  lw_page_say(page, "  + ", text);
  lw_text_type_in(page, &r->items);
}

static void remedies(const lw_page *page, const lw_result *result) {
  bool no_cure = result->remedy_count > 0 && result->remedy[0].kind != LW_REMEDY_CURE;
  lw_page_heading(page, no_cure
                            ? "Nothing tried makes it stand as the wall it is to be; in its place would stand"
                            : "What would make every check hold, each by itself");
  if (result->remedy_count == 0)
    lw_page_say(page, "  ",
                "Nothing that was tried does, neither one change nor two together. It takes other blocks, "
                "another kind of wall or another place.");
  for (int i = 0; i < result->remedy_count; i++) remedy(page, &result->remedy[i]);
  if (result->remedy_count > 0 && result->verdict.who == LW_WHO_ENGINEER)
    lw_page_say(page, "  ", "None of these is a way round the engineer, who decides all the same.");
}

static void ask(const lw_page *page, const lw_result *result) {
  const lw_asking *a = &result->asking[0];
  char then[200];
  lw_asking_then(result, then, sizeof then);
  lw_page_sayf(page, "  ", "%s Taken meanwhile: %s = %s. Were it %s: %s.", a->question, a->item, a->assumed,
               a->favourable, then);
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
  bool short_of = result->remedies_sought && result->verdict.stands == LW_FALLS_SHORT;
  if (result->remedy_count > 0 || short_of) remedies(page, result);
  if (result->asking_count == 0 && !depth) return;
  lw_page_heading(page, "The one answer most worth finding out");
  if (depth)
    ask_for_depth(page, result);
  else
    ask(page, result);
}
