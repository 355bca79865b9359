/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "echo.h"
#include "screen.h"
#include "shorten.h"

/* What is assumed: first what would help most to know, then what the sums rest on, then the rest. */

enum { LINES = 5 };

typedef struct lw_assumed {
  lw_screen *screen;
  const lw_result *result;
  const char *only; /* this item; NULL: those that no question asks for */
  bool of_sums;
  int lines, count;
} lw_assumed;

/* The first question stands by itself, the value taken beside it. */
static bool is_asked(const lw_result *result, const char *name) {
  for (int i = 0; i < result->asking_count; i++)
    if (strcmp(result->asking[i].item, name) == 0) return true;
  return false;
}

static bool belongs(const lw_assumed *all, const lw_echo *echo) {
  bool of_sums = echo->item->part != LW_ABOUT_HEADING && echo->item->part != LW_ABOUT_SITE;
  if (echo->origin != LW_ASSUMED || echo->item->question[0] == '\0') return false;
  if (all->only) return strcmp(all->only, echo->name) == 0;
  return of_sums == all->of_sums && !is_asked(all->result, echo->name);
}

static void take(void *context, const lw_echo *echo) {
  lw_assumed *all = context;
  char line[sizeof echo->name + sizeof echo->words + 256];
  if (!belongs(all, echo)) return;
  lw_print(line, sizeof line, "%s: %s. %s", echo->name, echo->words, echo->item->question);
  int lines = lw_shorten_lines(&all->screen->page, "  ? ", line);
  if (all->lines + lines > LINES) {
    all->screen->beyond[LW_SCREEN_ASSUMED]++;
    return;
  }
  all->lines += lines;
  lw_page_say(&all->screen->page, "  ? ", line);
  lw_screen_piece(all->screen, LW_SCREEN_ASSUMED, ++all->count);
}

void lw_screen_assumed(lw_screen *screen, const lw_result *result) {
  lw_assumed all = {.screen = screen, .result = result};
  screen->heading[LW_SCREEN_ASSUMED] = "Assumed, because the sheet does not say";
  for (int i = result->wall.section.known ? 1 : 0; i < result->asking_count; i++) {
    all.only = result->asking[i].item;
    lw_echo_each(result, take, &all);
  }
  all.only = NULL;
  for (int sums = 1; sums >= 0; sums--) {
    all.of_sums = sums == 1;
    lw_echo_each(result, take, &all);
  }
}
