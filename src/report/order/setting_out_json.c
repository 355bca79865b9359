/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report.h"

/* The pegs, levels, pipe, order of work and readings; their keys are documented in docs/order.md. */

static void known(json_t *object, const char *key, double value, bool there) {
  lw_json_set_real(object, key, (lw_number){value, there});
}

static void setting_out(json_t *root, const lw_setting_out *p) {
  char name[LW_SPOT_NAME];
  json_t *list = lw_json_list(root, "pegs");
  for (int i = 0; i < p->peg_count; i++) {
    json_t *peg = lw_json_entry(list);
    lw_json_set_text(peg, "peg", lw_peg_name(&p->peg[i], name));
    lw_json_set_double(peg, "x_m", p->peg[i].at.x_m);
    lw_json_set_double(peg, "y_m", p->peg[i].at.y_m);
    lw_json_set_double(peg, "level_m", p->peg[i].level_m);
  }
  list = lw_json_list(root, "levels");
  for (int i = 0; i < p->level_count; i++) {
    json_t *level = lw_json_entry(list);
    lw_json_set_text(level, "name", lw_level_name(&p->level[i], name));
    lw_json_set_double(level, "level_m", p->level[i].level_m);
  }
  lw_json_set_double(root, "base_line_in_front_mm", p->base_offset_m * 1000.0);
}

static void checks(json_t *root, const lw_setting_out *p) {
  char name[LW_SPOT_NAME];
  json_t *list = lw_json_list(root, "check_distances");
  for (int i = 0; i < p->check_count; i++) {
    json_t *check = lw_json_entry(list);
    lw_json_set_text(check, "between", lw_peg_check_name(&p->check[i], name));
    lw_json_set_double(check, "distance_m", p->check[i].distance_m);
    lw_json_set_double(check, "tolerance_mm", p->check[i].tolerance_m * 1000.0);
    known(check, "angle_deg", p->check[i].angle_deg, p->check[i].angle_deg > 0.0);
  }
  list = lw_json_list(root, "right_angles");
  for (int i = 0; i < p->square_count; i++) {
    json_t *square = lw_json_entry(list);
    lw_json_set_count(square, "corner", p->square[i].corner);
    lw_json_set_double(square, "three_m", 3.0 * p->square[i].unit_m);
    lw_json_set_double(square, "four_m", 4.0 * p->square[i].unit_m);
    lw_json_set_double(square, "five_m", 5.0 * p->square[i].unit_m);
  }
}

static void pipe(json_t *root, const lw_setting_out *p) {
  char name[LW_SPOT_NAME];
  json_t *list = lw_json_list(root, "pipe");
  for (int i = 0; i < p->invert_count; i++) {
    json_t *invert = lw_json_entry(list);
    lw_json_set_text(invert, "name", lw_invert_name(&p->invert[i], name));
    lw_json_set_double(invert, "along_m", p->invert[i].along_m);
    lw_json_set_double(invert, "level_m", p->invert[i].level_m);
  }
  lw_json_set_count(root, "outlets", p->outlet_count);
  known(root, "pipe_high_m", p->pipe_high_m, p->pipe_known);
  known(root, "pipe_outlet_m", p->pipe_outlet_m, p->pipe_known);
  known(root, "pipe_below_front_mm", p->pipe_below_front_m * 1000.0, p->pipe_known);
  known(root, "pipe_length_m", p->pipe_length_m, p->pipe_known);
  known(root, "pipe_fall", p->pipe_fall, p->pipe_known);
  bool falls = p->pipe_known && p->pipe_fall > 0.0;
  known(root, "pipe_fall_one_in", falls ? 1.0 / p->pipe_fall : 0.0, falls);
}

static void work(json_t *root, const lw_result *result, const lw_order *order) {
  const char *plant = result->construction.plant.name;
  char words[LW_ORDER_SENTENCE];
  json_t *list = lw_json_list(root, "work");
  for (int i = 0; i < order->work_count; i++) {
    json_t *step = lw_json_entry(list);
    lw_json_set_flag(step, "hold", order->work[i].hold);
    lw_json_set_text(step, "text", lw_work_words(order, &order->work[i], plant, words));
  }
}

static void readings(json_t *root, const lw_setting_out *p) {
  json_t *list = lw_json_list(root, "batter_readings");
  for (int i = 0; i < p->station_count; i++) {
    json_t *station = lw_json_entry(list);
    lw_json_set_double(station, "along_m", p->station[i].along_m);
    lw_json_set_double(station, "height_m", p->station[i].height_m);
    lw_json_set_double(station, "as_drawn_mm", p->station[i].reading_m * 1000.0);
    lw_json_set_double(station, "lean_alarm_mm", p->station[i].lean_alarm_m * 1000.0);
  }
  lw_json_set_double(root, "batter_reading_mm", p->batter_reading_m * 1000.0);
  lw_json_set_double(root, "batter_alarm_mm", p->batter_alarm_m * 1000.0);
  lw_json_set_double(root, "lean_alarm_mm", p->lean_alarm_m * 1000.0);
  lw_json_set_double(root, "joint_alarm_mm", p->joint_alarm_m * 1000.0);
}

void lw_order_setting_out_json(json_t *root, const lw_result *result, const lw_order *order) {
  const lw_setting_out *p = &order->setting_out;
  setting_out(root, p);
  checks(root, p);
  pipe(root, p);
  work(root, result, order);
  readings(root, p);
}
