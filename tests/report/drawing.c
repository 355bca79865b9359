/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The drawn section: every wall fits its page, no words stand on others, the SVG is well-formed. */
#include "../checks/random_wall.h"

#include <lowwall/report.h>

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <stdlib.h>

#include "on_paper.h"
#include "../sheet/support.h"

enum { WALLS = 120 / RANDOM_SHARE };
static const double WIDTHS_MM[] = {80.0, 180.0, 100.0};

Test(drawing, every_wall_fits_its_page_and_no_words_stand_on_others) {
  static lw_result result;
  static char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
  dice d = {20261125};
  int drawn = 0;
  for (int i = 0; i < WALLS; i++) {
    random_wall wall = {0};
    random_wall_make(&d, &wall);
    random_wall_hurry(&wall, i);
    if (i % 2) random_wall_add(&wall, "units=us");
    lw_case c = random_wall_case(&wall);
    cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, &result, NULL), LW_OK);
    random_wall_name(&wall, name, sizeof name);
    for (int k = 0; k < 2; k++) { /* two of the three */
      int w = (i + k) % 3;
      lw_drawing drawing = {0};
      lw_error error = {0};
      lw_status status = lw_draw_section(&result, WIDTHS_MM[w], &drawing, &error);
      cr_expect_eq(status == LW_OK, result.wall.section.known, "%s: %s", error.text, name);
      if (status == LW_OK) {
        drawn++;
        expect_on_paper(&drawing, name);
        if (i % 2) expect_no_metric(&drawing, name);
      }
      lw_drawing_free(&drawing);
    }
  }
  cr_expect(lt(int, WALLS, drawn));
}
