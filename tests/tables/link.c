/* SPDX-License-Identifier: GPL-3.0-or-later */
/* What the words of the rows say as numbers, for rows that every wall asks about. */
#include "help.h"

#include <criterion/criterion.h>
#include <string.h>

#include "tables/names.h"

Test(tables, every_name_finds_its_first_row) {
  const lw_tables *t = tables_built_in();
  int names = 0;
  for (int list = 0; list < LW_LIST_COUNT; list++)
    for (int row = 0; row < lw_list_rows(t, (lw_list)list); row++) {
      const char *name = lw_list_name(t, (lw_list)list, row);
      int first = 0;
      while (strcmp(lw_list_name(t, (lw_list)list, first), name) != 0) first++;
      cr_expect_eq(lw_names_exactly(t, (lw_list)list, name), first, "%s", name);
      names++;
    }
  cr_expect_gt(names, 300);
  cr_expect_eq(lw_names_exactly(t, LW_LIST_LOADS, "boundary"), -1, "a name of another list");
  cr_expect_eq(lw_names_exactly(t, LW_LIST_CLEARANCES, "Boundary"), -1, "written otherwise");
  cr_expect_geq(lw_name_index(t, LW_LIST_CLEARANCES, "Boundary"), 0, "and found all the same");
}

Test(tables, rows_say_as_numbers_what_their_words_say) {
  const lw_tables *t = tables_built_in();
  int narrowed = 0, unsure = 0, lower = 0;
  for (int i = 0; i < t->limit_count; i++) {
    const lw_limit_row *row = &t->limit[i];
    cr_expect_eq(row->narrows != 0, row->only_if[0] != '\0', "%s", row->id);
    cr_expect_eq(row->unsure, strcmp(row->confidence, "low") == 0, "%s", row->id);
    cr_expect_eq(row->of_default, strcmp(row->place, "default") == 0, "%s", row->id);
    cr_expect_eq(row->of_standard, strcmp(row->regime, "standard") == 0, "%s", row->id);
    cr_expect_eq(t->limit_place[i], row->place_row, "%s", row->id);
    cr_expect_eq((row->narrows & 1u << LW_ONLY_IF_NEAR_BOUNDARY) != 0,
                 strstr(row->only_if, "near-boundary") != NULL, "%s", row->id);
    narrowed += row->narrows != 0 ? 1 : 0;
    unsure += row->unsure ? 1 : 0;
  }
  for (int i = 0; i < t->condition_count; i++) {
    cr_expect_eq(t->condition[i].for_engineer, strcmp(t->condition[i].who, "engineer") == 0, "%s",
                 t->condition[i].slug);
    cr_expect_eq(t->condition[i].for_council, strcmp(t->condition[i].who, "council") == 0, "%s",
                 t->condition[i].slug);
  }
  for (int i = 0; i < t->clearance_count; i++) {
    const lw_clearance_row *row = &t->clearance[i];
    cr_expect_eq(row->of == LW_OF_LOWER_WALL, strcmp(row->height_of, "lower-wall") == 0, "%s", row->slug);
    cr_expect_eq(row->of == LW_OF_TOTAL, strcmp(row->height_of, "total") == 0, "%s", row->slug);
    lower += row->of == LW_OF_LOWER_WALL ? 1 : 0;
  }
  cr_expect(narrowed > 0 && unsure > 0 && lower > 0, "%d, %d, %d", narrowed, unsure, lower);
}

Test(tables, rows_that_code_asks_for_are_there) {
  const lw_tables *t = tables_built_in();
  for (int i = 0; i < LW_KNOWN_COUNT; i++)
    cr_expect_geq(t->known[i], 0, "%s", lw_known_slug((lw_known_row)i));
  cr_expect_str_eq(lw_known_clearance(t, LW_CLEARANCE_FALL_BARRIER)->slug, "fall-barrier");
  cr_expect_str_eq(lw_known_threshold(t, LW_THRESHOLD_TIER_APART)->slug, "tier-apart");
  cr_expect_str_eq(lw_known_condition(t, LW_CONDITION_BOUNDARY)->slug, "boundary");
  cr_expect_str_eq(lw_known_load(t, LW_LOAD_OF_VEHICLE)->slug, "vehicle");
}

Test(tables, rows_of_a_set_of_factors_follow_one_another) {
  const lw_tables *t = tables_built_in();
  int taken = 0;
  for (int i = 0; i < t->factor_count; i++) {
    const lw_factor_row *row = &t->factor[i];
    int found = 0;
    for (int k = row->set; k >= 0; k = t->factor[k].next) {
      cr_expect_str_eq(t->factor[k].factor_set, row->factor_set);
      found += k == i ? 1 : 0;
    }
    cr_expect_eq(found, 1, "row %d of %s", i, row->factor_set);
    if (row->includes >= 0) cr_expect(t->factor[row->includes].taken_in);
    taken += row->taken_in ? 1 : 0;
  }
  cr_expect_gt(taken, 0);
}
