/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "tables/known.h"
#include "entry.h"
#include "items.h"
#include "complete.h"
#include "values.h"

/* Unknown ground behind ground rises; an unknown fence at a near boundary, or where its place is given, is a
 * solid one. */

/* Does the sheet give any quantity that only this kind of wall has? The first such, or NULL. */
static const lw_quantity *first_given(const lw_case *c, const lw_telling *telling) {
  for (int i = 0; i < telling->count; i++) {
    const lw_quantity *q = (const void *)((const char *)c + telling->offset[i]);
    if (lw_given(q)) {
      return q;
    }
  }
  return NULL;
}

void lw_complete_kind(lw_completing *s) {
  lw_choice *kind = &s->c->wall.kind;
  const lw_quantity *of_courses = first_given(s->c, &s->defaults->courses);
  const lw_quantity *of_section = first_given(s->c, &s->defaults->section);
  if (kind->origin != LW_GIVEN) {
    bool section = of_section != NULL && of_courses == NULL;
    *kind = (lw_choice){.value = section ? LW_WALL_SECTION : LW_WALL_COURSES, .origin = LW_ASSUMED};
  }
  if (kind->value == LW_WALL_COURSES && of_section != NULL) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, of_section, "this item left out, or wall kind = section");
  } else if (kind->value == LW_WALL_SECTION && of_courses != NULL) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, of_courses, "this item left out, or wall kind = courses");
  }
  bool pad =
      lw_given(&s->c->pad.width) || lw_given(&s->c->pad.spread) || s->c->pad.material.origin == LW_GIVEN;
  if (pad && !lw_given(&s->c->pad.thickness)) {
    lw_complete_missing(s, &s->c->pad.thickness, NULL, "the pad's thickness");
  }
}

static void complete_levels(lw_case *c, bool bed) {
  if (lw_given(&c->site.level_difference)) {
    return;
  }
  if (bed) {
    c->site.level_difference = lw_worked_out(LW_KIND_LENGTH, 0.0, true);
  } else if (c->wall.height.origin != LW_ABSENT) {
    c->site.level_difference = lw_assumed(LW_KIND_LENGTH, lw_held_m(c));
  }
}

void lw_complete_site(lw_completing *s) {
  lw_case *c = s->c;
  bool bed = c->site.behind.origin == LW_GIVEN && c->site.behind.value == LW_BEHIND_BED;
  if (c->site.back.origin != LW_GIVEN) {
    c->site.back = (lw_choice){.value = bed ? LW_BACK_FENCE : LW_BACK_GROUND, .origin = LW_ASSUMED};
  }
  complete_levels(c, bed);
  if (!lw_given(&c->ground.slope)) {
    c->ground.slope =
        lw_assumed(LW_KIND_ANGLE, bed ? 0.0 : atan(lw_known_value(s->tables, LW_THRESHOLD_UNKNOWN_SLOPE)));
  }
  if (!lw_given(&c->fence.height)) {
    double near_m = lw_known_value(s->tables, LW_FENCE_OF_UNKNOWN_BOUNDARY) + LW_MILLIMETRE,
           height_m = lw_known_value(s->tables, LW_FENCE_OF_UNKNOWN_HEIGHT);
    bool at_boundary = lw_given(&c->site.boundary_distance) && c->site.boundary_distance.si <= near_m;
    bool placed = c->fence.place.origin == LW_GIVEN || lw_given(&c->fence.distance);
    c->fence.height = lw_assumed(LW_KIND_LENGTH, at_boundary || placed ? height_m : 0.0);
  }
}
