/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "complete.h"

#include <string.h>

/* A day is written one way only, YYYY-MM-DD: 03/04 is March in one country and April in the next. */

/* The digits from there on as a number; -1: one of them is no digit. */
static int digits(const char *text, int count) {
  int number = 0;
  for (int i = 0; i < count; i++) {
    if (text[i] < '0' || text[i] > '9') return -1;
    number = 10 * number + (text[i] - '0');
  }
  return number;
}

static int days_in(int year, int month) {
  static const int DAYS[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
  return DAYS[month - 1] + (month == 2 && leap ? 1 : 0);
}

static bool is_day(const char *text) {
  if (strlen(text) != 10 || text[4] != '-' || text[7] != '-') return false;
  int year = digits(text, 4), month = digits(text + 5, 2), day = digits(text + 8, 2);
  return year > 0 && month >= 1 && month <= 12 && day >= 1 && day <= days_in(year, month);
}

void lw_complete_date(lw_completing *s) {
  const lw_words *date = &s->c->about.date;
  if (date->origin == LW_GIVEN && !is_day(date->text))
    lw_complete_fault(s, LW_FAULT_OUT_OF_RANGE, date,
                      "a day of the calendar as year-month-day, as in 2027-03-01");
}
