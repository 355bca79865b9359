/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <assert.h>
#include <math.h>
#include <string.h>

#include "tables/known.h"
#include "items.h"
#include "complete.h"

/* What completing asks of the table of items, put side by side. */

/* Which walls have the item: a wall of courses has no base slab, and without a cap no cap weight. */
typedef enum had_by {
  BY_ALL,
  BY_COURSES,
  BY_COURSES_WITH_CAP,
  BY_SECTION,
  BY_SECTION_OF_PARTS, /* not given by its points */
  BY_PAD,
  BY_EACH_SOIL,
  BY_NONE,
  HAD_BY_COUNT
} had_by;

static had_by had_by_of(const lw_item *item) {
  bool of_soil = item->part == LW_ABOUT_SOIL, of_cap = strncmp(item->name, "cap ", 4) == 0;
  if (item->type == LW_ITEM_WORDS || isnan(item->assumed) || (item->repeats > 0 && !of_soil) ||
      lw_item_is_of_order(item)) {
    return BY_NONE;
  }
  switch (item->part) {
  case LW_ABOUT_SOIL: return BY_EACH_SOIL;
  case LW_ABOUT_COURSES:
    if (item->offset == offsetof(lw_case, courses.people_on_cap)) {
      return BY_ALL;
    }
    return of_cap ? BY_COURSES_WITH_CAP : BY_COURSES;
  case LW_ABOUT_SECTION: return BY_SECTION_OF_PARTS;
  case LW_ABOUT_PAD: return BY_PAD;
  default: return item->offset == offsetof(lw_case, wall.unit_weight) ? BY_SECTION : BY_ALL;
  }
}

static void gather_telling(lw_item_part part, lw_telling *telling) {
  telling->count = 0;
  for (size_t i = 0; i < lw_items_wall.count; i++) {
    const lw_item *item = &lw_items_wall.item[i];
    if (item->type != LW_ITEM_QUANTITY || item->part != part) {
      continue;
    }
    for (int n = 0; n < (item->repeats > 0 ? item->repeats : 1); n++) {
      assert(telling->count < LW_TELLING_MAX);
      telling->offset[telling->count++] = (uint16_t)(item->offset + (size_t)n * item->stride);
    }
  }
}

typedef struct stand_in {
  size_t offset;
  double cautious, likely;
} stand_in;

/* Ground that nobody names is the weakest that a wall is ordinarily built in front of or on, clay loam, with
 * the lighter weights of loam. An answer that is left out is taken from a table where a row stands in for it,
 * the low end of an interface for the cautious value and its high end for the likely one; the table of items
 * has the cautious figure, for its documents. */
static stand_in taken(const lw_tables *tables, const lw_item *item) {
  const lw_soil_row *behind = lw_known_soil(tables, LW_SOIL_OF_LOAM),
                    *under = lw_known_soil(tables, LW_SOIL_OF_CLAY_LOAM),
                    *likely = lw_known_soil(tables, LW_SOIL_OF_SANDY_CLAY);
  const lw_material_row *block = lw_known_material(tables, LW_MATERIAL_OF_SOLID_BLOCK),
                        *stone = lw_known_material(tables, LW_MATERIAL_OF_DRY_STONE);
  double light = block->unit_weight_low_kn_per_m3, usual = block->unit_weight_likely_kn_per_m3;
  double wet = behind->saturated_unit_weight_kn_per_m3, weighs = behind->unit_weight_typical_kn_per_m3;
  const stand_in rows[] = {
      {offsetof(lw_case, ground.soil[0].friction), under->friction_rad,
       lw_known_value(tables, LW_THRESHOLD_LIKELY_FRICTION) / LW_DEG_PER_RAD},
      {offsetof(lw_case, ground.soil[0].unit_weight), behind->unit_weight_kn_per_m3, weighs},
      {offsetof(lw_case, ground.soil[0].light_unit_weight), behind->light_unit_weight_kn_per_m3, weighs},
      {offsetof(lw_case, ground.soil[0].saturated_unit_weight), wet, wet},
      {offsetof(lw_case, ground.footing.friction), under->friction_rad, likely->friction_typical_rad},
      {offsetof(lw_case, ground.footing.unit_weight), behind->unit_weight_kn_per_m3, weighs},
      {offsetof(lw_case, ground.footing.light_unit_weight), behind->light_unit_weight_kn_per_m3, weighs},
      {offsetof(lw_case, ground.footing.saturated_unit_weight), wet, wet},
      {offsetof(lw_case, ground.allowable_bearing), under->allowable_bearing_kpa,
       likely->allowable_bearing_kpa},
      {offsetof(lw_case, courses.block_unit_weight), light, usual},
      {offsetof(lw_case, courses.cap_unit_weight), light, usual},
      {offsetof(lw_case, wall.unit_weight), stone->unit_weight_low_kn_per_m3,
       stone->unit_weight_likely_kn_per_m3},
  };
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
    if (rows[i].offset == item->offset) return rows[i];
  return (stand_in){item->offset, item->assumed, item->assumed};
}

static void gather_weights(const lw_tables *tables, lw_default_weights weights[2]) {
  const lw_soil_row *row = lw_known_soil(tables, LW_SOIL_OF_LOAM);
  double usual = row->unit_weight_typical_kn_per_m3;
  weights[LW_LOOK_CAUTIOUS] = (lw_default_weights){
      row->unit_weight_kn_per_m3, row->light_unit_weight_kn_per_m3, row->saturated_unit_weight_kn_per_m3};
  weights[LW_LOOK_LIKELY] = (lw_default_weights){usual, usual, row->saturated_unit_weight_kn_per_m3};
}

void lw_defaults_gather(const lw_tables *tables, lw_defaults *defaults) {
  lw_item_walk walk = {0};
  defaults->count = 0;
  gather_telling(LW_ABOUT_COURSES, &defaults->courses);
  gather_telling(LW_ABOUT_SECTION, &defaults->section);
  gather_weights(tables, defaults->weights);
  for (const lw_item *item = lw_item_next(&walk); item != NULL; item = lw_item_next(&walk)) {
    had_by by = had_by_of(item);
    if (by == BY_NONE) {
      continue;
    }
    assert(defaults->count < LW_DEFAULTS_MAX && item->offset <= UINT16_MAX && item->stride <= UINT16_MAX);
    lw_default_value *value = &defaults->value[defaults->count++];
    *value = (lw_default_value){.offset = (uint16_t)item->offset,
                                .stride = (uint16_t)item->stride,
                                .had_by = (uint8_t)by,
                                .choice = item->type == LW_ITEM_CHOICE};
    if (value->choice) {
      value->as.choice = (lw_choice){.value = (int)item->assumed, .origin = LW_ASSUMED};
    } else {
      stand_in of = taken(tables, item);
      value->likely = of.likely;
      value->as.quantity =
          lw_assumed(item->kind == LW_KIND_ANGLE_OR_SHARE ? LW_KIND_ANGLE : item->kind, of.cautious);
    }
  }
}

static void fill_in(const lw_default_value *from, lw_look look, void *where) {
  if (from->choice) {
    lw_choice *choice = where;
    if (choice->origin == LW_ABSENT) {
      *choice = from->as.choice;
    }
    return;
  }
  lw_quantity *q = where;
  if (q->origin == LW_ABSENT) {
    *q = from->as.quantity;
    if (look == LW_LOOK_LIKELY) q->si = from->likely;
  }
}

void lw_complete_defaults(lw_completing *s) {
  lw_case *c = s->c;
  bool courses = c->wall.kind.value == LW_WALL_COURSES;
  const int times[HAD_BY_COUNT] = {
      [BY_ALL] = 1,
      [BY_COURSES] = courses ? 1 : 0,
      [BY_COURSES_WITH_CAP] = courses && c->courses.cap_height.origin != LW_ABSENT ? 1 : 0,
      [BY_SECTION] = courses ? 0 : 1,
      [BY_SECTION_OF_PARTS] = !courses && s->point_count == 0 ? 1 : 0,
      [BY_PAD] = c->pad.thickness.origin != LW_ABSENT ? 1 : 0,
      [BY_EACH_SOIL] = s->soil_count,
  };
  for (int i = 0; i < s->defaults->count; i++) {
    const lw_default_value *from = &s->defaults->value[i];
    for (int n = 0; n < times[from->had_by]; n++) {
      fill_in(from, c->look, (char *)c + from->offset + n * from->stride);
    }
  }
}
