/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "tables/known.h"
#include "complete.h"
#include "values.h"

/* Friction under the wall and between its courses, where the sheet does not say. */

/* The row that stands in, so that a report can name its source. */
static lw_quantity stand_in(const lw_completing *s, lw_known_row known) {
  const lw_interface_row *row = lw_known_interface(s->tables, known);
  bool likely = s->c->look == LW_LOOK_LIKELY;
  lw_quantity q = lw_assumed(LW_KIND_NUMBER, likely ? row->friction_likely : row->friction_low);
  q.table_row = (int)(row - s->tables->interface_);
  return q;
}

/* Blocks are levelled on stone, unless the sheet has a pad of sand, or bedding on its pad. */
static bool on_sand(const lw_completing *s) {
  const lw_case *c = s->c;
  if (lw_given(&c->order.bedding_thickness) && c->order.bedding_thickness.si > 0.0) return true;
  if (c->pad.material.origin == LW_ABSENT) return false;
  const lw_material_row *row = lw_tables_material(s->tables, c->pad.material.text);
  return row != NULL && (row == lw_known_material(s->tables, LW_MATERIAL_OF_DRY_SAND) ||
                         row == lw_known_material(s->tables, LW_MATERIAL_OF_STORED_SAND));
}

/* The wall on what lies right under it. What that does on the ground is another face, and the site's. */
static lw_known_row under(const lw_completing *s) {
  const lw_case *c = s->c;
  bool bed = lw_given(&c->pad.thickness) || lw_told(&c->ground.footing.friction);
  if (!bed) return LW_ASSUMED_BASE;
  return on_sand(s) ? LW_ASSUMED_BED_OF_SAND : LW_ASSUMED_BED_OF_GRAVEL;
}

/* Nothing that washes into the joints lies against them: clean stone throughout, or behind a filter. */
static bool joints_are_clean(const lw_completing *s) {
  const lw_case *c = s->c;
  const lw_choice *filter = &c->water.stone_filter;
  bool filtered = filter->origin == LW_GIVEN && filter->value != LW_STONE_FILTER_NONE;
  if (filtered && lw_given(&c->ground.stone_width) && c->ground.stone_width.si > 0.0) return true;
  const lw_soil_row *stone = lw_known_soil(s->tables, LW_SOIL_OF_CRUSHED_ROCK);
  for (int i = 0; i < s->soil_count; i++) {
    const lw_words *name = &c->ground.soil[i].name;
    if (name->origin == LW_ABSENT || lw_tables_soil(s->tables, name->text) != stone) return false;
  }
  return true;
}

void lw_complete_friction(lw_completing *s) {
  lw_case *c = s->c;
  lw_quantity *base = &c->ground.base_friction, *joint = &c->courses.joint_friction;
  if (base->origin == LW_ABSENT) *base = stand_in(s, under(s));
  if (c->wall.kind.value == LW_WALL_COURSES && joint->origin == LW_ABSENT)
    *joint = stand_in(s, joints_are_clean(s) ? LW_ASSUMED_CLEAN_JOINT : LW_ASSUMED_JOINT);
}
