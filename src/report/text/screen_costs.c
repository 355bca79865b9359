/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "remedies/costs.h"
#include "screen.h"

/* What the first three cautions cost of a wall that does not hold: what it would have if this one value were
 * the usual one. The values themselves stand in the report in full. */

static void then_words(const lw_result *result, const lw_cost *cost, char *out, size_t size) {
  const lw_check check = {.kind = cost->kind, .at = cost->at, .joint = cost->joint};
  lw_number now = result->looks.cautious.has;
  bool moves = lw_costs_in_times(result) && cost->least.known && now.known;
  char has[24], had[24], words[48];
  lw_page_number(moves ? cost->least : cost->has, has, sizeof has);
  lw_page_number(now, had, sizeof had);
  lw_check_words(&check, words, sizeof words);
  if (moves)
    lw_print(out, size, "%s times what just holds it in place of %s", has, had);
  else
    lw_print(out, size, "%s has %s", words, has);
}

void lw_screen_costs(lw_screen *screen, const lw_result *result) {
  enum { SHOWN = 3 };
  int shown = 0;
  screen->heading[LW_SCREEN_COSTS] =
      "What each caution costs alone; all at once are rarer than one in twenty";
  /* What is refused is not for want of margin. */
  if (result->situations.stands == LW_HOLDS) return;
  for (int i = 0; i < result->cost_count && shown < SHOWN; i++) {
    const lw_cost *cost = &result->cost[i];
    char then[96];
    if (cost->worse || !cost->has.known) continue;
    then_words(result, cost, then, sizeof then);
    lw_page_sayf(&screen->page, "  - ", "%s as it usually is: %s.%s%s", cost->item, then,
                 cost->question[0] ? " " : "", cost->question);
    lw_screen_piece(screen, LW_SCREEN_COSTS, 1 + shown++);
  }
}
