/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "phases.h"

#include <math.h>

#include "laying.h"
#include "rows.h"

/* What stands at each corner and free end in the lowest course: this way or that. All ways are tried, and
 * the one with the fewest cuts is taken. */

static bool leaves_a_cut(const lw_laying *laying, const lw_laid *row) {
  double module = laying->plan->module_m;
  double room = row->module_sum_m - row->first_m - row->last_m;
  double left = room - module * round(room / module);
  return room < -LW_TAKEN_UP || fabs(left) > LW_TAKEN_UP;
}

static int cuts_of(const lw_laying *laying, int stretch, int start_bit, int end_bit) {
  lw_stretch tried = laying->order->stretch[stretch];
  int cuts = 0;
  tried.start_bit = start_bit;
  tried.end_bit = end_bit;
  for (int course = 0; course < laying->plan->courses; course++) {
    lw_laid row = lw_row_whole(laying, &tried, course);
    cuts += leaves_a_cut(laying, &row) ? 1 : 0;
  }
  return cuts;
}

/* Which bit rules an end: that of its corner, or one of its own. */
static int bit_of(const lw_laying *laying, int corner, bool at_end) {
  return corner >= 0 ? corner : laying->order->corner_count + (at_end ? 1 : 0);
}

void lw_phases_choose(const lw_laying *laying) {
  int cuts[LW_STRETCH_MAX][2][2];
  for (int i = 0; i < laying->order->stretch_count; i++)
    for (int bits = 0; bits < 4; bits++)
      cuts[i][bits & 1][bits >> 1] = cuts_of(laying, i, bits & 1, bits >> 1);
  int best = 0, fewest = -1;
  for (int all = 0; all < 1 << (laying->order->corner_count + 2); all++) {
    int sum = 0;
    for (int i = 0; i < laying->order->stretch_count; i++) {
      const lw_stretch *s = &laying->order->stretch[i];
      int start = all >> bit_of(laying, s->corner_before, false) & 1;
      int end = all >> bit_of(laying, s->corner_after, true) & 1;
      sum += cuts[i][start][end];
    }
    if (fewest >= 0 && sum >= fewest) continue;
    fewest = sum;
    best = all;
  }
  for (int i = 0; i < laying->order->stretch_count; i++) {
    lw_stretch *s = &laying->order->stretch[i];
    s->start_bit = best >> bit_of(laying, s->corner_before, false) & 1;
    s->end_bit = best >> bit_of(laying, s->corner_after, true) & 1;
  }
  for (int i = 0; i < laying->order->corner_count; i++)
    laying->order->corner[i].first_through = (best >> i & 1) == 0;
}
