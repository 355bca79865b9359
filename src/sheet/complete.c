/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "complete.h"

#include <string.h>

#include "entry.h"
#include "likely.h"
#include "tables/find.h"

/* Forget what an earlier completing filled in, so that it follows anew from what is given. */
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

static void complete_names(lw_completing *s) {
  lw_case *c = s->c;
  if (c->about.place.origin == LW_GIVEN && !lw_tables_has_place(s->tables, c->about.place.text)) {
    char hint[LW_PLACE_HINT];
    lw_complete_fault(s, LW_FAULT_UNKNOWN_ROW, &c->about.place, "a row of `lowwall list places`; %s",
                      lw_tables_place_hint(s->tables, c->about.place.text, hint, sizeof hint));
  }
  lw_complete_date(s);
  if (c->pad.material.origin == LW_GIVEN && lw_tables_material(s->tables, c->pad.material.text) == NULL) {
    lw_complete_unknown_row(s, &c->pad.material, "materials");
  }
  if (c->construction.plant.origin == LW_GIVEN &&
      lw_tables_plant(s->tables, c->construction.plant.text) == NULL) {
    lw_complete_unknown_row(s, &c->construction.plant, "plant");
  }
  if (c->method.factor_set.origin != LW_GIVEN) {
    c->method.factor_set = (lw_words){.text = "lowwall", .origin = LW_ASSUMED};
  } else if (!lw_tables_has_factor_set(s->tables, c->method.factor_set.text)) {
    lw_complete_unknown_row(s, &c->method.factor_set, "formats");
  }
}

static lw_status complete_as_it_looks(const lw_tables *tables, const lw_defaults *defaults, lw_case *c,
                                      lw_faults *faults) {
  lw_completing s = {.tables = tables, .defaults = defaults, .c = c, .faults = faults};
  int before = faults->count;
  if (c->look == LW_LOOK_LIKELY) {
    lw_likely_put(c);
  }
  lw_complete_conventions(&s);
  lw_complete_kind(&s);
  lw_complete_soils(&s);
  lw_complete_loads(&s);
  if (c->wall.kind.value == LW_WALL_COURSES) {
    lw_complete_courses(&s);
  } else {
    lw_complete_section(&s);
  }
  lw_complete_use(&s);
  lw_complete_back(&s);
  lw_complete_friction(&s);
  lw_complete_site(&s);
  lw_complete_officer(&s);
  lw_complete_fence(&s);
  lw_complete_wet(&s);
  complete_names(&s);
  lw_complete_defaults(&s);
  lw_complete_hold(&s);
  c->complete = !lw_faults_more(faults, before);
  return c->complete ? LW_OK : LW_FAULTS;
}

/* Told already of the case as it decides. */
static bool told_before(const lw_faults *faults, int count, const lw_fault *fault) {
  for (int i = 0; i < count; i++) {
    const lw_fault *other = &faults->fault[i];
    if (other->slug == fault->slug && other->row == fault->row && other->column == fault->column &&
        strcmp(other->item, fault->item) == 0) {
      return true;
    }
  }
  return false;
}

/* Nobody learns in the second look only that the likely values contradict each other. */
static lw_status hold_likely(const lw_tables *tables, const lw_defaults *defaults, const lw_case *c,
                             lw_faults *faults) {
  lw_case likely = *c;
  int before = faults->count, kept = before;
  likely.look = LW_LOOK_LIKELY;
  if (complete_as_it_looks(tables, defaults, &likely, faults) == LW_OK) {
    return LW_OK;
  }
  for (int i = before; i < faults->count; i++) {
    if (!told_before(faults, before, &faults->fault[i])) {
      faults->fault[kept++] = faults->fault[i];
    }
  }
  faults->count = kept;
  return LW_FAULTS;
}

static lw_status complete_both(const lw_tables *tables, const lw_defaults *defaults, lw_case *c,
                               lw_faults *faults) {
  const lw_case given = *c;
  lw_status status = complete_as_it_looks(tables, defaults, c, faults);
  lw_status likely = hold_likely(tables, defaults, &given, faults);
  c->complete = status == LW_OK && likely == LW_OK;
  return c->complete ? LW_OK : LW_FAULTS;
}

lw_status lw_case_complete_in_place(const lw_tables *tables, const lw_defaults *defaults, lw_case *c,
                                    lw_faults *faults) {
  if (c->complete) {
    return LW_OK;
  }
  bool two = c->likely.count > 0 && c->look == LW_LOOK_CAUTIOUS;
  return (two ? complete_both : complete_as_it_looks)(tables, defaults, c, faults);
}

static lw_status hold_values(const lw_tables *tables, lw_case *c, lw_faults *faults) {
  lw_completing s = {.tables = tables, .c = c, .faults = faults};
  int before = faults->count;
  lw_complete_ranges(&s);
  return lw_faults_more(faults, before) ? LW_FAULTS : LW_OK;
}

lw_status lw_case_complete(const lw_tables *tables, lw_case *c, lw_faults *faults) {
  /* A complete case may have been changed since: what it was filled in from no longer shows, its values
   * do. */
  if (c->complete) {
    return hold_values(tables, c, faults);
  }
  lw_case work = *c;
  forget_filled_in(&work);
  lw_status status = hold_values(tables, &work, faults);
  if (status != LW_OK) {
    return status;
  }
  lw_defaults defaults;
  lw_defaults_gather(tables, &defaults);
  status = lw_case_complete_in_place(tables, &defaults, &work, faults);
  if (status == LW_OK) {
    *c = work;
  }
  return status;
}
