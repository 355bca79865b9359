/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "type.h"

#include <string.h>

#include "remedies/changes.h"
#include "sheet/entry.h"

/* What a sheet says of its own block, and of no other. Setback and joint friction stay: the builder chooses
 * the one, and what lies between the blocks makes the other. */
static const char *const of_the_old[] = {
    "block unit weight", "block tail length", "base course count", "base course depth",    "fill unit weight",
    "joint shear",       "key strength",      "course count",      "face shell thickness",
};

static bool forget(const lw_case *c, lw_typed *typed) {
  lw_case looked_at = *c; /* the items point into a case that may be changed */
  bool room = true;
  for (size_t i = 0; i < sizeof of_the_old / sizeof *of_the_old && room; i++) {
    int number, row;
    const lw_item *item = lw_item_find(of_the_old[i], strlen(of_the_old[i]), &number);
    if (lw_entry_given(item, 0, &looked_at, &row)) room = lw_typed_put(typed, item->name, "%s", "unknown");
  }
  return room;
}

static bool put(const lw_typed *from, lw_typed *typed) {
  bool room = true;
  for (int i = 0; i < from->count && room; i++) {
    char name[LW_TYPED_BYTES];
    size_t length = strcspn(from->item[i], "=");
    lw_print(name, sizeof name, "%.*s", (int)length, from->item[i]);
    room = lw_typed_put(typed, name, "%s", from->item[i] + length + 1);
  }
  return room;
}

/* Cap, pad and bed follow the depth as they do for a remedy. Courses follow the height. */
bool lw_fit_type(const lw_fit_wall *wall, const lw_yard_block *block, lw_typed *typed) {
  const lw_changing changing = {.c = wall->read};
  typed->count = 0;
  typed->units = wall->units;
  bool room = lw_change_deeper.type(&changing, block->depth_m, typed) && forget(wall->read, typed) &&
              put(&block->items, typed);
  if (room && wall->read->wall.height.origin != LW_GIVEN)
    room = lw_typed_put_mm(typed, "wall height", wall->height_m);
  return room;
}
