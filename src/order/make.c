/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <string.h>

#include <lowwall/order.h>

#include "sheet/taper.h"
#include "sheet/values.h"
#include "tables/known.h"
#include "bond.h"
#include "caps.h"
#include "count.h"
#include "cutting.h"
#include "laying.h"
#include "lines.h"
#include "note.h"
#include "notes.h"
#include "setting_out.h"
#include "phases.h"
#include "plan.h"
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

static double if_given(const lw_quantity *q) {
  return q->origin == LW_GIVEN ? q->si : 0.0;
}

static double if_present(const lw_quantity *q) {
  return lw_si_or(q, 0.0);
}

/* The one place of an order that asks what was told and what was not. */
static void ask(const lw_case *c, lw_laying *laying) {
  bool below = c->ground.soil_below_top.origin == LW_GIVEN;
  laying->items = &c->order;
  laying->courses = &c->courses;
  laying->unit_weight_kn_per_m3 = c->wall.unit_weight.si;
  laying->embedment_m = c->wall.embedment.si;
  laying->soil_m = c->wall.embedment.si + c->wall.height.si - c->ground.soil_below_top.si;
  laying->soil_below_top_m = (lw_number){c->ground.soil_below_top.si, below};
  laying->cap_m = if_present(&c->courses.cap_height);
  laying->pad_m = if_given(&c->pad.thickness);
  laying->pad_wide_m = if_given(&c->pad.width);
  laying->stone_m = if_given(&c->ground.stone_width);
  laying->filter_told = c->water.stone_filter.origin == LW_GIVEN;
  laying->filter = (lw_stone_filter)c->water.stone_filter.value;
  laying->bedding_m = laying->pad_m > 0.0 ? c->order.bedding_thickness.si : 0.0;
  laying->outlets = if_given(&c->water.drain_outlets);
  laying->outlet_level_m = if_present(&c->water.outlet_level);
  laying->bed = c->site.behind.value == LW_BEHIND_BED;
  laying->mean_share = lw_case_mean_share(c);
  laying->asked = (lw_corner_unit)c->order.corner_unit.value;
  laying->corner_unit_m = c->order.corner_length.si;
  laying->half_cut = c->order.half_unit.value == LW_HALF_CUT;
  laying->kerf_m = c->order.saw_kerf.si;
}

static lw_laying begin(const lw_result *result, lw_order *order) {
  const lw_construction *construction = &result->construction;
  lw_laying laying = {.plan = &order->plan,
                      .order = order,
                      .tables = result->tables,
                      .site = &result->wall.site,
                      .section = &result->wall.section,
                      .influence_m = result->influence.reach_m,
                      .overlap_share = lw_known_value(result->tables, LW_ORDERING_OVERLAP_LEAST),
                      .mitre_share = lw_known_value(result->tables, LW_ORDERING_MITRE_PIECE_LEAST),
                      .cut_share = lw_known_value(result->tables, LW_ORDERING_CUT_LEAST),
                      .cut_most_share = lw_known_value(result->tables, LW_ORDERING_CUT_MOST)};
  if (construction->studied) laying.plant_m = construction->stand_off.keep_m;
  ask(&result->given, &laying);
  return laying;
}

/* Nothing is laid block by block: the plan, what it takes, and where it stands. */
static lw_status make_solid(const lw_laying *laying) {
  lw_order *order = laying->order;
  const lw_plan *plan = laying->plan;
  lw_stretches_build(laying);
  order->corner_count = 0;
  for (int i = 0; i < plan->run_count; i++) {
    lw_order_run *r = &order->run[i];
    *r = (lw_order_run){.run = i, .length_m = plan->run[i].length_m};
    r->top_length_m = lw_plan_run_length(plan, i, plan->setback_m);
  }
  lw_order_lines(laying);
  lw_order_notes(laying);
  lw_order_setting_out(laying);
  lw_order_work(laying);
  return LW_OK;
}

static lw_status make(const lw_result *result, lw_order *order, lw_plan_fault *fault) {
  const lw_laying laying = begin(result, order);
  lw_status status = lw_plan_build(&laying, &order->plan, fault);
  if (status != LW_OK) return status;
  note_nearly_closed(order);
  if (order->plan.solid) return make_solid(&laying);
  if (lw_corners_hold(&laying, fault) != LW_OK) return LW_FAULTS;
  lw_stretches_build(&laying);
  lw_phases_choose(&laying);
  if (lw_rows_build(&laying) != LW_OK) {
    *fault = (lw_plan_fault){.kind = LW_PLAN_ROWS};
    return LW_FAULTS;
  }
  lw_bond_choose(&laying);
  lw_order_count(&laying);
  lw_order_runs(&laying);
  lw_order_caps(&laying);
  lw_order_cutting(&laying);
  lw_order_lines(&laying);
  lw_order_notes(&laying);
  lw_order_setting_out(&laying);
  lw_order_work(&laying);
  return LW_OK;
}

lw_status lw_order_make(const lw_result *result, lw_order *order, lw_plan_fault *fault) {
  memset(order, 0, sizeof *order);
  order->units = result->units;
  lw_status status = make(result, order, fault);
  if (status != LW_OK) fault->units = result->units;
  return status;
}
