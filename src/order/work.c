/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "work.h"

#include "tables/known.h"
#include "laying.h"

/* The order of work, with the points at which to stop and look before something is covered up. Common
 * practice throughout; the figures are those of the wall and of tables/ordering.csv. */

static void add_of(lw_order *order, lw_work_kind kind, double length_m) {
#define HOLDS(name, hold) hold,
  static const bool holds[] = {LW_WORK_STEPS(HOLDS)};
#undef HOLDS
  if (order->work_count >= LW_WORK_MAX) return;
  order->work[order->work_count++] = (lw_work_step){kind, holds[kind], length_m};
}

static void add(lw_order *order, lw_work_kind kind) {
  add_of(order, kind, 0.0);
}

static void ground(const lw_laying *laying) {
  lw_order *order = laying->order;
  add(order, LW_WORK_SETTLED);
  add(order, LW_WORK_DATUM);
  add(order, LW_WORK_DIG);
  add(order, LW_WORK_LOOK_AT_DIG);
  if (!(laying->pad_m > 0.0)) return;
  add_of(order, LW_WORK_PAD, laying->pad_m);
  if (order->plan.step_count > 0)
    add_of(order, LW_WORK_PAD_AT_STEPS, lw_known_value(laying->tables, LW_ORDERING_STEP_UNDER));
  add(order, LW_WORK_LOOK_AT_PAD);
}

static void blocks(const lw_laying *laying) {
  lw_order *order = laying->order;
  bool steps_back = laying->plan->setback_m > 0.0;
  add_of(order, LW_WORK_FIRST_COURSE, lw_known_value(laying->tables, LW_ORDERING_BASE_LEVEL_TOLERANCE));
  add(order, LW_WORK_LOOK_AT_FIRST);
  if (steps_back) add(order, LW_WORK_SETBACK);
  if (steps_back && order->plan.step_count > 0) add(order, LW_WORK_SETBACK_AT_STEPS);
  add_of(order, LW_WORK_COURSES, lw_known_value(laying->tables, LW_ORDERING_SOIL_LAYER));
}

static void solid(const lw_laying *laying) {
  add(laying->order, LW_WORK_SOLID);
  add_of(laying->order, LW_WORK_SOLID_FILL, lw_known_value(laying->tables, LW_ORDERING_SOIL_LAYER));
}

/* The check's own distance: two figures for one thing are one too many. */
static void plant(lw_order *order, lw_number keep_m) {
  if (!keep_m.known)
    add(order, LW_WORK_NO_PLANT);
  else if (keep_m.value > 0.0)
    add_of(order, LW_WORK_PLANT, keep_m.value);
}

static lw_work_kind look_at_stone(const lw_laying *laying) {
  bool graded = laying->filter_told && laying->filter == LW_STONE_FILTER_GRADED;
  if (graded) return LW_WORK_LOOK_AT_FILTER;
  return lw_laying_has_cloth(laying) ? LW_WORK_LOOK_AT_STONE : LW_WORK_LOOK_AT_BARE_STONE;
}

static void finish(const lw_laying *laying) {
  lw_order *order = laying->order;
  if (order->setting_out.pipe_known) {
    add(order, LW_WORK_PIPE);
    add(order, LW_WORK_LOOK_AT_PIPE);
  }
  if (laying->stone_m > 0.0) add(order, look_at_stone(laying));
  if (order->has_cap) add(order, LW_WORK_CAPS);
  add(order, LW_WORK_HAND_OVER);
  add(order, LW_WORK_READ_AGAIN);
}

void lw_order_work(const lw_laying *laying) {
  ground(laying);
  (laying->plan->solid ? solid : blocks)(laying);
  plant(laying->order, laying->plant_m);
  finish(laying);
}
