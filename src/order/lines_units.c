/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "lines_units.h"

#include <math.h>

#include "take_off.h"
#include "base/angles.h"

/* Lines of blocks and caps. */

static double mass_of(const lw_laying *laying, double depth_m) {
  const lw_plan *plan = laying->plan;
  double volume = plan->unit_m * laying->mean_share * depth_m * plan->course_m;
  return laying->courses->block_unit_weight.si * 1000.0 / 9.80665 * volume;
}

static bool has_curve(const lw_plan *plan) {
  bool curved = false;
  for (int i = 0; i < plan->run_count; i++) curved = curved || fabs(plan->run[i].radius_m) > 0.0;
  return curved;
}

/* Pieces of all courses of one depth. */
static lw_course_count sum_of(const lw_take_off *t, bool base) {
  const lw_plan *plan = t->laying->plan;
  lw_course_count sum = {0};
  for (int i = 0; i < plan->courses; i++) {
    const lw_course_count *n = &t->laying->order->course[i];
    if ((i < plan->base_courses) != base) continue;
    sum.whole += n->whole;
    sum.half += n->half;
    sum.left += n->left;
    sum.right += n->right;
  }
  return sum;
}

/* How many are sawn, by the way that is asked for; what the other way saves or costs is told beside it. */
static int sawn(const lw_take_off *t, int fresh, int again, lw_order_line *line) {
  line->sawn = fresh;
  line->sawn_again = again;
  line->offcuts_used = t->o->offcuts.value == LW_YES;
  return line->offcuts_used ? again : fresh;
}

static void kind_of(const lw_take_off *t, lw_line_kind kind, int count, double unit_kg) {
  if (count == 0) return;
  lw_order_line *l =
      lw_line_put(t, &(lw_order_line){.kind = kind, .net = count, .pieces = true}, &t->o->spare_units);
  l->mass_kg = l->order * unit_kg;
}

/* Mitred units are sawn from whole blocks: those that go wrong too. */
static void mitred_spares(const lw_take_off *t, bool base, double unit_kg) {
  const lw_order *order = t->laying->order;
  int kinds = 0;
  for (int i = 0; i < order->cut_count; i++)
    kinds += order->cut[i].kind == LW_CUT_MITRED && order->cut[i].base_unit == base ? 1 : 0;
  if (kinds == 0) return;
  lw_quantity spare = t->o->spare_units;
  spare.si *= kinds;
  lw_order_line line = {.kind = base ? LW_LINE_BASE_MITRED_SPARES : LW_LINE_MITRED_SPARES,
                        .pieces = true,
                        .kinds = kinds,
                        .spare_each = t->o->spare_units.si};
  lw_order_line *l = lw_line_put(t, &line, &spare);
  l->mass_kg = l->order * unit_kg;
}

/* Blocks of one depth, whole ones and those to be sawn; then the units that are bought as such. */
static void blocks_of(const lw_take_off *t, bool base, double unit_kg) {
  const lw_plan *plan = t->laying->plan;
  lw_course_count sum = sum_of(t, base);
  lw_order_line line = {.kind = base ? LW_LINE_BASE_BLOCKS : LW_LINE_BLOCKS};
  lw_stock stock = base ? LW_STOCK_BASE_BLOCK : LW_STOCK_BLOCK;
  const lw_order *order = t->laying->order;
  line.net = sum.whole + sawn(t, order->sawn[stock], order->sawn_again[stock], &line);
  lw_order_line *l = lw_line_put(t, &line, has_curve(plan) ? &t->o->curve_allowance : &t->o->block_allowance);
  l->order = lw_pieces_up(l->order);
  l->mass_kg = l->order * unit_kg;
  /* A unit made for a corner is square: it has no tail. */
  double corner_kg = unit_kg / t->laying->mean_share * t->laying->corner_unit_m / plan->unit_m;
  if (!t->laying->half_cut)
    kind_of(t, base ? LW_LINE_BASE_HALF_BLOCKS : LW_LINE_HALF_BLOCKS, sum.half, unit_kg / 2.0);
  kind_of(t, base ? LW_LINE_BASE_LEFT_CORNERS : LW_LINE_LEFT_CORNERS, sum.left, corner_kg);
  kind_of(t, base ? LW_LINE_BASE_RIGHT_CORNERS : LW_LINE_RIGHT_CORNERS, sum.right, corner_kg);
  mitred_spares(t, base, unit_kg);
}

static void caps_of(const lw_take_off *t, lw_cap_sort *sort) {
  lw_order *order = t->laying->order;
  double kg_per_m3 = t->laying->courses->cap_unit_weight.si * 1000.0 / 9.80665;
  sort->mass_kg = kg_per_m3 * t->o->cap_length.si * sort->depth_m * t->laying->cap_m;
  order->cap_mass_kg = fmax(order->cap_mass_kg, sort->mass_kg);
  lw_order_line line = {.kind = LW_LINE_CAPS};
  line.cap_depth_m = order->cap_sort_count > 1 ? sort->depth_m : 0.0;
  line.net = sort->whole + sawn(t, sort->sawn, sort->sawn_again, &line);
  order->cap_count += (int)lround(line.net);
  lw_order_line *l = lw_line_put(t, &line, &t->o->cap_allowance);
  l->order = lw_pieces_up(l->order);
  l->mass_kg = l->order * sort->mass_kg;
}

static void caps(const lw_take_off *t) {
  lw_order *order = t->laying->order;
  if (!order->has_cap) return;
  for (int i = 0; i < order->cap_sort_count; i++) caps_of(t, &order->cap_sort[i]);
  if (t->laying->courses->cap_fixing.value != LW_FIXING_BONDED) return;
  double bead = t->o->adhesive_bead.si * 0.5;
  lw_line_put(t,
              &(lw_order_line){.kind = LW_LINE_ADHESIVE,
                               .net = 2.0 * order->cap_line_m * LW_PI * bead * bead * 1000.0},
              &t->o->adhesive_allowance);
}

void lw_lines_units(const lw_take_off *t) {
  lw_order *order = t->laying->order;
  const lw_plan *plan = t->laying->plan;
  order->unit_mass_kg = mass_of(t->laying, plan->depth_m);
  order->base_unit_mass_kg = plan->base_courses > 0 ? mass_of(t->laying, plan->base_depth_m) : 0.0;
  if (plan->base_courses < plan->courses) blocks_of(t, false, order->unit_mass_kg);
  if (plan->base_courses > 0) blocks_of(t, true, order->base_unit_mass_kg);
  caps(t);
}
