/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "settle.h"

#include <string.h>

#include "entry.h"

/* Forget what an earlier settling filled in, so that it follows anew from what is given. */
static void forget_filled_in(lw_case *c) {
  lw_item_walk walk = {0};
  for (const lw_item *item = lw_item_next(&walk); item != NULL; item = lw_item_next(&walk)) {
    int row;
    for (int n = item->repeats > 0 ? 1 : 0; n <= item->repeats; n++) {
      if (!lw_entry_given(item, n, c, &row)) {
        lw_entry_forget(item, n, c);
      }
    }
  }
}

static bool any_filled_in(const lw_case *c) {
  return c->wall.kind.origin == LW_ASSUMED || c->water.unit_weight.origin == LW_ASSUMED ||
         c->method.pressure.origin == LW_ASSUMED || c->site.works.origin == LW_ASSUMED;
}

static void settle_names(lw_settling *s) {
  lw_case *c = s->c;
  if (c->about.place.origin == LW_GIVEN && !lw_tables_has_place(s->tables, c->about.place.text)) {
    lw_settle_unknown_row(s, &c->about.place, "places");
  }
  if (c->pad.material.origin == LW_GIVEN && lw_tables_material(s->tables, c->pad.material.text) == NULL) {
    lw_settle_unknown_row(s, &c->pad.material, "materials");
  }
  if (c->building.plant.origin == LW_GIVEN && lw_tables_plant(s->tables, c->building.plant.text) == NULL) {
    lw_settle_unknown_row(s, &c->building.plant, "plant");
  }
  if (c->method.format.origin != LW_GIVEN) {
    c->method.format = (lw_words){.text = "lowwall", .origin = LW_ASSUMED};
  } else if (!lw_tables_has_format(s->tables, c->method.format.text)) {
    lw_settle_unknown_row(s, &c->method.format, "formats");
  }
}

lw_status lw_case_settle_in_place(const lw_tables *tables, const lw_defaults *defaults, lw_case *c,
                                  lw_faults *faults) {
  if (c->settled) {
    return LW_OK;
  }
  lw_settling s = {.tables = tables, .defaults = defaults, .c = c, .faults = faults};
  int before = faults->count;
  lw_settle_conventions(&s);
  lw_settle_kind(&s);
  lw_settle_soils(&s);
  lw_settle_loads(&s);
  if (c->wall.kind.value == LW_WALL_COURSES) {
    lw_settle_courses(&s);
  } else {
    lw_settle_section(&s);
  }
  lw_settle_bed(&s);
  lw_settle_site(&s);
  lw_settle_fence(&s);
  lw_settle_wet(&s);
  settle_names(&s);
  lw_settle_defaults(&s);
  lw_settle_hold(&s);
  c->settled = faults->count == before;
  return c->settled ? LW_OK : LW_FAULTS;
}

static lw_status hold_values(const lw_tables *tables, lw_case *c, lw_faults *faults) {
  lw_settling s = {.tables = tables, .c = c, .faults = faults};
  int before = faults->count;
  lw_settle_ranges(&s);
  return faults->count == before ? LW_OK : LW_FAULTS;
}

lw_status lw_case_settle(const lw_tables *tables, lw_case *c, lw_faults *faults) {
  /* A settled case may have been changed since: what it was filled in from no longer shows, its values do. */
  if (c->settled) {
    return hold_values(tables, c, faults);
  }
  lw_case work = *c;
  if (any_filled_in(&work)) {
    forget_filled_in(&work);
  }
  lw_status status = hold_values(tables, &work, faults);
  if (status != LW_OK) {
    return status;
  }
  lw_defaults defaults;
  lw_defaults_gather(tables, &defaults);
  status = lw_case_settle_in_place(tables, &defaults, &work, faults);
  if (status == LW_OK) {
    *c = work;
  }
  return status;
}
