/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "report.h"

/* The order and the pegs as one object; its keys are documented in docs/order.md. */

static void known(json_t *object, const char *key, double value, bool there) {
  lw_json_set_real(object, key, (lw_number){value, there});
}

static void plan(json_t *root, const lw_order *order) {
  const lw_plan *p = &order->plan;
  json_t *object = lw_json_object(root, "plan");
  lw_json_set_flag(object, "closed", p->closed);
  lw_json_set_double(object, "length_m", p->length_m);
  lw_json_set_flag(object, "solid", p->solid);
  lw_json_set_count(object, "courses", p->solid ? 0 : p->courses);
  json_t *steps = lw_json_list(object, "steps");
  for (int i = 0; i < p->step_count; i++) {
    json_t *step = lw_json_entry(steps);
    lw_json_set_double(step, "at_m", p->step[i].at_m);
    lw_json_set_count(step, "courses", p->step[i].rise);
  }
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
    lw_json_set_flag(run, "no_cut_as_it_is", r->fits);
    lw_json_set_flag(run, "half_blocks", r->half_blocks);
    lw_json_set_text(run, "no_cut_reason", lw_no_fit_words(r->no_fit));
    known(run, "cap_joint_mm", r->cap_joint_m * 1000.0, r->cap_joint_known);
    known(run, "cap_joint_at_m", r->cap_joint_at_m, r->cap_joint_known);
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
    lw_json_set_text(corner, "cap_butt_reason", lw_butt_words(c->butt));
    known(corner, "cap_mitre_mm", c->cap_mitre_m * 1000.0, c->mitred);
    for (int k = 0; k < 2; k++) {
      known(corner, k ? "cap_angle_after_deg" : "cap_angle_before_deg", c->cap_angle_deg[k], c->mitred);
      known(corner, k ? "cap_saw_after_deg" : "cap_saw_before_deg", c->cap_saw_deg[k], c->mitred);
      known(corner, k ? "cap_extra_after_mm" : "cap_extra_before_mm", c->cap_extra_m[k] * 1000.0, c->mitred);
    }
  }
}

static void courses(json_t *root, const lw_order *order) {
  json_t *list = lw_json_list(root, "courses");
  for (int i = 0; i < order->plan.courses && !order->plan.solid; i++) {
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
    known(course, "overlap_run", c->overlap_run, c->overlap_known);
    known(course, "overlap_at_m", c->overlap_at_m, c->overlap_known);
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
    lw_json_set_double(cut, "saw_other_deg", c->saw_other_deg);
    lw_json_set_double(cut, "waste_long_mm", c->waste_long_m * 1000.0);
    lw_json_set_double(cut, "waste_short_mm", c->waste_short_m * 1000.0);
    if (c->cap_depth_m > 0.0) lw_json_set_double(cut, "cap_depth_mm", c->cap_depth_m * 1000.0);
  }
}

static void sawn(json_t *root, const lw_order *order) {
  json_t *list = lw_json_list(root, "sawn_from");
  for (int i = 0; i < order->blank_count; i++) {
    const lw_blank *b = &order->blank[i];
    json_t *blank = lw_json_entry(list);
    lw_json_set_text(blank, "stock", lw_stock_slug(b->stock));
    lw_json_set_count(blank, "count", b->count);
    json_t *pieces = lw_json_list(blank, "pieces_mm");
    for (int k = 0; k < b->pieces; k++) lw_json_append(pieces, json_real(b->piece_m[k] * 1000.0));
    lw_json_set_double(blank, "left_mm", b->rest_m * 1000.0);
    lw_json_set_double(blank, "left_long_mm", b->far_m * 1000.0);
    if (b->cap_depth_m > 0.0) lw_json_set_double(blank, "cap_depth_mm", b->cap_depth_m * 1000.0);
  }
  json_t *object = lw_json_object(root, "sawn");
  for (int i = 0; i < 3; i++) {
    json_t *stock = lw_json_object(object, lw_stock_slug((lw_stock)i));
    lw_json_set_count(stock, "each_from_a_new_one", order->sawn[i]);
    lw_json_set_count(stock, "offcuts_used", order->sawn_again[i]);
  }
}

static void carrying(json_t *root, const lw_order *order) {
  lw_json_set_double(root, "unit_mass_kg", order->unit_mass_kg);
  known(root, "base_unit_mass_kg", order->base_unit_mass_kg, order->base_unit_mass_kg > 0.0);
  known(root, "cap_mass_kg", order->cap_mass_kg, order->cap_mass_kg > 0.0);
  lw_json_set_double(root, "lift_mass_kg", order->lift_mass_kg);
  lw_json_set_double(root, "carried_kg", order->carried_kg);
  lw_json_set_double(root, "spoil_kg", order->spoil_kg);
  lw_json_set_count(root, "spoil_barrows", order->spoil_barrows);
  lw_json_set_count(root, "skips", order->skips);
  lw_json_set_double(root, "loose_m3", order->loose_m3);
  lw_json_set_count(root, "barrows", order->barrows);
  lw_json_set_count(root, "pallets", order->pallets);
  lw_json_set_double(root, "pallet_distance_m", order->pallet_distance_m);
}

static void caps(json_t *root, const lw_order *order) {
  known(root, "cap_line_m", order->cap_line_m, order->has_cap);
  known(root, "cap_whole", order->cap_whole, order->has_cap);
  known(root, "cap_gap_mm", order->cap_gap_m * 1000.0, order->has_cap);
  known(root, "cap_overhang_mm", order->cap_overhang_m * 1000.0, order->has_cap);
  known(root, "cap_joint_needs_mm", order->cap_joint_needs_m * 1000.0, order->has_cap);
  known(root, "cap_wedge_deg", order->cap_wedge_deg, order->cap_wedge_deg > 0.0);
}

static void lines(json_t *root, const lw_order *order) {
  json_t *list = lw_json_list(root, "lines");
  for (int i = 0; i < order->line_count; i++) {
    const lw_order_line *l = &order->line[i];
    json_t *line = lw_json_entry(list);
    lw_json_set_text(line, "slug", lw_order_line_slug(l->kind));
    char name[LW_LINE_NAME], words[LW_LINE_NOTE];
    lw_json_set_text(line, "name", lw_order_line_name(l, order->units, name));
    lw_json_set_text(line, "unit", lw_line_unit_slug(lw_order_line_unit(l->kind)));
    lw_json_set_double(line, "net", l->net);
    known(line, "allowance", l->allowance, l->allowance_known);
    lw_json_set_text(line, "allowance_in", l->pieces ? "pieces" : "share");
    lw_json_set_double(line, "order", l->order);
    known(line, "mass_kg", l->mass_kg, l->mass_kg > 0.0);
    lw_json_set_text(line, "note", lw_order_line_note(l, order->units, words));
    lw_json_set_text(line, "source", l->source);
  }
}

typedef struct assuming {
  const lw_result *result;
  json_t *list;
} assuming;

static void add_assumed(void *context, const lw_echo *echo) {
  const assuming *a = context;
  if (!lw_order_assumes(echo)) return;
  json_t *object = lw_json_entry(a->list);
  lw_json_set_text(object, "item", echo->name);
  lw_json_set_text(object, "words", echo->words);
  lw_json_set_text(object, "source", lw_order_assumed_source(a->result, echo));
}

lw_status lw_report_order_json(const lw_result *result, const lw_order *order, lw_order_page page, int indent,
                               lw_text *out) {
  json_t *root = json_object();
  lw_json_set_text(root, "version", LW_VERSION);
  lw_json_set_text(root, "tables_replaced", result->tables->replaced);
  lw_json_set_text(root, "headline", result->verdict.headline);
  lw_json_set_text(root, "title", result->given.about.title.text);
  lw_json_set_text(root, "mark", result->given.about.mark.text);
  plan(root, order);
  if (page == LW_PAGE_ORDER) {
    corners(root, order);
    courses(root, order);
    cuts(root, order);
    sawn(root, order);
    caps(root, order);
    lines(root, order);
    carrying(root, order);
  } else {
    lw_order_setting_out_json(root, result, order);
  }
  json_t *notes = lw_json_list(root, "notes");
  char slug[LW_NOTE_SLUG], words[LW_ORDER_SENTENCE];
  for (int i = 0; i < order->note_count; i++) {
    json_t *note = lw_json_entry(notes);
    lw_json_set_text(note, "slug", lw_order_note_name(&order->note[i], slug));
    lw_json_set_text(note, "text", lw_order_note_words(order, &order->note[i], words));
  }
  assuming a = {result, lw_json_list(root, "assumptions")};
  lw_echo_each(result, add_assumed, &a);
  return lw_json_write(root, indent, out);
}
