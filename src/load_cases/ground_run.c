/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ground_run.h"

#include <math.h>

#include "kinds.h"
#include "load_case.h"

/* The checks of the ground as a whole, in every situation that they are looked at in, under every set. */

/* People on the top, and wind on a fence, which turns to and fro, are not looked at. */
static bool looked_at(lw_situation_name name) {
  return name == LW_SITUATION_DRAINED || name == LW_SITUATION_OUTLET_BLOCKED || name == LW_SITUATION_STORM ||
         name == LW_SITUATION_EARTHQUAKE || name == LW_SITUATION_TRENCH;
}

/* Where no set asks anything of a slip it is printed under the first. */
static bool under(const lw_format_family *family, int set) {
  int first = -1;
  for (int i = family->count - 1; i >= 0; i--)
    if (family->count == 1 || lw_format_asks(&family->set[i])) first = i;
  return set == first || family->set[set].row[LW_NEED_SLIP] != NULL;
}

/* Only at LW_DETAIL_VERDICT anybody asks. */
static double falls_short(const lw_situations *all, lw_detail detail) {
  int situation, check;
  if (detail > LW_DETAIL_VERDICT || !lw_situations_governing(all, &situation, &check)) return INFINITY;
  lw_check governing = lw_check_kept(&all->situation[situation].kept[check]);
  return governing.holds == LW_FALLS_SHORT && governing.ratio.known ? governing.ratio.value : INFINITY;
}

static void check_situation(const lw_ground_try *like, const lw_situations *all,
                            const lw_format_family *family) {
  const lw_wall *wall = like->context->wall;
  for (int i = 0; i < family->count; i++) {
    if (!under(family, i)) continue;
    lw_load_case load_case = lw_slip_load_case(wall, &family->set[i], like->situation);
    lw_check_context context = {wall, &family->set[i], &load_case, NULL};
    lw_ground_try try = *like;
    try.context = &context;
    for (int k = 0; k < LW_CHECK_KIND_COUNT; k++) {
      const lw_check_row *row = lw_check_row_of((lw_check_kind)k);
      lw_check check = {
          .kind = (lw_check_kind)k, .at = LW_AT_GROUND, .unit = row->about.unit, .counts = true};
      if (!row->make_ground) continue;
      try.falls_short = falls_short(all, try.detail);
      row->make_ground(&try, &check);
    }
  }
}

void lw_ground_run(const lw_wall *wall, const lw_format_family *family, lw_detail detail,
                   lw_situations *situations) {
  lw_check_context context = {.wall = wall};
  lw_ground_try try = {.context = &context, .detail = detail};
  if (!wall->section.known || (!lw_slip_looked_for(wall) && wall->bed_slope_rad <= 0.0)) return;
  for (int i = 0; i < situations->count; i++) {
    try.situation = &situations->situation[i];
    if (!looked_at(try.situation->name)) continue;
    if (detail <= LW_DETAIL_VERDICT && !try.situation->decides) continue;
    check_situation(&try, situations, family);
  }
}
