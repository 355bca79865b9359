/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"
#include "screen.h"

/* What the first three cautions cost of a wall that does not hold: what it would have if this one value were
 * the usual one. The values themselves stand in the report in full. */

void lw_screen_costs(lw_screen *screen, const lw_result *result) {
  enum { SHOWN = 3 };
  int shown = 0;
  screen->heading[LW_SCREEN_COSTS] =
      "What each caution costs alone; all at once are rarer than one in twenty";
  /* What is refused is not for want of margin. */
  if (result->situations.stands == LW_HOLDS) return;
  for (int i = 0; i < result->cost_count && shown < SHOWN; i++) {
    const lw_cost *cost = &result->cost[i];
    if (cost->worse || !lw_text_cost_has(result, cost)) continue;
    lw_text_cost(&screen->page, result, cost, false);
    lw_screen_piece(screen, LW_SCREEN_COSTS, 1 + shown++);
  }
}
