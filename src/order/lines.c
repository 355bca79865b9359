/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "lines.h"

#include <math.h>

#include "tables/known.h"
#include "laying.h"
#include "lines_behind.h"
#include "lines_ground.h"
#include "lines_solid.h"
#include "lines_units.h"
#include "take_off.h"

/* What to buy, dig and carry: net, allowance and order, a line each. */

/* While the dig is open the ground behind it stands to a line up and back from its bottom at the rear. */
static double open_dig_reach(const lw_take_off *t) {
  double reach = 0.0, run = lw_known_value(t->tables, LW_ORDERING_OPEN_DIG_LINE);
  for (int i = 0; i < t->part_count; i++) {
    const lw_base_part *p = &t->part[i];
    double deep = t->high_m - p->raised * t->laying->plan->course_m + t->pad_m + t->bedding_m;
    reach = fmax(reach, p->dig_rear_m - p->depth_m + run * deep);
  }
  return reach;
}

/* What is loose, what is carried, and how it comes. */
static void carrying(const lw_take_off *t) {
  lw_order *order = t->laying->order;
  double blocks = 0.0, loose_kg = 0.0;
  for (int i = 0; i < order->line_count; i++) {
    const lw_order_line *l = &order->line[i];
    lw_line_unit unit = lw_order_line_unit(l->kind);
    bool loose = unit == LW_UNIT_M3 && l->kind != LW_LINE_DIG && l->kind != LW_LINE_SPOIL;
    order->carried_kg += l->mass_kg;
    blocks += unit == LW_UNIT_PIECES && l->kind != LW_LINE_CAPS ? l->mass_kg : 0.0;
    order->loose_m3 += loose ? l->order : 0.0;
    loose_kg += loose ? l->mass_kg : 0.0;
  }
  order->barrows = lw_barrows(t, order->loose_m3, loose_kg);
  order->pallets = (int)lw_pieces_up(blocks / t->o->pallet_mass.si);
  order->pallet_distance_m = fmax(open_dig_reach(t), t->laying->influence_m);
}

void lw_order_lines(const lw_laying *laying) {
  lw_take_off t = lw_take_off_begin(laying);
  if (laying->plan->solid)
    lw_lines_solid(&t);
  else
    lw_lines_units(&t);
  lw_lines_ground(&t);
  lw_lines_behind(&t);
  carrying(&t);
}
