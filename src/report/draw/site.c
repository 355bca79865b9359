/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "hatch.h"
#include "report/distance.h"
#include "sketch.h"

/* What the section shows besides: the bedding, the drain pipe, the boundary, and what the ticks and dots on
 * the wall mean. */

double lw_sketch_bedding(const lw_sketch *sketch) {
  const lw_quantity *bedding = &sketch->result->given.order.bedding_thickness;
  bool laid = sketch->result->wall.site.pad.thickness_m > 0.0 && bedding->origin == LW_GIVEN;
  return laid ? bedding->si : 0.0;
}

double lw_sketch_under(const lw_sketch *sketch) {
  return sketch->result->wall.site.pad.thickness_m + lw_sketch_bedding(sketch);
}

/* Where it comes out, behind the wall, or on the pad where that lies higher; its width is nobody's, and
 * said to be so. */
static void pipe(lw_sketch *s) {
  enum { SIDES = 20 };
  static const double RADIUS_M = 0.05;
  const lw_case *c = &s->result->given;
  bool there = c->water.drain_outlets.origin == LW_GIVEN && c->water.drain_outlets.si > 0.5;
  if (!there || s->result->wall.site.stone_width_m < 2.0 * RADIUS_M) return;
  double out = c->wall.embedment.si + c->water.outlet_level.si;
  bool on_pad = out <= -lw_sketch_bedding(s);
  double invert = on_pad ? -lw_sketch_bedding(s) : out, x = s->result->wall.section.rear_m + 1.4 * RADIUS_M;
  lw_xy_mm round[SIDES];
  for (int i = 0; i < SIDES; i++) {
    double turn = 6.283185307179586 * i / SIDES;
    round[i] = lw_sketch_at(s, x + RADIUS_M * cos(turn), invert + RADIUS_M * (1.0 + sin(turn)));
  }
  lw_drawing_area(s->paper, LW_PEN_SEEN, LW_FILL_PAPER, round, SIDES);
  lw_xy_mm high = lw_sketch_at(s, x - RADIUS_M, invert + 2.0 * RADIUS_M);
  lw_xy_mm low = lw_sketch_at(s, x + RADIUS_M, invert); /* its number stands beside it, never on it */
  lw_sketch_take(s, (lw_box){high.x_mm, high.y_mm, low.x_mm, low.y_mm});
  bool pad = s->result->wall.site.pad.thickness_m > 0.0;
  lw_sketch_note(s, x + 2.0 * RADIUS_M, invert + RADIUS_M, "drain pipe, drawn %s wide; %s%s",
                 lw_sketch_mm(s, 2.0 * RADIUS_M).text,
                 !on_pad ? "at its outlet it lies so, and it rises from there along the wall"
                         : "at its high end it lies level with ",
                 !on_pad ? ""
                 : pad   ? "the top of the pad, and falls from there"
                         : "the wall's base, and falls from there");
}

static void bedding(lw_sketch *s) {
  const lw_wall *w = &s->result->wall;
  double deep = lw_sketch_bedding(s), rear = w->section.base_width_m;
  if (deep <= 0.0) return;
  lw_xy_mm band[] = {lw_sketch_at(s, 0.0, 0.0), lw_sketch_at(s, rear, 0.0), lw_sketch_at(s, rear, -deep),
                     lw_sketch_at(s, 0.0, -deep)};
  lw_drawing_area(s->paper, LW_PEN_NONE, LW_FILL_PAPER, band, 4);
  lw_drawing_hatch(s->paper, LW_HATCH_SAND, band, 4);
  lw_drawing_area(s->paper, LW_PEN_SEEN, LW_FILL_NONE, band, 4);
  lw_sketch_note(s, 0.5 * rear, -0.5 * deep, "bedding, %s; no check counts on it",
                 lw_sketch_mm(s, deep).text);
}

/* Behind, where it is the worse: there the wedge and the dig reach. */
static void boundary(lw_sketch *s) {
  const lw_quantity *q = &s->result->given.site.boundary_distance;
  if (q->origin != LW_GIVEN) return;
  double x = s->result->wall.section.base_width_m + q->si, air = 3.0 / s->mm_per_m;
  if (x > s->right_m && s->in_page) return;
  if (x > s->right_m) {
    double edge = s->right_m - 2.0 / s->mm_per_m;
    lw_sketch_note(s, edge, 0.7 * lw_sketch_ground_behind(s, edge),
                   "boundary %s away, out of the picture (on which side is not given)",
                   lw_distance_told(s->result->units, q).text);
    return;
  }
  lw_xy_mm line[] = {lw_sketch_at(s, x, -air), lw_sketch_at(s, x, lw_sketch_ground_behind(s, x) + air)};
  lw_drawing_line(s->paper, LW_PEN_CHAIN, line, 2);
  lw_sketch_note(s, x, 0.25 * lw_sketch_ground_behind(s, x),
                 "boundary %s away; its side is not given: drawn behind, the worse side",
                 lw_distance_told(s->result->units, q).text);
}

void lw_sketch_site(lw_sketch *sketch) {
  pipe(sketch);
  bedding(sketch);
  boundary(sketch);
  lw_sketch_other_wall(sketch);
  lw_sketch_fence(sketch);
}
