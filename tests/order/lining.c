/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "../checks/random_wall.h"
#include "../sheet/support.h"
#include "support.h"

#include <criterion/criterion.h>

#include <math.h>
#include <stdio.h>
#include <string.h>

/* One membrane between wall and soil: whichever item says so, friction, joints and order agree. */

typedef struct membrane {
  double friction, ordered_m2, least;
  bool open, named;
} membrane;

static membrane of(const char *items, const char *said) {
  char all[800];
  snprintf(all, sizeof all, "%s;%s", items, said);
  const lw_order *order = order_of(all);
  const lw_order_line *line = order_line(order, "lining");
  const lw_result *r = order_result();
  membrane m = {.friction = r->given.wall.friction.si,
                .ordered_m2 = line ? line->order : 0.0,
                .least = 1e9,
                .open = r->wall.site.joints_open,
                .named = r->given.order.lining.value == LW_YES};
  for (int i = 0; i < r->situations.count; i++) {
    const lw_situation *s = &r->situations.situation[i];
    for (int k = 0; s->decides && k < s->check_count; k++) {
      const lw_check check = lw_situation_check(s, k);
      if (check.counts && check.ratio.known) m.least = fmin(m.least, check.ratio.value);
    }
  }
  return m;
}

static void expect_lined(const char *items, const char *said, const membrane *rough) {
  membrane m = of(items, said);
  cr_expect(m.named && m.ordered_m2 > 0.0 && !m.open, "%s;%s: %g m2, open %d", items, said, m.ordered_m2,
            m.open);
  cr_expect(fabs(m.friction - 0.75 * rough->friction) < 1e-12, "%s;%s: %g", items, said, m.friction);
}

Test(order, a_membrane_is_one_for_check_and_order) {
  static const char *const soils[] = {"clean sand", "sandy loam", "loam", "silt", "road base"};
  static const char *const lined[] = {"wall back=lined", "lining=yes", "wall back=lined;lining=yes",
                                      "wall back=unknown;lining=yes", "wall back=lined;lining=unknown"};
  dice d = {4711};
  for (int i = 0; i < 40 / RANDOM_SHARE; i++) {
    char items[600];
    snprintf(
        items, sizeof items,
        "run 1 length=%d mm;course count=%d;block depth=%d mm;setback=%d mm;site behind=%s;soil 1 name=%s;"
        "footing soil name=%s;wall joints=open;stone width=%d mm;method slip=not",
        1200 + 400 * dice_pick(&d, 8), 2 + dice_pick(&d, 3), 200 + 50 * dice_pick(&d, 5),
        10 * dice_pick(&d, 3), dice_pick(&d, 2) ? "bed" : "ground", soils[dice_pick(&d, 5)],
        soils[dice_pick(&d, 5)], 150 * dice_pick(&d, 3));
    membrane rough = of(items, "wall back=rough"), left_out = of(items, "lining=no"), first;
    cr_expect(rough.open && !rough.named && rough.ordered_m2 <= 0.0, "%s", items);
    cr_expect(memcmp(&rough.least, &left_out.least, sizeof rough.least) == 0, "%s", items);
    for (size_t k = 0; k < sizeof lined / sizeof *lined; k++) {
      expect_lined(items, lined[k], &rough);
      membrane m = of(items, lined[k]);
      if (k == 0) first = m;
      cr_expect(fabs(m.least - first.least) <= 0.0 && fabs(m.ordered_m2 - first.ordered_m2) <= 0.0,
                "%s;%s: %g, not %g", items, lined[k], m.least, first.least);
    }
    membrane smooth = of(items, "wall back=smooth");
    expect_lined(items, "wall back=smooth;lining=yes", &smooth);
  }
}

/* The cell of the lining, and both cures. */
Test(order, a_membrane_that_is_and_is_not_is_a_fault) {
  static const struct {
    const char *back, *lining, *cure;
  } rows[] = {{"wall back=rough", "lining=yes", "`wall back = lined`"},
              {"wall back=lined", "lining=no", "yes, or left out"}};
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
    static lw_case c;
    lw_faults faults = {.count = 0};
    memset(&c, 0, sizeof c);
    static const char *const wall[] = {"course count=3", "block height=200 mm", "block depth=300 mm",
                                       "wall embedment=100 mm"};
    for (int k = 0; k < 4; k++) lw_sheet_override(wall[k], k + 1, &c, &faults);
    lw_sheet_override(rows[i].back, 5, &c, &faults);
    lw_sheet_override(rows[i].lining, 6, &c, &faults);
    cr_expect_eq(lw_case_complete(sheet_test_tables(), &c, &faults), LW_FAULTS);
    cr_assert_eq(faults.count, 1, "%d", faults.count);
    const lw_fault *fault = &faults.fault[0];
    cr_expect(fault->slug == LW_FAULT_CONTRADICTION && strcmp(fault->item, "lining") == 0, "%s", fault->item);
    cr_expect(fault->row == 0 && fault->column == 6, "%d, %d", fault->row, fault->column);
    cr_expect_not_null(strstr(fault->wanted, rows[i].cure), "%s", fault->wanted);
  }
}
