/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "situation.h"

#include <math.h>

/* Sliding by a factor on the strength of every wedge, as manuals for hydraulic works define it: the soil that
 * pushes, what the wall stands on and the ground in front all keep the same share of their strength, and the
 * factor is the greatest that still lets them balance. The less is left the more pushes, so it is nearer to 1
 * than resistance over push at full strength. */

static const double LOW = 0.02, HIGH = 1000.0, CLOSE = 1e-11;

/* The contact with every strength divided by a factor. */
static lw_check at_factor(const lw_wedges *w, double factor, bool found) {
  lw_format format = *w->format;
  lw_wall now;
  lw_section above;
  lw_push push;
  lw_stage stage;
  bool whole = w->at == LW_AT_BASE || w->at == LW_AT_PAD;
  format.on_every_wedge = factor;
  lw_situation_wall(w->wall, &format, w->situation, &now, NULL);
  lw_format_mobilize(&format, w->situation->kind, &now, NULL);
  if (!found) format.on_every_wedge = 0.0;
  if (!whole) lw_section_above(&now.section, w->joint, &above);
  double pad = w->at == LW_AT_PAD ? lw_site_under(&now.site) : 0.0;
  lw_push_find(&now, whole ? &now.section : &above, pad, NULL, &push, NULL);
  if (w->at == LW_AT_PAD)
    lw_stage_pad(&now, &push, w->actions, &stage);
  else if (whole)
    lw_stage_base(&now, &push, w->actions, &stage);
  else
    lw_stage_above(&now, &above, &push, w->actions, &stage);
  lw_check_context context = {&now, &format, w->situation->kind, isfinite(w->situation->water_depth_m)};
  return lw_check_sliding(&context, &stage, w->at, w->at == LW_AT_CAP ? 0 : w->joint);
}

/* What is left over at a factor: less than 0 where it is too great, also where ground slides by itself. */
static double left_over(double factor, const void *context) {
  lw_check check = at_factor(context, factor, false);
  if (check.holds == LW_CANNOT_SHOW) return -1.0;
  return check.has.known ? check.has.value - 1.0 : 1.0;
}

/* The factor, on the side where there is an answer; 0: none, however much strength were there. */
static double factor_of(const lw_wedges *w) {
  double low = 1.0, high = 1.0, root = 0.0;
  while (low > LOW && left_over(low, w) < 0.0) {
    high = low;
    low *= 0.6;
  }
  if (left_over(low, w) < 0.0) return 0.0;
  if (high <= 1.0 && low >= 1.0)
    for (high = 2.0; high < HIGH && left_over(high, w) >= 0.0; high *= 2.0) low = high;
  if (high >= HIGH) return HIGH;
  if (lw_solve_root(left_over, w, low, high, CLOSE, &root) != LW_OK) return low;
  for (double back = CLOSE; back < 1e-3 && left_over(root, w) <= -1.0 + CLOSE; back *= 10.0) root -= back;
  return root;
}

lw_check lw_check_sliding_of_wedges(const lw_wedges *wedges) {
  lw_check full = at_factor(wedges, 1.0, false);
  if (full.holds == LW_CANNOT_SHOW) return full;
  double factor = factor_of(wedges);
  if (factor <= 0.0 || (factor >= HIGH && !full.has.known)) return full;
  return at_factor(wedges, factor, true);
}
