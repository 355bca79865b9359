/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <string.h>

#include <lowwall/order.h>

#include "bond.h"
#include "caps.h"
#include "count.h"
#include "cutting.h"
#include "laying.h"
#include "lines.h"
#include "note.h"
#include "notes.h"
#include "pegs.h"
#include "phases.h"
#include "rows.h"
#include "runs.h"
#include "stretches.h"
#include "work.h"

/* A plan that just misses its beginning was meant to close, more often than not. */
static void note_nearly_closed(lw_order *order) {
  const lw_plan *plan = &order->plan;
  lw_spot begin = lw_plan_corner(plan, 0, 0.0), end = lw_plan_corner(plan, plan->run_count, 0.0);
  double apart = hypot(end.x_m - begin.x_m, end.y_m - begin.y_m);
  if (plan->closed || plan->run_count < 3 || apart > plan->unit_m) return;
  lw_order_note_add(order, &(lw_order_note){.kind = LW_NOTE_NEARLY_CLOSED, .length_m = apart});
}

static lw_laying begin(const lw_result *result, lw_order *order) {
  const lw_case *c = &result->given;
  return (lw_laying){.plan = &order->plan,
                     .order = order,
                     .tables = result->tables,
                     .asked = (lw_corner_unit)c->order.corner_unit.value,
                     .corner_unit_m = c->order.corner_length.si,
                     .half_cut = c->order.half_unit.value == LW_HALF_CUT,
                     .kerf_m = c->order.saw_kerf.si,
                     .overlap_share = lw_known_value(result->tables, LW_ORDERING_OVERLAP_LEAST),
                     .mitre_share = lw_known_value(result->tables, LW_ORDERING_MITRE_PIECE_LEAST),
                     .cut_share = lw_known_value(result->tables, LW_ORDERING_CUT_LEAST)};
}

/* Nothing is laid block by block: the plan, what it takes, and where it stands. */
static lw_status make_solid(const lw_laying *laying, const lw_result *result) {
  lw_order *order = laying->order;
  const lw_plan *plan = laying->plan;
  lw_stretches_build(laying);
  order->corner_count = 0;
  for (int i = 0; i < plan->run_count; i++) {
    lw_order_run *r = &order->run[i];
    *r = (lw_order_run){.run = i, .length_m = plan->run[i].length_m};
    r->top_length_m = lw_plan_run_length(plan, i, plan->setback_m);
  }
  lw_order_lines(laying, result);
  lw_order_notes(laying, result);
  lw_order_pegs(laying, result);
  lw_order_work(laying, result);
  return LW_OK;
}

lw_status lw_order_make(const lw_result *result, lw_order *order, lw_faults *faults) {
  memset(order, 0, sizeof *order);
  lw_status status = lw_plan_build(&result->given, &order->plan, faults);
  if (status != LW_OK) return status;
  note_nearly_closed(order);
  const lw_laying laying = begin(result, order);
  if (order->plan.solid) return make_solid(&laying, result);
  if (lw_corners_hold(&laying, &result->given, faults) != LW_OK) return LW_FAULTS;
  lw_stretches_build(&laying);
  lw_phases_choose(&laying);
  if (lw_rows_build(&laying) != LW_OK) {
    lw_faults_add(faults, LW_FAULT_TOO_MANY, (lw_cell_place){0, 0}, "run n length", "",
                  "fewer runs, courses or steps: at most %d rows of blocks", LW_ROW_MAX);
    return LW_FAULTS;
  }
  lw_bond_choose(&laying);
  lw_order_count(&laying);
  lw_order_runs(&laying);
  lw_order_caps(&laying, result);
  lw_order_cutting(&laying, result);
  lw_order_lines(&laying, result);
  lw_order_notes(&laying, result);
  lw_order_pegs(&laying, result);
  lw_order_work(&laying, result);
  return LW_OK;
}
