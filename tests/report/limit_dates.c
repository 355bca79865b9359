/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <stdio.h>
#include <string.h>

#include "../verdict/help.h"
#include "report/text/limit_dates.h"

/* Beside each limit stand the date of its text, where it was seen, and when: or that this is not on file. */

static const char *dates_of(const lw_limit_row *row) {
  static char dates[160];
  lw_limit_print_dates(verdict_tables(), row, dates, sizeof dates);
  return dates;
}

Test(limit_dates, every_row_says_where_its_text_was_seen) {
  const lw_tables *tables = verdict_tables();
  for (int i = 0; i < tables->limit_count; i++) {
    const lw_limit_row *row = &tables->limit[i];
    const char *dates = dates_of(row);
    bool own = strcmp(row->status, "own") == 0, law = strcmp(row->status, "law") == 0;
    cr_expect(strncmp(dates, row->as_of, strlen(row->as_of)) == 0, "%s: %s", row->id, dates);
    cr_expect_eq(own, row->of_default, "%s", row->id);
    cr_expect_eq(law, strstr(dates, "seen in the law") != NULL, "%s: %s", row->id, dates);
    cr_expect_eq(strstr(dates, "second-hand") != NULL, strcmp(row->status, "second-hand") == 0, "%s: %s",
                 row->id, dates);
    cr_expect_eq(own, strstr(dates, "ask") == NULL, "%s: %s", row->id, dates);
    cr_expect_eq(row->read[0] != '\0', strstr(dates, "ask again after") != NULL, "%s: %s", row->id, dates);
    cr_expect_not(law && row->from.seen == LW_MEMORY, "%s", row->id);
  }
}

/* Two years on, by `ask-again` of the thresholds. */
Test(limit_dates, a_month_of_reading_says_when_to_ask_again) {
  lw_limit_row row = {.as_of = "in force Jul 2019", .read = "2019-08", .status = "law"};
  cr_expect_str_eq(dates_of(&row),
                   "in force Jul 2019, seen in the law, read 2019-08; ask again after 2021-08");
  row.read[0] = '\0';
  cr_expect_str_eq(dates_of(&row), "in force Jul 2019, seen in the law on a day not on file: ask again");
}
