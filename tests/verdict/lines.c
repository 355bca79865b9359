/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "../checks/random_wall.h"
#include "help.h"

#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* How far behind a wall and beside a dig something counts is drawn by rows of the table: a council that draws
 * a line flatter asks about what stands further off. */

static double *value_of(lw_tables *tables, const char *slug) {
  for (int i = 0; i < tables->threshold_count; i++)
    if (strcmp(tables->threshold[i].slug, slug) == 0) return &tables->threshold[i].value;
  cr_assert_fail("no threshold %s", slug);
  return NULL;
}

/* What a line calls up, the item that has its distance, and from which depth the line is drawn. */
static const struct {
  const char *row, *item, *slug;
  lw_answer answer;
  bool dig;
} LINES[] = {{"reach-line", "building distance", "wedge-building", LW_ANSWER_WHAT, false},
             {"reach-line", "boundary distance", "wedge-boundary", LW_ANSWER_WHAT, false},
             {"reach-line", "public way distance", "wedge-public-way", LW_ANSWER_WHAT, false},
             {"reach-line", "building distance", "supports-building", LW_ANSWER_WHO, false},
             {"reach-line", "boundary distance", "boundary", LW_ANSWER_WHO, false},
             {"reach-line", "public way distance", "public-way", LW_ANSWER_WHO, false},
             {"dig-line", "service distance", "digs-below-footing", LW_ANSWER_WHO, true},
             {"dig-line", "building distance", "digs-below-footing", LW_ANSWER_WHO, true}};

Test(verdict, what_counts_behind_and_beside_is_drawn_by_rows) {
  lw_tables *tables = verdict_tables_copy();
  double *reach = value_of(tables, "reach-line"), *dig = value_of(tables, "dig-line");
  dice d = {4545};
  for (int i = 0; i < 60; i++) {
    int buried_mm = 350 + 50 * dice_pick(&d, 4), shown_mm = 200 * (1 + dice_pick(&d, 3));
    double runs[] = {dice_between(&d, 0.3, 3.0), 0.0};
    runs[1] = dice_between(&d, 0.2, runs[0]); /* beyond the reach a dig would call up the boundary */
    *reach = runs[0];
    *dig = runs[1];
    for (size_t k = 0; k < sizeof LINES / sizeof *LINES; k++) {
      double deep_m = 0.001 * (LINES[k].dig ? buried_mm : buried_mm + shown_mm);
      double line_m = runs[LINES[k].dig ? 1 : 0] * deep_m;
      for (int inside = 0; inside < 2; inside++) {
        char changes[240];
        snprintf(changes, sizeof changes,
                 "site behind=ground;ground slope=0 deg;soil below top=0 mm;wall height=%d mm;"
                 "wall embedment=%d mm;course count=unknown;cut depth=0 mm;block height=50 mm;%s=%.6f m",
                 shown_mm, buried_mm, LINES[k].item, line_m + (inside ? -0.001 : 0.001));
        lw_verdict v = verdict_with(tables, changes, LW_HOLDS);
        cr_expect_eq(verdict_reason(&v, LINES[k].answer, LINES[k].slug) != NULL, inside, "%s, %s at %g: %s",
                     LINES[k].slug, LINES[k].row, runs[LINES[k].dig ? 1 : 0], changes);
      }
    }
  }
  free(tables);
}
