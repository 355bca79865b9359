/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "complete.h"

/* A solid section: widths and batters of a trapezoid on a slab, or any polygon by its points. */

static bool same_length(double a_m, double b_m) {
  return fabs(a_m - b_m) <= LW_MILLIMETRE + 1e-9;
}

/* Height and embedment from what is given and, for a polygon, its own height. */
static void heights_of_points(lw_completing *s, double total_m) {
  lw_case *c = s->c;
  bool height = lw_given(&c->wall.height);
  bool embedment = lw_given(&c->wall.embedment);
  if (height && embedment) {
    if (!same_length(c->wall.height.si + c->wall.embedment.si, total_m)) {
      lw_complete_fault(s, LW_FAULT_CONTRADICTION, &c->wall.height,
                        "%s: the points are %s high, embedment included",
                        lw_complete_exactly(s, LW_KIND_LENGTH, total_m - c->wall.embedment.si, "m").text,
                        lw_complete_exactly(s, LW_KIND_LENGTH, total_m, "m").text);
    }
    return;
  }
  double buried = embedment
                      ? c->wall.embedment.si
                      : fmin(lw_default(&lw_items_wall, offsetof(lw_case, wall.embedment)), total_m / 2.0);
  buried = height ? total_m - c->wall.height.si : buried;
  if (buried < -LW_MILLIMETRE || total_m - buried < LW_MILLIMETRE) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, height ? &c->wall.height : &c->wall.embedment,
                      "at most %s, the height of the points",
                      lw_complete_exactly(s, LW_KIND_LENGTH, total_m, "m").text);
    return;
  }
  buried = fmax(0.0, buried);
  if (!embedment) {
    c->wall.embedment = lw_worked_out(LW_KIND_LENGTH, buried, height);
  }
  if (!height) {
    c->wall.height = lw_worked_out(LW_KIND_LENGTH, total_m - buried, embedment);
  }
}

static double cross(const lw_case_point *a, const lw_case_point *b, const lw_case_point *c) {
  return (b->x.si - a->x.si) * (c->y.si - a->y.si) - (b->y.si - a->y.si) * (c->x.si - a->x.si);
}

/* Do the segments a-b and c-d cross, or touch elsewhere than at their ends? */
static bool segments_cross(const lw_case_point *a, const lw_case_point *b, const lw_case_point *c,
                           const lw_case_point *d) {
  double c_side = cross(a, b, c);
  double d_side = cross(a, b, d);
  double a_side = cross(c, d, a);
  double b_side = cross(c, d, b);
  return ((c_side > 0.0 && d_side < 0.0) || (c_side < 0.0 && d_side > 0.0)) &&
         ((a_side > 0.0 && b_side < 0.0) || (a_side < 0.0 && b_side > 0.0));
}

static bool points_cross(const lw_completing *s) {
  const lw_case_point *p = s->c->shape.point;
  int n = s->point_count;
  for (int i = 0; i < n; i++) {
    for (int j = i + 1; j < n; j++) {
      if (segments_cross(&p[i], &p[(i + 1) % n], &p[j], &p[(j + 1) % n])) {
        return true;
      }
    }
  }
  return false;
}

static double points_area(const lw_completing *s) {
  double twice = 0.0;
  const lw_case_point *p = s->c->shape.point;
  for (int i = 1; i + 1 < s->point_count; i++) {
    twice += cross(&p[0], &p[i], &p[i + 1]);
  }
  return fabs(twice) / 2.0;
}

/* The lowest points are at 0 and two at least, so that there is a base; the toe among them is at x = 0. */
static bool base_stands_at_toe(lw_completing *s, double *total_m) {
  double lowest = INFINITY;
  double toe = INFINITY;
  int on_base = 0;
  *total_m = 0.0;
  for (int i = 0; i < s->point_count; i++) {
    const lw_case_point *p = &s->c->shape.point[i];
    lowest = fmin(lowest, p->y.si);
    *total_m = fmax(*total_m, p->y.si);
    if (p->y.si <= LW_MILLIMETRE) {
      toe = fmin(toe, p->x.si);
      on_base++;
    }
  }
  if (lowest > LW_MILLIMETRE || on_base < 2) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &s->c->shape.point[0].y,
                      "two points at y = 0 m at least: the base");
    return false;
  }
  if (fabs(toe) > LW_MILLIMETRE) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &s->c->shape.point[0].x, "the toe at x = 0 m: all x less %s",
                      lw_complete_exactly(s, LW_KIND_LENGTH, toe, "m").text);
    return false;
  }
  return true;
}

static void complete_points(lw_completing *s) {
  double total_m;
  bool whole = true;
  for (int i = 0; i < s->point_count; i++) {
    lw_case_point *p = &s->c->shape.point[i];
    if (!lw_given(&p->x) || !lw_given(&p->y)) {
      lw_complete_missing(s, lw_given(&p->x) ? &p->y : &p->x, NULL, "the other coordinate of the point");
      whole = false;
    }
  }
  if (!whole) {
    return;
  }
  if (s->point_count < 3) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &s->c->shape.point[0].x, "three points at least");
  } else if (points_cross(s)) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &s->c->shape.point[0].x,
                      "points in order around the section: its sides cross");
  } else if (points_area(s) < 1e-6) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &s->c->shape.point[0].x, "points that enclose an area");
  } else if (base_stands_at_toe(s, &total_m)) {
    heights_of_points(s, total_m);
  }
}

static void count_points(lw_completing *s) {
  int gap = -1;
  for (int i = 0; i < LW_POINT_MAX; i++) {
    const lw_case_point *p = &s->c->shape.point[i];
    bool given = lw_given(&p->x) || lw_given(&p->y);
    if (given && gap >= 0) {
      lw_complete_fault(s, LW_FAULT_GAP_IN_NUMBERING, lw_given(&p->x) ? &p->x : &p->y, "point %d first",
                        gap + 1);
      return;
    }
    gap = given || gap >= 0 ? gap : i;
    s->point_count = given ? i + 1 : s->point_count;
  }
}

static double or_zero(const lw_quantity *q) {
  return lw_given(q) ? q->si : 0.0;
}

static bool slab_is_sound(lw_completing *s, double total_m) {
  lw_case *c = s->c;
  bool slab = or_zero(&c->shape.toe_length) > 0.0 || or_zero(&c->shape.heel_length) > 0.0;
  if (slab && !lw_given(&c->shape.slab_thickness)) {
    lw_complete_missing(s, &c->shape.slab_thickness, NULL, "the thickness of the base slab");
    return false;
  }
  if (or_zero(&c->shape.slab_thickness) >= total_m) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &c->shape.slab_thickness,
                      "less than %s, the height of it all",
                      lw_complete_exactly(s, LW_KIND_LENGTH, total_m, "m").text);
    return false;
  }
  if (lw_given(&c->shape.base_width) &&
      or_zero(&c->shape.toe_length) + or_zero(&c->shape.heel_length) >= c->shape.base_width.si) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &c->shape.base_width, "more than toe and heel together");
    return false;
  }
  return true;
}

/* The stem, a trapezoid: its widths differ by its height times the two batters. */
typedef struct stem {
  double height_m, foot_m; /* foot: the base less toe and heel */
  bool sure;               /* the height is given, not assumed */
} stem;

static void batters_from_widths(lw_completing *s, const stem *t) {
  lw_case *c = s->c;
  double both = (t->foot_m - c->shape.top_width.si) / t->height_m; /* sum of the tangents */
  bool face = lw_given(&c->shape.face_batter);
  bool back = lw_given(&c->shape.back_batter);
  double face_tan = tan(or_zero(&c->shape.face_batter));
  double back_tan = tan(or_zero(&c->shape.back_batter));
  if (face && back) {
    double top = t->foot_m - t->height_m * (face_tan + back_tan);
    if (!same_length(top, c->shape.top_width.si)) {
      lw_complete_fault(s, LW_FAULT_CONTRADICTION, &c->shape.top_width,
                        "%s: base width less what the batters take",
                        lw_complete_exactly(s, LW_KIND_LENGTH, top, "m").text);
    }
  } else if (face) {
    c->shape.back_batter = lw_worked_out(LW_KIND_ANGLE, atan(both - face_tan), t->sure);
  } else {
    c->shape.face_batter = lw_worked_out(LW_KIND_ANGLE, atan(both - back_tan), t->sure && back);
  }
}

static void top_from_batters(lw_completing *s, const stem *t) {
  lw_case *c = s->c;
  if (!lw_given(&c->shape.face_batter) && !lw_given(&c->shape.back_batter)) {
    lw_complete_missing(s, &c->shape.top_width, &c->shape.face_batter,
                        "the width of the top, or the batter of the face");
    return;
  }
  double taken = t->height_m * (tan(or_zero(&c->shape.face_batter)) + tan(or_zero(&c->shape.back_batter)));
  if (taken > t->foot_m + LW_MILLIMETRE) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &c->shape.base_width,
                      "more than %s: with these batters the wall comes to a point below its top",
                      lw_complete_exactly(s, LW_KIND_LENGTH, taken, "m").text);
    return;
  }
  c->shape.top_width = lw_worked_out(LW_KIND_LENGTH, fmax(0.0, t->foot_m - taken), t->sure);
}

static void base_from_top(lw_completing *s, const stem *t) {
  lw_case *c = s->c;
  if (!lw_given(&c->shape.top_width) ||
      (!lw_given(&c->shape.face_batter) && !lw_given(&c->shape.back_batter))) {
    return;
  }
  double foot = c->shape.top_width.si +
                t->height_m * (tan(or_zero(&c->shape.face_batter)) + tan(or_zero(&c->shape.back_batter)));
  if (foot < LW_MILLIMETRE) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &c->shape.top_width,
                      "a wall that is not thinner than nothing at its foot");
    return;
  }
  c->shape.base_width = lw_worked_out(
      LW_KIND_LENGTH, foot + or_zero(&c->shape.toe_length) + or_zero(&c->shape.heel_length), t->sure);
}

static void complete_trapezoid(lw_completing *s) {
  lw_case *c = s->c;
  if (!lw_given(&c->wall.height)) {
    lw_complete_missing(s, &c->wall.height, NULL, "the wall's height, or its points");
    return;
  }
  bool sure = lw_given(&c->wall.embedment);
  double total_m = c->wall.height.si + (sure ? c->wall.embedment.si
                                             : lw_default(&lw_items_wall, offsetof(lw_case, wall.embedment)));
  if (!slab_is_sound(s, total_m)) {
    return;
  }
  stem t = {.height_m = total_m - or_zero(&c->shape.slab_thickness), .sure = sure};
  t.foot_m = or_zero(&c->shape.base_width) - or_zero(&c->shape.toe_length) - or_zero(&c->shape.heel_length);
  if (!lw_given(&c->shape.base_width)) {
    base_from_top(s, &t);
  } else if (lw_given(&c->shape.top_width)) {
    batters_from_widths(s, &t);
  } else {
    top_from_batters(s, &t);
  }
  if (c->shape.face_batter.origin == LW_ABSENT) {
    c->shape.face_batter = lw_assumed(LW_KIND_ANGLE, 0.0);
  }
}

void lw_complete_section(lw_completing *s) {
  lw_case *c = s->c;
  count_points(s);
  if (s->point_count == 0) {
    complete_trapezoid(s);
    return;
  }
  const lw_quantity *widths[] = {&c->shape.top_width,     &c->shape.base_width, &c->shape.face_batter,
                                 &c->shape.back_batter,   &c->shape.toe_length, &c->shape.heel_length,
                                 &c->shape.slab_thickness};
  for (size_t i = 0; i < sizeof widths / sizeof *widths; i++) {
    if (lw_given(widths[i])) {
      lw_complete_fault(s, LW_FAULT_CONTRADICTION, widths[i],
                        "this item left out: the points give the section");
    }
  }
  complete_points(s);
}
