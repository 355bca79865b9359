/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "every_wall.h"

#include <criterion/criterion.h>

#include "support.h"
#include "walls.h"

typedef struct subject {
  const char *what;
  int (*hold)(const every_wall *wall);
  int least; /* things held over all walls */
} subject;

static void hold_each(const subject *all, int count, const every_wall *wall, int *held) {
  for (int i = 0; i < count; i++) held[i] += all[i].hold(wall);
}

static void expect_held(const subject *all, int count, const int *held) {
  for (int i = 0; i < count; i++)
    cr_expect(held[i] >= all[i].least, "%s: %d held, %d meant", all[i].what, held[i], all[i].least);
}

Test(report, what_programs_read_of_every_wall) {
  static const subject ALL[] = {
      {"every null in the JSON says why", every_null_has_a_reason, 21},
      {"the JSON has all that programs count on", every_json_is_whole, 16},
      {"every figure has label, unit and a finite value", every_figure_is_whole, 16 * 50},
      {"no two figures have the same key", every_key_is_alone, 16 * 50},
      {"a row says what the verdict says", every_row_says_what_the_verdict_says, 16},
      {"every key is documented", every_key_is_documented, 16},
  };
  enum { COUNT = sizeof ALL / sizeof *ALL };
  int held[COUNT] = {0};
  for (size_t i = 0; report_test_wall(i) != NULL; i++) {
    const lw_result *result = report_test_result(report_test_wall(i));
    json_t *root = report_test_json(result);
    hold_each(ALL, COUNT, &(every_wall){report_test_wall(i)->name, result, root, NULL, NULL}, held);
    json_decref(root);
  }
  expect_held(ALL, COUNT, held);
  every_documented_key_is_there();
}

Test(report, what_people_read_of_every_sort_of_wall) {
  static const subject ALL[] = {
      {"page and working fit eighty columns", every_line_fits, 24},
      {"the page never gives leave to build", every_page_gives_no_leave_to_build, 12},
      {"the page begins with the headline and ends with what it is not", every_page_begins_and_ends, 12},
      {"the page has no words for programs", every_page_speaks_to_people, 12},
      {"what stands above the remedies is true", every_advice_has_a_true_title, 8},
      {"what is not checked is said", every_page_says_what_is_not_checked, 12},
      {"no number on the page that the JSON lacks", every_number_on_the_page_is_carried, 12 * 20},
      {"no number on the first screen that the JSON lacks", every_number_on_the_screen_is_carried, 12 * 20},
      {"the first screen keeps its size", every_screen_keeps_its_size, 12},
      {"no number on the section that the JSON lacks", every_number_on_the_section_is_carried, 8},
      {"moments printed add up", every_moment_adds_up, 21},
      {"headings head something", every_heading_heads_something, 100},
      {"sums of a table are those of the checks", every_table_has_the_sums_of_the_checks, 21},
      {"sliding written out is right by hand", every_sliding_is_right_by_hand, 11},
      {"each report lists the keys that it cites", every_key_cited_is_listed, 12},
      {"who must sign comes first", every_precheck_says_who_must_sign, 12},
      {"the HTML and SVG of the pre-check close what they open", every_precheck_closes_what_it_opens, 12},
      {"the pre-check speaks its reader's units alone", every_precheck_speaks_one_units, 24},
      {"the pre-check asks nothing twice", every_precheck_asks_once, 50},
      {"Markdown and HTML say what the text says", every_form_says_the_same, 12},
  };
  enum { COUNT = sizeof ALL / sizeof *ALL };
  int held[COUNT] = {0};
  for (size_t i = 0; wall_sorts[i] != NULL; i++) {
    const lw_result *result = wall_of(wall_sorts[i]);
    lw_text json = wall_json(result), page = wall_page(result), working = wall_working(result);
    json_t *root = json_loadb(json.data, json.length, 0, NULL);
    cr_assert(root != NULL);
    hold_each(ALL, COUNT, &(every_wall){wall_sorts[i], result, root, page.data, working.data}, held);
    json_decref(root);
    lw_text_free(&json);
    lw_text_free(&page);
    lw_text_free(&working);
  }
  expect_held(ALL, COUNT, held);
}
