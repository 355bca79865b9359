/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/order.h>

#include <string.h>

#include "json.h"

/* The order and the pegs as one object; its keys are documented in docs/order.md. */

static void known(json_t *object, const char *key, double value, bool there) {
  lw_json_set_real(object, key, (lw_number){value, there});
}

static void plan(json_t *root, const lw_order *order) {
  const lw_plan *p = &order->plan;
  json_t *object = lw_json_object(root, "plan");
  lw_json_set_flag(object, "closed", p->closed);
  lw_json_set_double(object, "length_m", p->length_m);
  lw_json_set_count(object, "courses", p->courses);
  json_t *runs = lw_json_list(object, "runs");
  for (int i = 0; i < p->run_count; i++) {
    const lw_order_run *r = &order->run[i];
    bool curved = p->run[i].radius_m > 0.0 || p->run[i].radius_m < 0.0;
    json_t *run = lw_json_entry(runs);
    lw_json_set_count(run, "run", i + 1);
    lw_json_set_double(run, "length_m", r->length_m);
    lw_json_set_double(run, "top_length_m", r->top_length_m);
    lw_json_set_double(run, "turn_deg", p->run[i].turn_rad * LW_DEG_PER_RAD);
    known(run, "radius_m", r->radius_m, curved);
    known(run, "least_radius_m", r->least_radius_m, r->radius_known);
    known(run, "curve_gap_mm", r->curve_gap_m * 1000.0, curved);
    known(run, "no_cut_shorter_m", r->shorter_m, r->shorter_known);
    known(run, "no_cut_longer_m", r->longer_m, r->longer_known);
  }
}

static void corners(json_t *root, const lw_order *order) {
  json_t *list = lw_json_list(root, "corners");
  for (int i = 0; i < order->corner_count; i++) {
    const lw_order_corner *c = &order->corner[i];
    json_t *corner = lw_json_entry(list);
    lw_json_set_count(corner, "after_run", c->run + 1);
    lw_json_set_double(corner, "turn_deg", c->turn_rad * LW_DEG_PER_RAD);
    lw_json_set_text(corner, "made", lw_corner_slug(c->made));
    lw_json_set_flag(corner, "first_run_through", c->first_through);
    lw_json_set_count(corner, "left", c->left);
    lw_json_set_count(corner, "right", c->right);
    if (!order->has_cap) continue;
    lw_json_set_flag(corner, "cap_mitred", c->mitred);
    lw_json_set_text(corner, "cap_butt_reason", c->butt_reason);
    for (int k = 0; k < 2; k++) {
      known(corner, k ? "cap_angle_after_deg" : "cap_angle_before_deg", c->cap_angle_deg[k], c->mitred);
      known(corner, k ? "cap_saw_after_deg" : "cap_saw_before_deg", c->cap_saw_deg[k], c->mitred);
      known(corner, k ? "cap_extra_after_mm" : "cap_extra_before_mm", c->cap_extra_m[k] * 1000.0, c->mitred);
    }
  }
}

static void courses(json_t *root, const lw_order *order) {
  json_t *list = lw_json_list(root, "courses");
  for (int i = 0; i < order->plan.courses; i++) {
    const lw_course_count *c = &order->course[i];
    json_t *course = lw_json_entry(list);
    lw_json_set_count(course, "course", i + 1);
    lw_json_set_double(course, "behind_base_mm", c->offset_m * 1000.0);
    lw_json_set_double(course, "face_m", c->face_m);
    lw_json_set_count(course, "whole", c->whole);
    lw_json_set_count(course, "half", c->half);
    lw_json_set_count(course, "cut", c->closer);
    lw_json_set_count(course, "mitred", c->mitred);
    lw_json_set_count(course, "left", c->left);
    lw_json_set_count(course, "right", c->right);
    known(course, "overlap_mm", c->overlap_m * 1000.0, c->overlap_known);
  }
  lw_json_set_double(root, "overlap_needs_mm", order->overlap_needs_m * 1000.0);
  lw_json_set_count(root, "overlap_fails_at_course", order->overlap_fails_at);
}

static void cuts(json_t *root, const lw_order *order) {
  json_t *list = lw_json_list(root, "cuts");
  for (int i = 0; i < order->cut_count; i++) {
    const lw_cut *c = &order->cut[i];
    json_t *cut = lw_json_entry(list);
    lw_json_set_text(cut, "kind", lw_cut_slug(c->kind));
    lw_json_set_flag(cut, "base_unit", c->base_unit);
    lw_json_set_count(cut, "count", c->count);
    lw_json_set_double(cut, "long_mm", c->long_m * 1000.0);
    lw_json_set_double(cut, "short_mm", c->short_m * 1000.0);
    lw_json_set_double(cut, "saw_deg", c->saw_deg);
  }
}

static void lines(json_t *root, const lw_order *order) {
  json_t *list = lw_json_list(root, "lines");
  for (int i = 0; i < order->line_count; i++) {
    const lw_order_line *l = &order->line[i];
    json_t *line = lw_json_entry(list);
    lw_json_set_text(line, "slug", l->slug);
    lw_json_set_text(line, "name", l->name);
    lw_json_set_text(line, "unit", l->unit);
    lw_json_set_double(line, "net", l->net);
    known(line, "allowance", l->allowance, l->allowance_known);
    lw_json_set_text(line, "allowance_in", l->pieces ? "pieces" : "share");
    lw_json_set_double(line, "order", l->order);
    known(line, "mass_kg", l->mass_kg, l->mass_kg > 0.0);
    lw_json_set_text(line, "note", l->note);
    lw_json_set_text(line, "source", l->source);
  }
  lw_json_set_double(root, "unit_mass_kg", order->unit_mass_kg);
  lw_json_set_double(root, "lift_mass_kg", order->lift_mass_kg);
  lw_json_set_double(root, "carried_kg", order->carried_kg);
  lw_json_set_count(root, "pallets", order->pallets);
  lw_json_set_double(root, "pallet_distance_m", order->pallet_distance_m);
  known(root, "cap_overhang_mm", order->cap_overhang_m * 1000.0, order->has_cap);
  known(root, "cap_wedge_deg", order->cap_wedge_deg, order->cap_wedge_deg > 0.0);
}

static void pegs(json_t *root, const lw_pegs *p) {
  json_t *list = lw_json_list(root, "pegs");
  for (int i = 0; i < p->peg_count; i++) {
    json_t *peg = lw_json_entry(list);
    lw_json_set_text(peg, "peg", p->peg[i].name);
    lw_json_set_double(peg, "x_m", p->peg[i].at.x_m);
    lw_json_set_double(peg, "y_m", p->peg[i].at.y_m);
    lw_json_set_double(peg, "level_m", p->peg[i].level_m);
  }
  list = lw_json_list(root, "levels");
  for (int i = 0; i < p->level_count; i++) {
    json_t *level = lw_json_entry(list);
    lw_json_set_text(level, "name", p->level[i].name);
    lw_json_set_double(level, "level_m", p->level[i].level_m);
  }
  list = lw_json_list(root, "check_distances");
  for (int i = 0; i < p->check_count; i++) {
    json_t *check = lw_json_entry(list);
    lw_json_set_text(check, "between", p->check[i].name);
    lw_json_set_double(check, "distance_m", p->check[i].distance_m);
    lw_json_set_double(check, "tolerance_mm", p->check[i].tolerance_m * 1000.0);
    lw_json_set_double(check, "angle_deg", p->check[i].angle_deg);
  }
  list = lw_json_list(root, "right_angles");
  for (int i = 0; i < p->square_count; i++) {
    json_t *square = lw_json_entry(list);
    lw_json_set_count(square, "corner", p->square[i].corner);
    lw_json_set_double(square, "three_m", 3.0 * p->square[i].unit_m);
    lw_json_set_double(square, "four_m", 4.0 * p->square[i].unit_m);
    lw_json_set_double(square, "five_m", 5.0 * p->square[i].unit_m);
  }
  lw_json_set_double(root, "base_line_in_front_mm", p->base_offset_m * 1000.0);
  known(root, "pipe_high_m", p->pipe_high_m, p->pipe_known);
  known(root, "pipe_outlet_m", p->pipe_outlet_m, p->pipe_known);
  known(root, "pipe_length_m", p->pipe_length_m, p->pipe_known);
  known(root, "pipe_fall", p->pipe_fall, p->pipe_known);
  lw_json_set_double(root, "batter_reading_mm", p->batter_reading_m * 1000.0);
  lw_json_set_double(root, "batter_alarm_mm", p->batter_alarm_m * 1000.0);
  lw_json_set_double(root, "lean_alarm_mm", p->lean_alarm_m * 1000.0);
  lw_json_set_double(root, "joint_alarm_mm", p->joint_alarm_m * 1000.0);
}

static void add_assumed(void *context, const lw_echo *echo) {
  bool ours = strcmp(echo->item->part, "plan") == 0 || strcmp(echo->item->part, "order") == 0;
  if (!ours || echo->origin != LW_ASSUMED) return;
  json_t *object = lw_json_entry(context);
  lw_json_set_text(object, "item", echo->name);
  lw_json_set_text(object, "words", echo->words);
}

lw_status lw_report_order_json(const lw_result *result, const lw_order *order, lw_order_page page, int indent,
                               lw_text *out) {
  json_t *root = json_object();
  lw_json_set_text(root, "version", LW_VERSION);
  lw_json_set_text(root, "headline", result->verdict.headline);
  lw_json_set_text(root, "title", result->given.title.text);
  lw_json_set_text(root, "mark", result->given.mark.text);
  plan(root, order);
  if (page == LW_PAGE_ORDER) {
    corners(root, order);
    courses(root, order);
    cuts(root, order);
    lines(root, order);
  } else {
    pegs(root, &order->pegs);
    json_t *list = lw_json_list(root, "work");
    for (int i = 0; i < order->work_count; i++) {
      json_t *step = lw_json_entry(list);
      lw_json_set_flag(step, "hold", order->work[i].hold);
      lw_json_set_text(step, "text", order->work[i].text);
    }
  }
  json_t *notes = lw_json_list(root, "notes");
  for (int i = 0; i < order->note_count; i++) {
    json_t *note = lw_json_entry(notes);
    lw_json_set_text(note, "slug", order->note[i].slug);
    lw_json_set_text(note, "text", order->note[i].text);
  }
  lw_echo_each(result, add_assumed, lw_json_list(root, "assumptions"));
  return lw_json_write(root, indent, out);
}
