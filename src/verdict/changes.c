/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "changes.h"

#include <math.h>

static bool there(const lw_quantity *q) {
  return q->origin != LW_ABSENT;
}

static void set(lw_quantity *q, double si) {
  *q = lw_trial_given(q->kind, si);
}

static void set_length(lw_quantity *q, double si) {
  *q = lw_trial_given(LW_KIND_LENGTH, si);
}

static void grow_given(lw_quantity *q, double by) {
  if (q->origin == LW_GIVEN) set(q, q->si + by);
}

double lw_change_depth_now(const lw_case *c) {
  const lw_quantity *depth = c->wall_kind.value == LW_WALL_COURSES ? &c->block_depth : &c->base_width;
  return there(depth) ? depth->si : 0.0;
}

/* Deeper blocks are of the same stuff: their unit weight stays, a mass given for the old ones goes. Cap,
 * deeper base courses and pad grow with them. */
static void deeper_blocks(double depth_m, lw_case *c) {
  double now = lw_change_depth_now(c), more_m = depth_m - now;
  set_length(&c->block_depth, depth_m);
  if (there(&c->block_mass)) {
    c->block_mass = (lw_quantity){0};
    if (there(&c->block_unit_weight)) set(&c->block_unit_weight, c->block_unit_weight.si);
  }
  if (now <= 0.0) return;
  grow_given(&c->cap_depth, more_m);
  grow_given(&c->base_course_depth, more_m);
  grow_given(&c->pad_width, more_m);
}

bool lw_change_deeper(const lw_trial *trial, double depth_m, lw_case *c) {
  (void)trial;
  if (c->wall_kind.value == LW_WALL_COURSES) {
    deeper_blocks(depth_m, c);
    return true;
  }
  if (there(&c->point[0].x)) return false;
  grow_given(&c->pad_width, depth_m - lw_change_depth_now(c));
  set_length(&c->base_width, depth_m);
  if (there(&c->top_width)) {
    set(&c->top_width, c->top_width.si);
    c->face_batter = (lw_quantity){0}; /* the base grows forward; the face takes what the widths leave */
  }
  return true;
}

/* What is measured downwards from the top comes nearer to it. */
static void top_falls(double less_m, lw_case *c) {
  lw_quantity *depths[] = {&c->water_depth, &c->front_water_depth, &c->overflow_below_top};
  for (size_t i = 0; i < sizeof depths / sizeof *depths; i++) {
    if (depths[i]->origin == LW_GIVEN) set(depths[i], fmax(0.0, depths[i]->si - less_m));
  }
  for (int i = 0; i < LW_SOIL_MAX; i++) {
    lw_quantity *bottom = &c->soil[i].bottom;
    if (bottom->origin == LW_GIVEN) set(bottom, fmax(0.001 * (i + 1), bottom->si - less_m));
  }
}

bool lw_change_lower(const lw_trial *trial, double less_m, lw_case *c) {
  const lw_section *section = &trial->now->wall.section;
  if (there(&c->point[0].x)) return false;
  double exposed = section->height_m - section->embedment_m - less_m;
  if (exposed < 0.05) return false;
  if (c->wall_kind.value == LW_WALL_COURSES) {
    double block = c->block_height.si;
    double count = c->course_count.si - round(less_m / block);
    if (count < 1.0) return false;
    c->course_count = lw_trial_given(LW_KIND_COUNT, count);
    set_length(&c->block_height, block);
    if (there(&c->base_course_count) && c->base_course_count.si > count) set(&c->base_course_count, count);
  }
  set_length(&c->wall_height, exposed);
  if (c->wall_embedment.origin == LW_GIVEN) set_length(&c->wall_embedment, section->embedment_m);
  if (c->level_difference.origin == LW_GIVEN && c->level_difference.si > 0.0) {
    set(&c->level_difference, fmax(0.0, c->level_difference.si - less_m));
  }
  top_falls(less_m, c);
  return true;
}

bool lw_change_outlets(const lw_trial *trial, double stone_m, lw_case *c) {
  (void)trial;
  double outlets = there(&c->drain_outlets) ? c->drain_outlets.si : 0.0;
  double stone = there(&c->stone_width) ? c->stone_width.si : 0.0;
  c->drain_outlets = lw_trial_given(LW_KIND_COUNT, fmax(2.0, outlets));
  set_length(&c->stone_width, fmax(stone_m, stone));
  return true;
}

const lw_soil_row *lw_change_stone_row(const lw_tables *tables) {
  const lw_soil_row *row = lw_tables_soil(tables, "crushed rock");
  return row && row->use == LW_BACKFILL_GOOD && row->free_draining && isfinite(row->friction_rad) ? row
                                                                                                  : NULL;
}

bool lw_change_stone(const lw_trial *trial, double stone_m, lw_case *c) {
  const lw_soil_row *row = lw_change_stone_row(trial->now->tables);
  if (!row) return false;
  for (int i = 0; i < LW_SOIL_MAX; i++) c->soil[i] = (lw_case_soil){0};
  lw_print(c->soil[0].name.text, sizeof c->soil[0].name.text, "%s", row->name);
  c->soil[0].name.origin = LW_GIVEN;
  set_length(&c->stone_width, stone_m);
  return true;
}

bool lw_change_setback(const lw_trial *trial, double setback_m, lw_case *c) {
  (void)trial;
  if (c->wall_kind.value != LW_WALL_COURSES) return false;
  set_length(&c->setback, setback_m);
  return true;
}

/* A uniform load that stops short of the wall is a strip; what it sends from twenty heights on is little. */
static void step_back(const lw_trial *trial, double clear_m, lw_case_load *load) {
  double far_away = clear_m + 20.0 * trial->now->wall.section.height_m;
  switch ((lw_load_kind)load->kind.value) {
  case LW_LOAD_UNIFORM:
    load->name = (lw_words){0};
    load->height = (lw_quantity){0};
    load->kind = (lw_choice){.value = LW_LOAD_STRIP, .origin = LW_GIVEN};
    load->pressure = lw_trial_given(LW_KIND_PRESSURE, load->pressure.si);
    set_length(&load->near_edge, clear_m);
    set_length(&load->far_edge, far_away);
    break;
  case LW_LOAD_STRIP:
    set_length(&load->far_edge, fmax(load->far_edge.si, load->far_edge.si + clear_m - load->near_edge.si));
    set_length(&load->near_edge, fmax(load->near_edge.si, clear_m));
    break;
  case LW_LOAD_LINE:
  case LW_LOAD_POINT: set_length(&load->distance, fmax(load->distance.si, clear_m)); break;
  case LW_LOAD_NONE:
  case LW_LOAD_CAP: break;
  }
}

bool lw_change_load(const lw_trial *trial, double clear_m, lw_case *c) {
  bool any = false;
  for (int i = 0; i < LW_LOAD_MAX; i++) {
    lw_case_load *load = &c->load[i];
    if (load->kind.origin == LW_ABSENT || load->kind.value == LW_LOAD_NONE) continue;
    any = any || load->kind.value != LW_LOAD_CAP;
    step_back(trial, clear_m, load);
  }
  return any;
}
