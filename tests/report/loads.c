/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <string.h>

#include "walls.h"

/* What a report says of loads at a distance, and that it says nothing where there are none. */

static const char bare[] = "wall height=700 mm;wall embedment=100 mm;block height=200 mm;block depth=700 mm";

static bool says(lw_text text, const char *words) {
  bool found = text.data && strstr(text.data, words) != NULL;
  lw_text_free(&text);
  return found;
}

static const lw_result *loaded(const char *more) {
  char items[400];
  lw_print(items, sizeof items, "%s;load 1 kind=line;load 1 force=3 kN/m;load 1 distance=0.5 m%s", bare,
           more);
  return wall_of(items);
}

Test(report, loads_at_a_distance_stand_beside_the_formula_with_their_source) {
  cr_expect(says(wall_page(loaded("")), "(half space)"));
  cr_expect(says(wall_page(loaded("")), "inside the line of influence"));
  cr_expect(says(wall_page(loaded("")), "BOUSSINESQ1885"));
  cr_expect(says(wall_json(loaded("")), "\"loads_by\": \"half space\""));
  cr_expect(says(wall_json(loaded("")), "[BOUSSINESQ1885 line, strip and point]"));
  cr_expect(says(wall_working(loaded("")), "Loads at a distance"));
  cr_expect(says(wall_json(loaded(";method load pressure=curves")), "[TERZAGHI1954 curves]"));
  cr_expect_not(says(wall_json(loaded(";method load pressure=wedge")), "BOUSSINESQ1885"));
}

Test(report, a_load_below_the_base_is_said_to_push_nothing) {
  const char *deep = ";load 1 below ground=1.2 m";
  cr_expect(says(wall_page(loaded(deep)), "Load 1 stands below the rear of the base"));
  cr_expect_not(says(wall_page(loaded(deep)), "line of influence"));
}

Test(report, without_such_loads_nothing_is_said_of_them) {
  cr_expect_not(says(wall_page(wall_of(bare)), "loads at a distance"));
  cr_expect_not(says(wall_page(wall_of(bare)), "line of influence"));
  cr_expect_not(says(wall_json(wall_of(bare)), "BOUSSINESQ1885"));
}
