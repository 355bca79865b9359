/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place.h"

#include "soil/site.h"
#include "wall/courses.h"
#include "pad.h"
#include "free_body.h"

static int joints_of(const lw_section *section) {
  return section->course_count > 0 ? section->course_count - 1 + (section->has_cap ? 1 : 0) : 0;
}

static bool has_pad(const lw_wall *wall) {
  return wall->site.pad.thickness_m > 0.0;
}

int lw_place_count(const lw_wall *wall) {
  return 1 + (has_pad(wall) ? 1 : 0) + joints_of(&wall->section);
}

static void at_joint(const lw_section *section, int joint, lw_section *above, lw_place *place) {
  bool under_cap = section->has_cap && joint == section->course_count;
  lw_section_above(section, joint, above);
  *place = (lw_place){under_cap ? LW_AT_CAP : LW_AT_JOINT, joint, {above, 0.0}};
}

void lw_place_find(const lw_wall *wall, int index, lw_section *above, lw_place *place) {
  int whole = has_pad(wall) ? 2 : 1;
  if (index >= whole)
    at_joint(&wall->section, index - whole + 1, above, place);
  else if (index == 1)
    *place = (lw_place){LW_AT_PAD, 0, {&wall->section, wall->site.pad.thickness_m}};
  else
    *place = (lw_place){LW_AT_BASE, 0, {&wall->section, 0.0}};
}

void lw_place_of_check(const lw_wall *wall, const lw_check *check, lw_section *above, lw_place *place) {
  int whole = has_pad(wall) ? 2 : 1, cap = wall->section.course_count;
  int index = check->at == LW_AT_BASE  ? 0
              : check->at == LW_AT_PAD ? 1
                                       : whole - 1 + (check->at == LW_AT_CAP ? cap : check->joint);
  lw_place_find(wall, index, above, place);
}

int lw_place_joint(const lw_place *place) {
  return place->at == LW_AT_CAP ? 0 : place->joint;
}

void lw_place_load(const lw_wall *wall, const lw_load_case *load_case, const lw_place *place,
                   const lw_push *push, lw_free_body *body, const lw_working *working) {
  switch (place->at) {
  case LW_AT_BASE: lw_free_body_base(wall, load_case, push, body, working); return;
  case LW_AT_PAD: lw_free_body_pad(wall, load_case, push, body, working); return;
  default: lw_free_body_above(wall, load_case, place->stack.section, push, body, working);
  }
}
