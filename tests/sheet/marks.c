/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <stdio.h>
#include <string.h>

#include "support.h"

/* A mark names one wall of a schedule: none may be there twice or be left out. */

typedef struct seen {
  int rows, twice, without, other;
} seen;

static void take(void *context, int row, const lw_case *c, const lw_faults *faults) {
  seen *s = context;
  (void)row;
  (void)c;
  s->rows++;
  for (int i = 0; i < faults->count; i++) {
    lw_fault_slug slug = faults->fault[i].slug;
    s->twice += slug == LW_FAULT_DUPLICATE_MARK ? 1 : 0;
    s->without += slug == LW_FAULT_NO_MARK ? 1 : 0;
    s->other += slug != LW_FAULT_DUPLICATE_MARK && slug != LW_FAULT_NO_MARK ? 1 : 0;
  }
}

static seen read_schedule(const char *text) {
  seen s = {0};
  lw_faults faults = {.count = 0};
  lw_schedule *schedule = lw_schedule_open(take, &s, &faults);
  cr_assert_not_null(schedule);
  cr_expect_eq(lw_schedule_feed(schedule, text, strlen(text)), LW_OK);
  cr_expect_eq(lw_schedule_finish(schedule), LW_OK);
  lw_schedule_close(schedule);
  return s;
}

Test(sheet, a_mark_that_is_there_twice_or_not_is_a_fault) {
  seen s = read_schedule("mark,wall height [mm]\nA,400\nB,400\nA,400\n,400\nb,400\n,400\n");
  cr_expect(s.rows == 6 && s.twice == 1 && s.without == 2 && s.other == 0, "%d %d %d", s.twice, s.without,
            s.other);
  s = read_schedule("wall height [mm]\n400\n400\n");
  cr_expect(s.rows == 2 && s.twice == 0 && s.without == 0, "no column of marks asks for none");
}

/* Many marks, each seventh of them for a second time: as many faults as repetitions. */
Test(sheet, of_many_marks_each_repetition_is_found) {
  enum { ROWS = 20000 };
  seen s = {0};
  lw_faults faults = {.count = 0};
  lw_schedule *schedule = lw_schedule_open(take, &s, &faults);
  static const char header[] = "mark,course count\n";
  int again = 0;
  cr_assert_not_null(schedule);
  lw_schedule_feed(schedule, header, sizeof header - 1);
  for (int i = 0; i < ROWS; i++) {
    char row[48];
    bool repeat = i % 7 == 6;
    int length = snprintf(row, sizeof row, "W%d,2\n", repeat ? i - 3 : i);
    again += repeat ? 1 : 0;
    cr_assert_eq(lw_schedule_feed(schedule, row, (size_t)length), LW_OK);
  }
  lw_schedule_finish(schedule);
  lw_schedule_close(schedule);
  cr_expect(s.rows == ROWS && s.twice == again && s.without == 0, "%d of %d", s.twice, again);
}
