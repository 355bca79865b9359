/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "advised.h"
#include "parts.h"
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

/* The engineer's last word stands in each remedy, so that none is quoted without it; here that above them is
 * enough. */
static void remedy(const lw_page *page, const lw_remedy *r) {
  char text[sizeof r->text];
  lw_print(text, sizeof text, "%s", r->text);
  char *repeated = strstr(text, " The engineer decides");
  if (repeated) *repeated = '\0';
  lw_page_say(page, "  + ", text);
  lw_text_type_in(page, &r->items);
}

static void remedies(const lw_page *page, const lw_result *result) {
  const char *none = lw_remedies_none(result);
  lw_page_heading(page, lw_remedies_title(result));
  if (none[0]) lw_page_say(page, "  ", none);
  for (int i = 0; i < result->remedy_count; i++) remedy(page, &result->remedy[i]);
}

static void ask(const lw_page *page, const lw_result *result) {
  lw_text words = {0};
  lw_text_addf(&words, "%s ", result->asking[0].question);
  lw_asking_words(result, 0, true, &words);
  lw_page_say_text(page, "  ", &words);
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
