/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "courses.h"

#include <lowwall/sheet.h>
#include <math.h>
#include <stddef.h>
#include <string.h>

#include "sheet/taper.h"
#include "sheet/values.h"
#include "tables/known.h"
#include "measure.h"
#include "outline.h"
#include "taper.h"

static bool present(const lw_quantity *q) {
  return q->origin != LW_ABSENT;
}

/* Weight of a unit over its whole volume, with the fill in its voids when it is filled. The concrete of a
 * hollow block weighs as a solid one at its light end: that leaves the smaller void for fill. */
static double course_unit_weight(const lw_case *c, const lw_tables *tables) {
  double block = c->courses.block_unit_weight.si;
  if (!present(&c->courses.fill_unit_weight)) return block;
  const lw_material_row *solid = lw_known_material(tables, LW_MATERIAL_OF_SOLID_BLOCK);
  double voids = fmax(0.0, 1.0 - block / solid->unit_weight_low_kn_per_m3);
  return block + voids * c->courses.fill_unit_weight.si;
}

static double depth_of(const lw_case *c, int number) {
  bool base = present(&c->courses.base_count) && number <= (int)lround(c->courses.base_count.si);
  return base && present(&c->courses.base_depth) ? c->courses.base_depth.si : c->courses.block_depth.si;
}

static void courses_add(const lw_case *c, const lw_tables *tables, lw_section *section) {
  double height = c->courses.block_height.si, weight = course_unit_weight(c, tables);
  double fill = section->tails_filled ? c->courses.fill_unit_weight.si : 0.0;
  for (int number = 1; number <= section->course_count; number++) {
    double front = (number - 1) * c->courses.setback.si, bottom = (number - 1) * height;
    lw_corner low = {front, bottom}, high = {front + depth_of(c, number), bottom + height};
    lw_part *part = &section->part[section->part_count++];
    *part = lw_part_box(LW_PART_COURSE, number, low, high, weight);
    if (section->tail_share < 1.0) lw_part_taper(part, section->tail_share, fill);
  }
}

static double cap_height(const lw_case *c) {
  return present(&c->courses.cap_height) ? c->courses.cap_height.si : 0.0;
}

static void cap_add(const lw_case *c, lw_section *section) {
  if (cap_height(c) <= 0.0) return;
  const lw_part *top = &section->part[section->part_count - 1];
  double overhang = present(&c->courses.cap_overhang) ? c->courses.cap_overhang.si : 0.0;
  double depth =
      present(&c->courses.cap_depth) ? c->courses.cap_depth.si : top->rear_m - top->front_m + overhang;
  double weight =
      present(&c->courses.cap_unit_weight) ? c->courses.cap_unit_weight.si : c->courses.block_unit_weight.si;
  lw_corner low = {top->front_m - overhang, top->top_m};
  lw_corner high = {low.x_m + depth, top->top_m + c->courses.cap_height.si};
  section->has_cap = true;
  section->cap_bonded = lw_choice_is(&c->courses.cap_fixing, LW_FIXING_BONDED);
  section->cap_front_m = low.x_m;
  section->cap_overhang_m = overhang;
  section->cap_depth_m = depth;
  section->cap_height_m = c->courses.cap_height.si;
  section->part[section->part_count++] = lw_part_box(LW_PART_CAP, 0, low, high, weight);
}

void lw_section_of_courses(const lw_case *c, const lw_tables *tables, lw_section *section) {
  section->known = present(&c->courses.block_depth);
  section->course_count = (int)lround(c->courses.count.si);
  section->height_m = section->course_count * c->courses.block_height.si + cap_height(c);
  section->joint_friction = c->courses.joint_friction.si;
  section->joint_shear_kn_per_m = present(&c->courses.joint_shear) ? c->courses.joint_shear.si : 0.0;
  section->key_strength_kn_per_m = present(&c->courses.key_strength) ? c->courses.key_strength.si : 0.0;
  bool hollow = present(&c->courses.face_shell_thickness) && !present(&c->courses.fill_unit_weight);
  section->shell_m = hollow ? c->courses.face_shell_thickness.si : 0.0;
  section->tail_share = lw_case_tail_share(c);
  section->tails_filled = present(&c->courses.fill_unit_weight);
  if (!section->known || section->course_count < 1) return;
  courses_add(c, tables, section);
  cap_add(c, section);
  section->base_width_m = section->part[0].rear_m;
  section->back_foot_m = section->base_width_m;
  section->contact_rear_m = section->base_width_m;
  section->contact = (lw_taper){1.0, section->tail_share};
  section->underside = section->tails_filled ? (lw_taper){1.0, 1.0} : section->contact;
  lw_outline_of_courses(section);
}

/* Without a cap the front edge of the top course is where people sit. */
static void shift(lw_section *section, double x_m, double y_m) {
  for (int i = 0; i < section->part_count; i++) {
    lw_part *part = &section->part[i];
    part->x_m -= x_m, part->front_m -= x_m, part->rear_m -= x_m;
    part->y_m -= y_m, part->bottom_m -= y_m, part->top_m -= y_m;
  }
  section->cap_front_m -= x_m;
}

void lw_section_above(const lw_section *section, int joint, lw_section *above) {
  const lw_part *lower = &section->part[joint - 1], *upper = &section->part[joint];
  double front = upper->front_m, bottom = upper->bottom_m;
  memcpy(above, section, offsetof(lw_section, part));
  above->part_count = section->part_count - joint;
  above->course_count = section->course_count - joint;
  for (int i = 0; i < above->part_count; i++) above->part[i] = section->part[joint + i];
  shift(above, front, bottom);
  above->embedment_m = 0.0;
  above->bearing_embedment_m = 0.0;
  above->base_width_m = upper->rear_m - front;
  above->contact_front_m = fmax(lower->front_m, front) - front;
  above->contact_rear_m = fmin(lower->rear_m, upper->rear_m) - front;
  if (section->tail_share < 1.0) lw_section_taper(lower, upper, above);
  lw_outline_of_courses(above);
  above->back_foot_m = above->outline[1].x_m;
  lw_section_measure(above);
}
