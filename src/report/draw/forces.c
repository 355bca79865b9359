/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "report/soil_push.h"
#include "sketch.h"

/* What acts: the plane along which soil would slide, the zone to keep free of loads, the resultant on the
 * base and the line of thrust through the joints, the pressure under the base and on the back. */

static const double LONG_MM = 13.0; /* of the arrow of the resultant */

static void failure_plane(lw_sketch *s) {
  const lw_free_body *base = &s->situation->base;
  if (base->status != LW_OK || !base->wedge_known) return;
  double slope = tan(base->wedge.plane_angle_rad), x = base->back.foot_x_m, y = base->back.foot_y_m;
  double end = fmin(base->back.top_x_m + base->wedge.reach_m, s->right_m);
  lw_xy_mm line[] = {lw_sketch_at(s, x, y), lw_sketch_at(s, end, fmin(y + (end - x) * slope, s->top_m))};
  lw_drawing_line(s->paper, LW_PEN_DASHED, line, 2);
  double note = x + 0.72 * (end - x);
  lw_sketch_note(s, note, y + (note - x) * slope, "the soil would slide along this plane, %.0f deg",
                 base->wedge.plane_angle_rad * LW_DEG_PER_RAD);
}

/* Up and back from the rear of the base: what stands on the ground before it leans on the wall. */
static void keep_free(lw_sketch *s) {
  const lw_wall *w = &s->result->wall;
  double rear = w->section.base_width_m, slope = tan(w->method.influence_rad);
  double out = w->section.crest.x_m + s->result->influence.reach_m;
  double end = fmin(fmin(out, s->right_m), rear + s->top_m / slope);
  lw_xy_mm line[] = {lw_sketch_at(s, rear, 0.0), lw_sketch_at(s, end, (end - rear) * slope)};
  if (end <= rear) return;
  lw_drawing_line(s->paper, LW_PEN_CHAIN, line, 2);
  double note = rear + 0.85 * (end - rear);
  lw_sketch_note(s, note, (note - rear) * slope,
                 "keep vehicles, pallets and stacks beyond this line, at %.0f deg",
                 w->method.influence_rad * LW_DEG_PER_RAD);
}

/* x on the section where the resultant crosses a contact. */
static bool crossing(const lw_contact *contact, double origin_m, double *x_m) {
  if (!contact->inside) return false;
  *x_m = origin_m + contact->front_m + contact->resultant_m;
  return true;
}

static void line_of_thrust(lw_sketch *s) {
  const lw_section *section = &s->result->wall.section;
  lw_xy_mm line[LW_COURSE_MAX + 1];
  size_t count = 0;
  double x;
  for (int i = s->situation->joint_count - 1; i >= 0; i--) {
    const lw_joint *joint = &s->situation->joint[i];
    if (joint->status == LW_OK && crossing(&joint->contact, section->part[i + 1].front_m, &x))
      line[count++] = lw_sketch_at(s, x, joint->height_m);
  }
  if (s->situation->base.status == LW_OK && crossing(&s->situation->base.contact, 0.0, &x))
    line[count++] = lw_sketch_at(s, x, 0.0);
  if (count < 2) return;
  lw_drawing_line(s->paper, LW_PEN_DOTTED, line, count);
  lw_sketch_note_aside(s, (line[count / 2].x_mm - s->origin.x_mm) / s->mm_per_m,
                       (s->origin.y_mm - line[count / 2].y_mm) / s->mm_per_m,
                       "line of thrust (dotted): where the resultant crosses each joint");
}

static void resultant(lw_sketch *s) {
  const lw_contact *contact = &s->situation->base.contact;
  double x, all = hypot(contact->horizontal_kn_per_m, contact->vertical_kn_per_m);
  if (s->situation->base.status != LW_OK) {
    lw_sketch_note_aside(s, 0.0, 0.0, "the forces cannot be shown: the check says why");
    return;
  }
  if (!crossing(contact, 0.0, &x) || all < 1e-9) {
    lw_sketch_note_aside(s, 0.0, 0.0, "no resultant falls inside the base: it tips about this edge");
    return;
  }
  lw_xy_mm to = lw_sketch_at(s, x, 0.0);
  lw_xy_mm from = {to.x_mm + LONG_MM * contact->horizontal_kn_per_m / all,
                   to.y_mm - LONG_MM * contact->vertical_kn_per_m / all};
  lw_drawing_arrow(s->paper, LW_PEN_FORCE, from, to);
  double share = 0.6 / s->mm_per_m;
  lw_sketch_note_aside(s, x + share * (from.x_mm - to.x_mm), share * (to.y_mm - from.y_mm),
                       "resultant on the base, %s down and %s level, %s the middle by %s",
                       lw_sketch_amount(s, LW_KIND_LINE_LOAD, contact->vertical_kn_per_m, 1).text,
                       lw_sketch_figure(s, LW_KIND_LINE_LOAD, contact->horizontal_kn_per_m, 1).text,
                       contact->eccentricity_m >= 0.0 ? "in front of" : "behind",
                       lw_sketch_mm(s, fabs(contact->eccentricity_m)).text);
}

/* Its number keeps off the resultant, which ends between the ticks or beside them. */
static void middle_third(lw_sketch *s) {
  const lw_contact *contact = &s->situation->base.contact;
  lw_xy_mm low = lw_sketch_at(s, contact->front_m, 0.0);
  lw_xy_mm end = lw_sketch_at(s, contact->front_m + contact->width_m, 0.0);
  lw_sketch_take(s, (lw_box){low.x_mm, low.y_mm - LONG_MM, end.x_mm, low.y_mm - 0.5});
  double middle = contact->front_m + 0.5 * contact->width_m;
  double ends[] = {middle - contact->kern_m, middle + contact->kern_behind_m};
  bool third = contact->area_m2 >= contact->width_m;
  for (int i = 0; i < 2; i++) {
    lw_xy_mm at = lw_sketch_at(s, ends[i], 0.0);
    lw_xy_mm tick[] = {{at.x_mm, at.y_mm - 1.6}, {at.x_mm, at.y_mm + 1.6}};
    lw_drawing_line(s->paper, LW_PEN_SEEN, tick, 2);
    lw_sketch_take(s, (lw_box){at.x_mm - 0.1, at.y_mm - 1.6, at.x_mm + 0.1, at.y_mm + 1.6});
  }
  if (contact->width_m > 0.0)
    lw_sketch_note(s, ends[0], 0.0, "between these ticks %s of the base%s",
                   third ? "is the middle third" : "the resultant presses on all",
                   !lw_sketch_presses(s)                        ? ""
                   : s->result->wall.site.pad.thickness_m > 0.0 ? "; the pressure drawn below is that "
                                                                  "under the blocks, on top of the pad"
                                                                : "; the pressure under it is drawn below");
}

bool lw_sketch_presses(const lw_sketch *sketch) {
  const lw_free_body *base = &sketch->situation->base;
  return base->status == LW_OK && base->contact.inside && base->contact.greatest_kpa > 0.0;
}

/* Below pad and base, as high as the pressure is, the greatest always the same. */
static void base_pressure(lw_sketch *s) {
  static const double HIGH_MM = 9.0, GAP_MM = 5.0;
  const lw_contact *contact = &s->situation->base.contact;
  if (!lw_sketch_presses(s)) return;
  double compressed = contact->compressed_m;
  bool front = contact->front_kpa >= contact->rear_kpa;
  double left = front ? contact->front_m : contact->front_m + contact->width_m - compressed;
  lw_xy_mm a = lw_sketch_at(s, left, -lw_sketch_under(s));
  lw_xy_mm b = lw_sketch_at(s, left + compressed, -lw_sketch_under(s));
  a.y_mm += GAP_MM;
  b.y_mm += GAP_MM;
  double down = HIGH_MM / contact->greatest_kpa;
  lw_xy_mm area[] = {a,
                     b,
                     {b.x_mm, b.y_mm + down * fmax(contact->rear_kpa, 0.0)},
                     {a.x_mm, a.y_mm + down * fmax(contact->front_kpa, 0.0)}};
  lw_drawing_area(s->paper, LW_PEN_SEEN, LW_FILL_TINT, area, 4);
  lw_sketch_label(s, (lw_xy_mm){a.x_mm - 1.0, a.y_mm + 2.0}, LW_ANCHOR_END, "%s",
                  lw_sketch_amount(s, LW_KIND_PRESSURE, fmax(contact->front_kpa, 0.0), 0).text);
  lw_sketch_label(s, (lw_xy_mm){b.x_mm + 1.0, b.y_mm + 2.0}, LW_ANCHOR_START, "%s",
                  lw_sketch_amount(s, LW_KIND_PRESSURE, fmax(contact->rear_kpa, 0.0), 0).text);
}

/* On the wall's own back; over a heel on the line from the rear of the base to that of the top. */
static void push_on_back(lw_sketch *s) {
  const lw_back_plane *back = &s->situation->base.back;
  lw_soil_push push;
  if (!lw_soil_push_find(&s->situation->base, &push)) return;
  char beside[96] = "";
  lw_xy_mm to = lw_sketch_at(s, push.x_m, push.y_m);
  /* On narrow paper the soil behind may end before the arrow would. */
  double room = s->width_mm - LW_MARGIN_MM - to.x_mm, level = cos(push.angle_rad);
  double size = level * LONG_MM > room ? room / level : LONG_MM;
  lw_xy_mm from = {to.x_mm + size * level, to.y_mm - size * sin(push.angle_rad)};
  lw_xy_mm line[] = {lw_sketch_at(s, back->foot_x_m, back->foot_y_m),
                     lw_sketch_at(s, back->top_x_m, back->top_y_m)};
  lw_drawing_line(s->paper, LW_PEN_FINE, line, 2);
  lw_drawing_arrow(s->paper, LW_PEN_FORCE, from, to);
  if (push.through_ground_kn_per_m > 1e-9)
    lw_print(beside, sizeof beside, "; without the %s that posts push through the ground",
             lw_sketch_figure(s, LW_KIND_LINE_LOAD, push.through_ground_kn_per_m, 2).text);
  lw_sketch_note(
      s, push.x_m + (from.x_mm - to.x_mm) / s->mm_per_m, push.y_m + (to.y_mm - from.y_mm) / s->mm_per_m,
      "push of the soil%s, %s, %.0f deg from the level, %s above the foot of its line%s",
      push.loads ? " and its loads" : "", lw_sketch_amount(s, LW_KIND_LINE_LOAD, push.kn_per_m, 2).text,
      push.angle_rad * LW_DEG_PER_RAD, lw_sketch_m(s, push.above_foot_m, 2).text, beside);
}

void lw_sketch_forces(lw_sketch *sketch) {
  failure_plane(sketch);
  keep_free(sketch);
  push_on_back(sketch);
  middle_third(sketch);
  line_of_thrust(sketch);
  base_pressure(sketch);
  resultant(sketch);
}

/* The soil's pressure holds what its loads add. */
static double greatest(const lw_thrust *thrust) {
  double most = 0.0;
  for (int i = 0; i < thrust->profile_count; i++) {
    const lw_profile_point *p = &thrust->profile[i];
    most = fmax(most, p->soil_kpa + p->water_kpa);
  }
  return most;
}

static void name_pressure(lw_sketch *s, lw_xy_mm at, const lw_thrust *thrust) {
  double soil = 0.0, water = 0.0;
  for (int i = 0; i < thrust->profile_count; i++) {
    soil = fmax(soil, thrust->profile[i].soil_kpa);
    water = fmax(water, thrust->profile[i].water_kpa);
  }
  lw_sketch_label(s, at, LW_ANCHOR_START, "soil to %s", lw_sketch_amount(s, LW_KIND_PRESSURE, soil, 1).text);
  if (water > 0.0)
    lw_sketch_label(s, at, LW_ANCHOR_START, "water to %s",
                    lw_sketch_amount(s, LW_KIND_PRESSURE, water, 1).text);
}

/* What pushes besides, and is in no profile. */
static const char *left_out(const lw_free_body *base) {
  bool loads = false, shaken = false;
  for (int i = 0; i < base->forces.count; i++) {
    const lw_force *f = &base->forces.force[i];
    bool pushes = f->horizontal_kn_per_m > 1e-9;
    loads = loads || (pushes && f->kind == LW_FORCE_LOADS_THRUST);
    shaken = shaken || (pushes && f->kind == LW_FORCE_SEISMIC_THRUST);
  }
  if (loads && shaken) return "; without what loads at a distance and the earthquake add";
  return loads    ? "; without what loads at a distance add"
         : shaken ? "; without what the earthquake adds"
                  : "";
}

bool lw_sketch_pushes(const lw_sketch *sketch) {
  const lw_free_body *base = &sketch->situation->base;
  return base->status == LW_OK && greatest(&base->thrust) > 0.0 && base->thrust.profile_count >= 2;
}

/* Soil with its loads from the axis, water on top of it; the depths are to the section's own scale. */
void lw_sketch_pressure(lw_sketch *sketch, lw_xy_mm foot, double width_mm) {
  const lw_free_body *base = &sketch->situation->base;
  const lw_thrust *t = &base->thrust;
  double most = greatest(t), high_mm = base->back.plane.height_m * sketch->mm_per_m;
  lw_xy_mm soil[LW_PROFILE_MAX + 2], water[2 * LW_PROFILE_MAX];
  size_t count = 0;
  if (!lw_sketch_pushes(sketch)) return;
  double mm_per_kpa = (width_mm - 4.0) / most;
  soil[count++] = (lw_xy_mm){foot.x_mm, foot.y_mm - high_mm};
  for (int i = 0; i < t->profile_count; i++) {
    const lw_profile_point *p = &t->profile[i];
    double y = foot.y_mm - high_mm + p->depth_m * sketch->mm_per_m, dry = fmax(p->soil_kpa, 0.0);
    soil[count++] = (lw_xy_mm){foot.x_mm + dry * mm_per_kpa, y};
    water[i] = (lw_xy_mm){foot.x_mm + (dry + p->water_kpa) * mm_per_kpa, y};
    water[2 * t->profile_count - 1 - i] = soil[count - 1];
  }
  soil[count++] = foot;
  lw_drawing_area(sketch->paper, LW_PEN_SEEN, LW_FILL_TINT, soil, count);
  if (t->water_kn_per_m > 1e-9)
    lw_drawing_area(sketch->paper, LW_PEN_DASHED, LW_FILL_NONE, water, 2 * (size_t)t->profile_count);
  name_pressure(sketch, (lw_xy_mm){foot.x_mm, foot.y_mm + 4.0}, t);
  lw_sketch_note(sketch, (foot.x_mm + 0.5 * mm_per_kpa * most - sketch->origin.x_mm) / sketch->mm_per_m,
                 (sketch->origin.y_mm - foot.y_mm + 0.25 * high_mm) / sketch->mm_per_m,
                 "pressure of the soil behind over its height%s%s",
                 t->water_kn_per_m > 1e-9 ? "; the water's is dashed beside it" : "", left_out(base));
}
