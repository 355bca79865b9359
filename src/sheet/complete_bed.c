/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "tables/known.h"
#include "complete.h"

/* The levelled bed that blocks are laid on. Where the ground under the wall is told and the bed is not, it is
 * taken as thick as usual: the ground's own friction acts below the bed, not below the blocks. */

static bool told(const lw_quantity *q) {
  return q->origin == LW_GIVEN || q->origin == LW_TABLE;
}

void lw_complete_bed(lw_completing *s) {
  lw_case *c = s->c;
  bool courses = c->wall.kind.value == LW_WALL_COURSES && c->courses.count.origin != LW_ABSENT;
  if (!courses || c->pad.thickness.origin != LW_ABSENT || !told(&c->ground.footing.friction)) {
    return;
  }
  bool low = c->courses.count.si < lw_known_value(s->tables, LW_ORDERING_LOW_WALL_COURSES) + 0.5;
  lw_known_row taken = low ? LW_ORDERING_PAD_LOW_WALL : LW_ORDERING_PAD_HIGH_WALL;
  c->pad.thickness = lw_assumed(LW_KIND_LENGTH, lw_known_value(s->tables, taken));
}
