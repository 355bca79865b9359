/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "lines.h"

#include <string.h>

#include "base/print.h"

/* What to buy, dig and carry: net, allowance and order, a line each. */

lw_order_line *lw_line_put(const lw_taking *t, const lw_order_line *line, const lw_quantity *allowance) {
  lw_order *order = t->laying->order;
  if (order->line_count >= LW_ORDER_LINE_MAX) return &order->line[LW_ORDER_LINE_MAX - 1];
  lw_order_line *l = &order->line[order->line_count++];
  *l = *line;
  l->order = l->net;
  if (allowance == NULL) return l;
  l->allowance_known = true;
  l->allowance = allowance->si;
  l->order = l->pieces ? l->net + allowance->si : l->net * (1.0 + allowance->si);
  bool ours = allowance->origin == LW_ASSUMED && allowance->table_row >= 0;
  lw_print(l->source, sizeof l->source, "%s",
           ours ? t->tables->ordering[allowance->table_row].from.source : "given");
  return l;
}

int lw_barrows(const lw_taking *t, double loose_m3, double mass_kg) {
  return (int)lw_pieces_up(fmax(loose_m3 / t->o->barrow_volume.si, mass_kg / t->o->barrow_mass.si));
}

static double mean_raised(const lw_plan *plan) {
  double base = 0.0, from = 0.0;
  for (int i = 0; i <= plan->step_count; i++) {
    double to = i < plan->step_count ? plan->step[i].at_m : plan->length_m;
    base += (to - from) * lw_plan_raised(plan, (from + to) / 2.0, true) * plan->course_m;
    from = to;
  }
  return base / plan->length_m;
}

static lw_taking begin(lw_laying *laying, const lw_result *result) {
  const lw_case *c = &result->given;
  lw_taking t = {.laying = laying, .c = c, .o = &c->order, .tables = laying->tables};
  t.rear_m = lw_plan_depth(laying->plan, 0);
  t.pad_m = c->pad_thickness.origin != LW_ABSENT ? c->pad_thickness.si : 0.0;
  t.stone_m = c->stone_width.origin == LW_GIVEN ? c->stone_width.si : 0.0;
  t.bedding_m = t.pad_m > 0.0 ? c->order.bedding_thickness.si : 0.0;
  double beyond = t.pad_m > 0.0 ? c->order.pad_beyond.si : 0.0;
  bool width = t.pad_m > 0.0 && c->pad_width.origin == LW_GIVEN;
  t.pad_front_m = width ? fmin(beyond, fmax(0.0, (c->pad_width.si - t.rear_m) / 2.0)) : beyond;
  t.pad_rear_m = width ? c->pad_width.si - t.pad_front_m : t.rear_m + beyond;
  t.embedded_m = c->wall_embedment.si;
  double cap = c->cap_height.origin != LW_ABSENT ? c->cap_height.si : 0.0;
  t.high_m = laying->plan->courses * laying->plan->course_m + cap;
  t.free_ends = laying->plan->closed ? 0 : 2;
  t.raised_m = mean_raised(laying->plan);
  return t;
}

/* What is loose, what is carried, and how it comes. */
static void carrying(const lw_taking *t, const lw_result *result) {
  lw_order *order = t->laying->order;
  double blocks = 0.0, loose_kg = 0.0;
  for (int i = 0; i < order->line_count; i++) {
    const lw_order_line *l = &order->line[i];
    bool loose = strcmp(l->unit, "m3") == 0 && strcmp(l->slug, "dig") != 0 && strcmp(l->slug, "spoil") != 0;
    order->carried_kg += l->mass_kg;
    blocks += strcmp(l->unit, "pieces") == 0 && strcmp(l->slug, "caps") != 0 ? l->mass_kg : 0.0;
    order->loose_m3 += loose ? l->order : 0.0;
    loose_kg += loose ? l->mass_kg : 0.0;
  }
  order->barrows = lw_barrows(t, order->loose_m3, loose_kg);
  order->pallets = (int)lw_pieces_up(blocks / t->o->pallet_mass.si);
  /* Outside the line of influence, and outside 45 degrees from the bottom of the dig while it is open. */
  order->pallet_distance_m = fmax(t->high_m + t->pad_m + t->bedding_m, lw_influence_reach(&result->wall));
}

void lw_order_lines(lw_laying *laying, const lw_result *result) {
  lw_taking t = begin(laying, result);
  lw_lines_units(&t);
  lw_lines_ground(&t);
  carrying(&t, result);
}
