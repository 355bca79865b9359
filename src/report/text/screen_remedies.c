/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "advised.h"
#include "parts.h"
#include "screen.h"

/* What would make it stand, and the one thing worth finding out. */

/* What it comes to is printed in full: here what to do, and what to type in. */
static void remedy(lw_screen *screen, const lw_remedy *r, int gives) {
  char text[sizeof r->text];
  lw_print(text, sizeof text, "%s", r->text);
  char *then = strstr(text, ": then every");
  if (then) lw_print(then, 2, ".");
  lw_page_say(&screen->page, "  + ", text);
  lw_text_type_in(&screen->page, &r->items);
  lw_screen_piece(screen, LW_SCREEN_REMEDIES, gives);
}

void lw_screen_remedies(lw_screen *screen, const lw_result *result) {
  enum { SHOWN = 3 };
  const char *none = lw_remedies_none(result);
  screen->heading[LW_SCREEN_REMEDIES] = lw_remedies_title(result);
  if (none[0]) {
    lw_page_say(&screen->page, "  ", none);
    lw_screen_piece(screen, LW_SCREEN_REMEDIES, LW_STAYS);
  }
  for (int i = 0; i < result->remedy_count && i < SHOWN; i++) remedy(screen, &result->remedy[i], 1 + i);
  if (result->remedy_count > SHOWN) screen->beyond[LW_SCREEN_REMEDIES] = result->remedy_count - SHOWN;
}

static void ask(const lw_page *page, const lw_result *result) {
  lw_text words = {0};
  lw_text_addf(&words, "%s ", result->asking[0].question);
  lw_asking_words(result, 0, false, &words);
  lw_page_say_text(page, "  ", &words);
}

static void ask_for_depth(const lw_page *page, const lw_result *result) {
  bool courses = result->wall.section.kind == LW_WALL_COURSES;
  lw_page_sayf(page, "  ", "%s There is no safe guess for it, and without it nothing can be shown to stand.",
               courses ? "How deep are the blocks, from front to back?"
                       : "How wide is the wall at its base?");
}

void lw_screen_asking(lw_screen *screen, const lw_result *result) {
  screen->heading[LW_SCREEN_ASKING] = "The one thing worth finding out";
  if (!result->wall.section.known)
    ask_for_depth(&screen->page, result);
  else if (result->asking_count > 0)
    ask(&screen->page, result);
  lw_screen_piece(screen, LW_SCREEN_ASKING, 1);
}
