/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "hazard.h"
#include "said.h"
#include "screen.h"
#include "shorten.h"
#include "unchecked.h"

/* The gravest cautions that fit, what was not checked, and where to read on. */

enum { ENOUGH = 5, CAUTION_LINES = 2 };

static void caution(lw_screen *screen, const lw_hazard_row *row, int lines, int gives) {
  char text[LW_HAZARD_WORDS_MAX], first[LW_HAZARD_WORDS_MAX];
  lw_hazard_words(row, screen->page.units, text, sizeof text);
  const char *next = lw_shorten_next(text);
  lw_print(first, sizeof first, "%.*s", (int)(next - text), text);
  int least = lw_shorten_lines(&screen->page, "  - ", first);
  lw_shorten_sentences(&screen->page, "  - ", least > lines ? least : lines, text);
  lw_page_say(&screen->page, "  - ", text);
  lw_screen_piece(screen, LW_SCREEN_CAUTIONS, gives);
}

/* They come in the order of their weight. Those that name a service, a collapse or a fall stay; of the others
 * as many as make five with them. Where more stay, each is told in one sentence if that is enough. */
void lw_screen_cautions(lw_screen *screen, const lw_result *result) {
  const lw_reasons *reasons = &result->verdict.reasons;
  int staying = 0, others = 0;
  for (int i = 0; i < reasons->caution_count; i++) staying += reasons->caution[i]->names[0] != '\0' ? 1 : 0;
  screen->heading[LW_SCREEN_CAUTIONS] = "Mind";
  for (int i = 0; i < reasons->caution_count; i++) {
    const lw_hazard_row *row = reasons->caution[i];
    bool stay = row->names[0] != '\0';
    if (!stay && staying + others >= ENOUGH) {
      screen->beyond[LW_SCREEN_CAUTIONS]++;
      continue;
    }
    others += stay ? 0 : 1;
    caution(screen, row, staying > ENOUGH ? 1 : CAUTION_LINES, stay ? LW_STAYS : others);
  }
}

typedef struct lw_brief {
  char text[640];
} lw_brief;

static void add(void *context, const lw_unchecked *unchecked) {
  lw_brief *all = context;
  size_t used = strlen(all->text);
  lw_print(all->text + used, sizeof all->text - used, "%s%s", used > 0 ? "; " : "", unchecked->brief);
}

void lw_screen_unchecked(lw_screen *screen, const lw_result *result) {
  lw_brief all = {.text = ""};
  lw_unchecked_each(result, add, &all);
  lw_page_sayf(&screen->page, "Not checked: ", "%s.", all.text);
  lw_screen_piece(screen, LW_SCREEN_UNCHECKED, LW_STAYS);
}

void lw_screen_read_on(lw_screen *screen, const lw_result *result) {
  (void)result;
  lw_page_say(&screen->page, "",
              "`lowwall check --full` has reasons, limits and sources, `--working` each step.");
  lw_page_say(&screen->page, "", LW_CERTIFIES_NOTHING);
  lw_screen_piece(screen, LW_SCREEN_READ_ON, LW_STAYS);
}
