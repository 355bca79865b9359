/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "remedies/search.h"

#include "../verdict/help.h"

/* However the search is sliced, the same is found; and no slice takes much more than it may. */

static void expect_same(const lw_result *whole, const lw_result *sliced, const char *changes) {
  cr_expect_eq(whole->remedy_count, sliced->remedy_count, "%s", changes);
  cr_expect_eq(whole->asking_count, sliced->asking_count, "%s", changes);
  cr_expect_eq(whole->cost_count, sliced->cost_count, "%s", changes);
  for (int i = 0; i < whole->remedy_count; i++) {
    const lw_remedy *a = &whole->remedy[i], *b = &sliced->remedy[i];
    cr_expect_str_eq(a->text, b->text);
    cr_expect_str_eq(a->slug, b->slug);
    cr_expect_str_eq(a->governs, b->governs);
    cr_expect_eq(a->items.count, b->items.count);
    for (int k = 0; k < a->items.count; k++) cr_expect_str_eq(a->items.item[k], b->items.item[k]);
  }
  for (int i = 0; i < whole->asking_count; i++)
    cr_expect_str_eq(whole->asking[i].item, sliced->asking[i].item, "%s", changes);
  for (int i = 0; i < whole->cost_count; i++) {
    cr_expect_str_eq(whole->cost[i].item, sliced->cost[i].item, "%s", changes);
    cr_expect(fabs(whole->cost[i].ratio.value - sliced->cost[i].ratio.value) < 1e-12, "%s", changes);
  }
}

/* gives how many slices it took */
static int slice(lw_result *result, lw_result *scratch, int price) {
  enum { ONE_TRIAL = 1 + 1 + 10 }; /* both runs of a trial that was begun with the last of it */
  static lw_remedies_search search;
  int slices = 0;
  lw_remedies_begin(&search, result, scratch);
  for (bool done = false; !done; slices++) {
    done = lw_remedies_go_on(&search, price);
    cr_assert(search.memory.left > -ONE_TRIAL, "%d over", -search.memory.left);
    cr_assert_lt(slices, 5000);
  }
  cr_expect(lw_remedies_go_on(&search, price));
  return slices;
}

Test(remedies, the_same_is_found_in_slices) {
  static const char *const walls[] = {
      "site behind=ground;level difference=0.6 m;course count=7;base friction=0.6;block depth=183 mm",
      "block depth=unknown;base friction=0.6",
      ("site behind=ground;level difference=0.6 m;base friction=0.6;block depth=250 mm;course count=7;"
       "soil 1 name=clay loam;ground slope=10 deg"),
      "course count=2;block depth=500 mm;drain outlets=2"};
  lw_result *scratch = calloc(2, sizeof *scratch);
  int found = 0;
  cr_assert_not_null(scratch);
  for (size_t i = 0; i < sizeof walls / sizeof *walls; i++) {
    lw_result *whole = verdict_run(walls[i]), *sliced = verdict_run(walls[i]);
    lw_remedies_find(whole, scratch);
    int fine = slice(sliced, scratch + 1, 1);
    expect_same(whole, sliced, walls[i]);
    int coarse = slice(sliced, scratch + 1, 37);
    expect_same(whole, sliced, walls[i]);
    cr_expect(coarse <= fine && (whole->remedy_count == 0 || coarse > 1), "%d and %d slices", fine, coarse);
    found += whole->remedy_count;
    free(whole);
    free(sliced);
  }
  cr_expect_gt(found, 4);
  free(scratch);
}
