/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <string.h>

#include "sheet/faults.h"

#include "support.h"

/* A list of faults that is full takes no more. What is read after that may be faulty in silence, so none of
 * it is told to be well, and nothing of it is kept. */

static lw_faults faults;
static lw_case c, before;

static void fill(void) {
  faults.count = 0;
  for (int i = 0; i < LW_FAULT_MAX; i++)
    lw_faults_add(&faults, LW_FAULT_NO_UNIT, (lw_cell_place){i + 1, 2}, "", "", "900 mm");
  cr_assert_eq(faults.count, LW_FAULT_MAX);
}

Test(full_list, a_sheet_is_not_told_to_be_well) {
  static const char *const sheets[] = {"item,value\nwall height,900\n", "item,value\nwal height,900 mm\n",
                                       "item,value\n", ""};
  for (size_t i = 0; i < sizeof sheets / sizeof *sheets; i++) {
    fill();
    memset(&c, 0, sizeof c);
    cr_expect_eq(lw_sheet_read(sheets[i], strlen(sheets[i]), &c, &faults), LW_FAULTS, "%s", sheets[i]);
    cr_expect_eq(faults.count, LW_FAULT_MAX);
    cr_expect_eq(faults.fault[LW_FAULT_MAX - 1].slug, LW_FAULT_NO_ROOM);
  }
}

Test(full_list, a_case_is_not_complete) {
  static const char *const sheets[] = {"item,value\n", "item,value\nblock depth,300 mm\n",
                                       "item,value\ncourse count,4\nblock height,200 mm\nwall height,5 m\n"};
  for (size_t i = 0; i < sizeof sheets / sizeof *sheets; i++) {
    memset(&c, 0, sizeof c);
    faults.count = 0;
    (void)lw_sheet_read(sheets[i], strlen(sheets[i]), &c, &faults);
    fill();
    cr_expect_eq(lw_case_complete(sheet_test_tables(), &c, &faults), LW_FAULTS, "%s", sheets[i]);
    cr_expect(!c.complete, "%s", sheets[i]);
  }
}

Test(full_list, an_item_that_is_none_changes_nothing) {
  static const char *const items[] = {"wall height=900", "wall height=tall", "course count=99",
                                      "wall kind=hedge", "nothing",          "wal height=1 m"};
  memset(&c, 0, sizeof c);
  before = c;
  for (size_t i = 0; i < sizeof items / sizeof *items; i++) {
    fill();
    cr_expect_eq(lw_sheet_override(items[i], 1, &c, &faults), LW_FAULTS, "%s", items[i]);
    cr_expect_eq(memcmp(&c, &before, sizeof c), 0, "%s", items[i]);
  }
}
