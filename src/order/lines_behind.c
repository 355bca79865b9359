/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "lines_behind.h"

#include <math.h>

#include "tables/known.h"
#include "note.h"
#include "plan.h"
#include "plan_area.h"
#include "take_off.h"

/* Lines of what is filled in behind the blocks and into them: part by part of the plan, course by course, for
 * each course has a rear of its own. */

/* The stone of a part as a body: its volume, and the cloth around it. */
typedef struct stone_body {
  double volume_m3, cloth_m2, end_m2, wide_m; /* its cut across; its width at the top */
} stone_body;

/* Of one course: from the blocks' rear back to the stone's, between two levels. */
typedef struct layer {
  double low_m, high_m, rear_m, reach_m;
} layer;

/* What a layer has of it up to a level. */
static layer layer_of(const lw_take_off *t, int index, double top_m, double reach_m) {
  const lw_rear *r = &t->rear[index];
  return (layer){r->low_m, fmin(r->high_m, top_m), r->rear_m, fmax(reach_m, r->rear_m + t->stone_m)};
}

static double level_below_top(const lw_take_off *t, double otherwise_m) {
  lw_number given = t->laying->soil_below_top_m;
  return t->high_m - (given.known ? given.value : otherwise_m);
}

/* The stone stands to the soil that covers it. */
static double stone_top(const lw_take_off *t) {
  return t->stone_m > 0.0 ? level_below_top(t, 0.0) - t->o->soil_plug.si : 0.0;
}

/* What is dug behind the pad, for the pipe and to work in, is filled with stone as well. */
static void add_pocket(const lw_take_off *t, const lw_base_part *p, stone_body *body) {
  double deep = t->pad_m + t->bedding_m, from = p->offset_m + p->pad_rear_m, to = p->offset_m + p->dig_rear_m;
  if (!(deep > 0.0) || to <= from) return;
  body->volume_m3 += fmax(0.0, lw_part_strip(p, p->pad_rear_m, p->dig_rear_m)) * deep;
  body->cloth_m2 += (lw_face_at(&p->face, from) + lw_face_at(&p->face, to)) * deep;
  body->end_m2 += (to - from) * deep;
}

/* Flat cloth under the lowest layer and over the highest, and on every ledge between two; upright cloth in
 * front and behind. */
static stone_body stone_of(const lw_take_off *t, const lw_base_part *p) {
  stone_body body = {0};
  layer last = {.reach_m = p->offset_m + p->depth_m + t->stone_m};
  for (int i = p->raised; i < t->rear_count; i++) {
    layer l = layer_of(t, i, stone_top(t), last.reach_m);
    double high = l.high_m - l.low_m;
    if (high <= 0.0) break;
    double floor = lw_face_strip(&p->face, l.rear_m, l.reach_m);
    double ledges = fabs(lw_face_strip(&p->face, last.rear_m, l.rear_m)) +
                    fabs(lw_face_strip(&p->face, last.reach_m, l.reach_m));
    body.volume_m3 += fmax(0.0, floor) * high;
    body.cloth_m2 += i == p->raised ? fmax(0.0, floor) : ledges;
    body.cloth_m2 += fmax(0.0, lw_face_at(&p->face, l.rear_m) + lw_face_at(&p->face, l.reach_m)) * high;
    body.end_m2 += (l.reach_m - l.rear_m) * high;
    last = l;
  }
  body.wide_m = last.reach_m - last.rear_m;
  double middle = 0.5 * (last.rear_m + last.reach_m);
  body.cloth_m2 += fmax(0.0, lw_face_strip(&p->face, last.rear_m, last.reach_m));
  if (body.wide_m > 0.0) body.cloth_m2 += fmax(0.0, lw_face_at(&p->face, middle)) * t->o->geotextile_lap.si;
  add_pocket(t, p, &body);
  body.cloth_m2 += p->free_ends * body.end_m2;
  return body;
}

/* Behind the centre of a curve a strip folds over itself. */
static void note_past_centre(const lw_take_off *t) {
  const lw_plan *plan = t->laying->plan;
  double rear = 0.0;
  for (int i = 0; i < t->rear_count; i++) rear = fmax(rear, t->rear[i].rear_m + t->stone_m);
  for (int i = 0; i < plan->run_count; i++) {
    double radius = plan->run[i].radius_m;
    if (!(radius > 0.0) || radius >= rear) continue;
    lw_order_note_add(t->laying->order, &(lw_order_note){.kind = LW_NOTE_STONE_PAST_CENTRE, .number = i + 1});
  }
}

/* At a step the lower stone runs on behind the lower pad, and ends where the upper begins. */
static stone_body all_stone(const lw_take_off *t) {
  stone_body all = {0}, last = {0};
  for (int i = 0; i < t->part_count; i++) {
    const lw_base_part *p = &t->part[i];
    stone_body body = stone_of(t, p);
    int rise = i > 0 ? lw_part_rise(t, i - 1) : 0;
    const lw_base_part *upper = rise > 0 ? p : &t->part[i > 0 ? i - 1 : 0];
    double steps = fabs((double)rise) * t->laying->plan->course_m * t->step_under_m;
    all.volume_m3 += body.volume_m3 + steps * (upper->dig_rear_m - upper->pad_rear_m);
    all.cloth_m2 += body.cloth_m2 + (i > 0 ? fabs(body.end_m2 - last.end_m2) : 0.0);
    last = body;
  }
  return all;
}

/* Along the middle of the stone, behind the lowest course. */
static double pipe_length(const lw_take_off *t) {
  double length = 0.0;
  for (int i = 0; i < t->part_count; i++) {
    const lw_base_part *p = &t->part[i];
    length += lw_face_at(&p->face, p->offset_m + p->depth_m + t->stone_m / 2.0);
  }
  return fmax(0.0, length);
}

static void drain(const lw_take_off *t) {
  if (!(t->stone_m > 0.0)) return;
  stone_body stone = all_stone(t);
  note_past_centre(t);
  lw_order_line *l = lw_line_put(t, &(lw_order_line){.kind = LW_LINE_DRAINAGE_STONE, .net = stone.volume_m3},
                                 &t->o->stone_allowance);
  l->behind_pad = t->pad_m > 0.0;
  l->mass_kg = l->order * lw_known_value(t->tables, LW_ORDERING_STONE_DENSITY);
  if (lw_laying_has_cloth(t->laying))
    lw_line_put(t, &(lw_order_line){.kind = LW_LINE_GEOTEXTILE, .net = stone.cloth_m2},
                &t->o->geotextile_allowance);
  double outlets = t->laying->outlets;
  if (outlets < 0.5) {
    lw_order_note_add(t->laying->order, &(lw_order_note){.kind = LW_NOTE_NO_OUTLET});
    return;
  }
  lw_line_put(
      t,
      &(lw_order_line){.kind = LW_LINE_DRAIN_PIPE, .net = pipe_length(t) + outlets * t->o->outlet_length.si},
      &t->o->pipe_allowance);
}

/* Inside the wall from the ground in front up: behind the stone, and over it to the blocks. */
static double soil_volume(const lw_take_off *t) {
  const lw_plan *plan = t->laying->plan;
  double top = level_below_top(t, lw_known_value(t->tables, LW_ORDERING_SOIL_BELOW_CAP));
  double stone = stone_top(t), ground = t->laying->embedment_m, volume = 0.0,
         reach = t->part[0].depth_m + t->stone_m;
  for (int i = 0; i < t->rear_count; i++) {
    layer l = layer_of(t, i, top, reach);
    double low = fmax(l.low_m, ground), beside = fmax(0.0, fmin(l.high_m, stone) - low);
    double all = fmax(0.0, l.high_m - low);
    volume += lw_plan_inside(plan, l.reach_m) * beside + lw_plan_inside(plan, l.rear_m) * (all - beside);
    reach = l.reach_m;
  }
  return volume;
}

static void soil(const lw_take_off *t) {
  const lw_plan *plan = t->laying->plan;
  bool bed = plan->closed && t->laying->bed;
  double volume = bed ? soil_volume(t) : 0.0;
  if (!(volume > 0.0)) {
    lw_order_note_add(t->laying->order, &(lw_order_note){.kind = LW_NOTE_NO_SOIL});
    return;
  }
  lw_order_line *l = lw_line_put(t, &(lw_order_line){.kind = LW_LINE_SOIL, .net = volume}, &t->o->settlement);
  l->mass_kg = l->order * t->laying->site->soil[0].light_unit_weight_kn_per_m3 * 1000.0 / 9.80665;
}

/* The soil's side of the blocks from the underside of the lowest up, with the ledge of deeper ones. */
static void lining(const lw_take_off *t) {
  double area = 0.0;
  if (t->o->lining.value != LW_YES) return;
  for (int n = 0; n < t->part_count; n++) {
    const lw_base_part *p = &t->part[n];
    for (int i = p->raised; i < t->rear_count; i++) {
      layer l = layer_of(t, i, t->high_m, 0.0);
      area += lw_face_at(&p->face, l.rear_m) * (l.high_m - l.low_m);
      if (i > p->raised) area += fabs(lw_face_strip(&p->face, t->rear[i - 1].rear_m, l.rear_m));
    }
  }
  lw_line_put(t, &(lw_order_line){.kind = LW_LINE_LINING, .net = area}, &t->o->lining_allowance);
}

/* The voids of hollow blocks, and what is open between the tails of those that taper. A check takes the
 * lightest concrete, so that little fill holds the wall down; an order the densest: enough is there. */
static void fill(const lw_take_off *t) {
  const lw_plan *plan = t->laying->plan;
  const lw_case_courses *courses = t->laying->courses;
  if (plan->solid || courses->fill_unit_weight.origin == LW_ABSENT) return;
  double concrete = lw_known_value(t->tables, LW_ORDERING_BLOCK_CONCRETE) * 9.80665 / 1000.0;
  double full = t->laying->mean_share;
  double voids = 1.0 - full + full * fmax(0.0, 1.0 - courses->block_unit_weight.si / concrete), body = 0.0;
  for (int n = 0; n < t->part_count; n++)
    for (int i = t->part[n].raised; i < plan->courses; i++)
      body += lw_face_strip(&t->part[n].face, lw_plan_offset(plan, i), t->rear[i].rear_m) * plan->course_m;
  if (!(body * voids > 0.0)) return;
  lw_order_line *l = lw_line_put(
      t, &(lw_order_line){.kind = LW_LINE_BLOCK_FILL, .between_tails = full < 1.0, .net = body * voids},
      &t->o->stone_allowance);
  l->mass_kg = l->order * courses->fill_unit_weight.si * 1000.0 / 9.80665;
}

void lw_lines_behind(const lw_take_off *t) {
  drain(t);
  soil(t);
  lining(t);
  fill(t);
}
