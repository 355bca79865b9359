/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "trapezoid.h"

#include <math.h>

#include "outline.h"
#include "sheet/values.h"

/* The stem between toe and heel: its four corners. */
typedef struct stem {
  lw_corner front_foot, rear_foot, rear_top, front_top;
} stem;

static stem stem_of(const lw_case *c, double height_m) {
  double slab = lw_si_or(&c->shape.slab_thickness, 0.0), rise = height_m - slab;
  double front = lw_si_or(&c->shape.toe_length, 0.0);
  double rear = c->shape.base_width.si - lw_si_or(&c->shape.heel_length, 0.0);
  return (stem){
      .front_foot = {front, slab},
      .rear_foot = {rear, slab},
      .rear_top = {rear - rise * tan(lw_si_or(&c->shape.back_batter, 0.0)), height_m},
      .front_top = {front + rise * tan(lw_si_or(&c->shape.face_batter, 0.0)), height_m},
  };
}

/* The wedge between a leaning face and the upright core, whichever way the face leans. */
static void lean_add(lw_section *section, lw_part_kind kind, lw_corner foot, lw_corner top,
                     double unit_weight) {
  if (fabs(foot.x_m - top.x_m) < 1e-12) return;
  bool outward = kind == LW_PART_BACK ? top.x_m > foot.x_m : top.x_m < foot.x_m;
  lw_corner third = outward ? (lw_corner){foot.x_m, top.y_m} : (lw_corner){top.x_m, foot.y_m};
  lw_corner triangle[3] = {foot, top, third};
  section->part[section->part_count++] = lw_part_polygon(kind, triangle, 3, unit_weight);
}

/* A stem that leans past its own foot has no upright core: it is one part. */
static void leaning_add(lw_section *section, const stem *s, double unit_weight) {
  lw_corner corner[4] = {s->front_foot, s->rear_foot, s->rear_top, s->front_top};
  section->part[section->part_count++] = lw_part_polygon(LW_PART_STEM, corner, 4, unit_weight);
}

static void parts_add(lw_section *section, const stem *s, double slab_m, double unit_weight) {
  if (slab_m > 0.0)
    section->part[section->part_count++] = lw_part_box(
        LW_PART_SLAB, 0, (lw_corner){0.0, 0.0}, (lw_corner){section->base_width_m, slab_m}, unit_weight);
  lw_corner low = {fmax(s->front_foot.x_m, s->front_top.x_m), slab_m};
  lw_corner high = {fmin(s->rear_foot.x_m, s->rear_top.x_m), s->rear_top.y_m};
  if (high.x_m < low.x_m) {
    leaning_add(section, s, unit_weight);
    return;
  }
  lean_add(section, LW_PART_FACE, s->front_foot, s->front_top, unit_weight);
  section->part[section->part_count++] = lw_part_box(LW_PART_STEM, 0, low, high, unit_weight);
  lean_add(section, LW_PART_BACK, s->rear_foot, s->rear_top, unit_weight);
}

static void trapezoid(const lw_case *c, lw_section *section) {
  double slab = lw_si_or(&c->shape.slab_thickness, 0.0);
  section->base_width_m = c->shape.base_width.si;
  stem s = stem_of(c, section->height_m);
  lw_outline_add(section, 0.0, 0.0);
  lw_outline_add(section, section->base_width_m, 0.0);
  lw_outline_add(section, section->base_width_m, slab);
  lw_outline_add(section, s.rear_foot.x_m, s.rear_foot.y_m);
  lw_outline_add(section, s.rear_top.x_m, s.rear_top.y_m);
  lw_outline_add(section, s.front_top.x_m, s.front_top.y_m);
  lw_outline_add(section, s.front_foot.x_m, s.front_foot.y_m);
  if (slab > 0.0) lw_outline_add(section, 0.0, slab);
  section->back_foot_m = s.rear_foot.x_m + slab * tan(lw_si_or(&c->shape.back_batter, 0.0));
  parts_add(section, &s, slab, c->wall.unit_weight.si);
}

/* Points no higher than this above the lowest stand on the base: as near as a sheet need say it. */
static const double ON_THE_BASE_M = 0.001;

/* The points of a case, those of the base on one level; how many there are. */
static int points_take(const lw_case *c, lw_corner corner[LW_POINT_MAX]) {
  int count = 0;
  double lowest = c->shape.point[0].y.si;
  for (; count < LW_POINT_MAX && c->shape.point[count].x.origin != LW_ABSENT; count++) {
    corner[count] = (lw_corner){c->shape.point[count].x.si, c->shape.point[count].y.si};
    lowest = fmin(lowest, corner[count].y_m);
  }
  for (int i = 0; i < count; i++)
    if (corner[i].y_m <= lowest + ON_THE_BASE_M) corner[i].y_m = lowest;
  return count;
}

/* The polygon turned counter-clockwise, its lowest front corner first. */
static void points_read(const lw_case *c, lw_section *section) {
  lw_corner corner[LW_POINT_MAX];
  int count = points_take(c, corner), first = 0;
  double twice = 0.0;
  for (int i = 0; i < count; i++) {
    const lw_corner *a = &corner[i], *b = &corner[(i + 1) % count], *best = &corner[first];
    twice += a->x_m * b->y_m - b->x_m * a->y_m;
    bool lower = a->y_m < best->y_m - 1e-9, level = fabs(a->y_m - best->y_m) <= 1e-9;
    if (lower || (level && a->x_m < best->x_m)) first = i;
  }
  int step = twice > 0.0 ? 1 : count - 1;
  for (int i = 0, at = first; i < count; i++, at = (at + step) % count)
    lw_outline_add(section, corner[at].x_m - corner[first].x_m, corner[at].y_m - corner[first].y_m);
}

static void polygon(const lw_case *c, lw_section *section) {
  points_read(c, section);
  for (int i = 0; i < section->outline_count; i++)
    if (section->outline[i].y_m < 1e-9)
      section->base_width_m = fmax(section->base_width_m, section->outline[i].x_m);
  section->back_foot_m = section->base_width_m;
  section->part[section->part_count++] =
      lw_part_polygon(LW_PART_POLYGON, section->outline, section->outline_count, c->wall.unit_weight.si);
}

void lw_section_of_polygon(const lw_case *c, lw_section *section) {
  bool by_points = c->shape.point[0].x.origin != LW_ABSENT;
  section->known = by_points || c->shape.base_width.origin != LW_ABSENT;
  if (!section->known) return;
  if (by_points)
    polygon(c, section);
  else
    trapezoid(c, section);
  section->contact_rear_m = section->base_width_m;
  section->tail_share = 1.0;
  section->contact = section->underside = (lw_taper){1.0, 1.0};
}
