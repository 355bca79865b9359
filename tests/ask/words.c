/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <lowwall/questions.h>

#include <string.h>

#include "base/canned.h"
#include "../report/units_told.h"
#include "support.h"

static void hold(const char *key, const char *words) {
  char said[LW_HAND_TEST_MAX];
  for (int units = LW_UNITS_METRIC; units <= LW_UNITS_US; units++) {
    lw_canned_told((lw_units)units, words, said, sizeof said);
    units_told_hold(key, said, strlen(said), (lw_units)units);
  }
}

/* Whoever measures in feet is asked in feet, who measures in metres in metres: every word of the table. */
Test(ask_words, every_question_and_answer_is_asked_in_one_units) {
  const lw_tables *tables = ask_tables();
  for (int i = 0; i < tables->question_count; i++) {
    const lw_question_row *row = &tables->question[i];
    const char *const all[] = {row->words, row->labels, row->why, row->not_known, row->hand_test};
    for (size_t k = 0; k < sizeof all / sizeof *all; k++) hold(row->key, all[k]);
  }
  for (int i = 0; i < tables->choice_count; i++) hold(tables->choice[i].key, tables->choice[i].words);
}

Test(ask_words, the_form_asks_in_the_units_that_it_was_made_for) {
  static const lw_form_units MADE[] = {[LW_UNITS_METRIC] = LW_FORM_IN_METRIC, [LW_UNITS_US] = LW_FORM_IN_US};
  for (int units = LW_UNITS_METRIC; units <= LW_UNITS_US; units++) {
    lw_text out = {0};
    lw_error error = {0};
    cr_assert_eq(lw_questions_form_html(ask_tables(), MADE[units], &out), LW_OK);
    const char *body = strstr(out.data, "<body>");
    cr_assert_not_null(body);
    units_told_hold("form", body, strlen(body), (lw_units)units);
    lw_text_free(&out);
    for (int paper = 0; paper < 2; paper++) {
      lw_drawing page[LW_FORM_PAGES] = {0};
      int count = 0;
      cr_expect_eq(lw_questions_form_pages(ask_tables(), (lw_paper)paper, MADE[units], page, &count, &error),
                   LW_OK, "it fits its two pages: %s", error.text);
      for (int i = 0; i < LW_FORM_PAGES; i++) lw_drawing_free(&page[i]);
    }
  }
}

/* The sheet keeps what the person measures in, and what is made of it is said so. */
Test(ask_words, the_sheet_says_that_its_person_measures_in_feet) {
  static const struct {
    bool us;
    const char *before, *says, *not ;
  } ROWS[] = {{true, "", "\nunits,us,", "units,metric"},
              {false, "", "item,", "\nunits,"},
              {false, "item,value,unit,note\nunits,us,,\n", "\nunits,metric,", "units,us"},
              {true, "item,value,unit,note\nunits,metric,,\n", "\nunits,us,", "units,metric"}};
  for (size_t i = 0; i < sizeof ROWS / sizeof *ROWS; i++) {
    const lw_asking_for asking = {.tables = ask_tables(),
                                  .sheet = ROWS[i].before[0] ? ROWS[i].before : NULL,
                                  .length = strlen(ROWS[i].before),
                                  .us = ROWS[i].us};
    lw_text sheet = {0};
    lw_faults faults = {.count = 0};
    cr_assert_eq(lw_question_answer(&asking, "kind", "1", &sheet, &faults), LW_OK);
    cr_expect_not_null(strstr(sheet.data, ROWS[i].says), "%s", sheet.data);
    cr_expect_null(strstr(sheet.data, ROWS[i].not ), "%s", sheet.data);
    lw_text_free(&sheet);
  }
}
