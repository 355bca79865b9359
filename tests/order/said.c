/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "../checks/random_wall.h"
#include "support.h"

#include <criterion/criterion.h>

#include <stdio.h>
#include <string.h>

#include "report/order/words.h"

/* What an order says is true of the wall in front of the person: its courses, and what is told of it. */

static const char *note_words(const lw_order *order, const char *slug) {
  static char words[LW_ORDER_SENTENCE];
  const lw_order_note *note = order_note(order, slug);
  return note ? lw_order_note_words(order, note, words) : "";
}

/* Common practice: 100 mm under up to three courses, 150 mm under more. */
Test(order, the_pad_told_is_that_of_its_courses) {
  for (int courses = 1; courses <= 8; courses++) {
    char items[160], buried[200];
    snprintf(items, sizeof items, "run 1 length=4 m;course count=%d;method slip=not", courses);
    snprintf(buried, sizeof buried, "%s;cap height=60 mm;cap length=600 mm", items);
    const char *each[] = {items, buried};
    for (int k = 0; k < 2; k++) {
      const char *said = note_words(order_of(each[k]), "no-pad");
      cr_expect_not_null(strstr(said, courses <= 3 ? "100 mm of" : "150 mm of"), "%s: %s", each[k], said);
      cr_expect_not_null(strstr(said, courses <= 3 ? "up to 3 courses" : "more than 3 courses"), "%s: %s",
                         each[k], said);
    }
    snprintf(buried, sizeof buried, "%s;pad thickness=120 mm", items);
    cr_expect_null(order_note(order_of(buried), "no-pad"), "%s", buried);
  }
  const char *solid =
      note_words(order_of_solid("base width=600 mm;top width=600 mm;run 1 length=4 m"), "no-pad");
  cr_expect_not_null(strstr(solid, "150 mm of"), "%s", solid);
  cr_expect_not_null(strstr(solid, "without courses"), "%s", solid);
}

typedef struct choice {
  const char *item, *note, *work;
} choice;

static const choice CHOICES[] = {{"stone filter=cloth", NULL, "the cloth laps"},
                                 {"stone filter=graded", "graded-filter", "the filter's layers"},
                                 {"stone filter=none", "no-filter", "the stone is clean."},
                                 {"stone filter=unknown", "filter-not-told", "the stone is clean."},
                                 {"title=nothing said", "filter-not-told", "the stone is clean."}};
enum { COUNT = sizeof CHOICES / sizeof *CHOICES };

static int steps_with(const lw_order *order, const char *part) {
  int found = 0;
  for (int i = 0; i < order->work_count; i++) {
    char words[LW_ORDER_SENTENCE];
    found += strstr(lw_work_words(order, &order->work[i], "", words), part) != NULL ? 1 : 0;
  }
  return found;
}

static void hold(const lw_order *order, const choice *c, bool stone, const char *items) {
  bool cloth = c->note == NULL;
  const lw_site *site = &order_result()->wall.site;
  cr_expect_eq(order_line(order, "geotextile") != NULL, stone && cloth, "%s", items);
  cr_expect_eq(steps_with(order, "cloth") > 0, stone && cloth, "%s", items);
  cr_expect_eq(steps_with(order, c->work), stone ? 1 : 0, "%s", items);
  cr_expect(site->filtered || order_line(order, "geotextile") == NULL, "%s: ordered and not counted", items);
  for (int k = 0; k < COUNT; k++) {
    const char *note = CHOICES[k].note;
    if (note != NULL)
      cr_expect_eq(order_note(order, note) != NULL, stone && !cloth && strcmp(note, c->note) == 0, "%s: %s",
                   items, note);
  }
}

/* Cloth is ordered and looked at where the sheet has cloth, as a check counts it, and nowhere else. */
Test(order, cloth_is_ordered_where_it_is_told) {
  dice d = {815};
  for (int i = 0; i < 24 / RANDOM_SHARE; i++)
    for (int k = 0; k < COUNT; k++) {
      char items[400];
      bool stone = dice_pick(&d, 4) > 0, solid = dice_pick(&d, 3) == 0;
      snprintf(items, sizeof items,
               "run 1 length=%d mm;stone width=%d mm;drain outlets=%d;site behind=%s;%s;%s",
               2000 + 100 * dice_pick(&d, 40), stone ? 150 + 50 * dice_pick(&d, 6) : 0, dice_pick(&d, 3),
               dice_pick(&d, 2) ? "bed" : "ground",
               solid ? "base width=600 mm;top width=600 mm" : "setback=10 mm", CHOICES[k].item);
      hold(solid ? order_of_solid(items) : order_of(items), &CHOICES[k], stone, items);
    }
}

/* From memory [TERZAGHI-PECK-1948 filters]: 4 to 5 times the 85 % and the 15 % size of the soil. */
Test(order, a_graded_filter_has_its_sizes) {
  const char *said =
      note_words(order_of("run 1 length=4 m;stone width=300 mm;stone filter=graded"), "graded-filter");
  cr_expect_not_null(strstr(said, "at most 4 times the 85 % size"), "%s", said);
  cr_expect_not_null(strstr(said, "at least 5 times its 15 % size"), "%s", said);
}

/* Where every run of a plan fits, nothing is cut but the half blocks that are told of. */
Test(order, a_plan_that_needs_no_cut_has_only_the_half_blocks_that_it_is_told) {
  static const char *const plans[] = {"run 1 length=%1$d mm",
                                      "run 1 length=%1$d mm;turn 1 angle=90 deg;run 2 length=%2$d mm",
                                      "run 1 length=%1$d mm;turn 1 angle=90 deg;run 2 length=%2$d mm;turn 2 "
                                      "angle=90 deg;run 3 length=%1$d mm",
                                      "run 1 length=%1$d mm;turn 1 angle=90 deg;run 2 length=%2$d mm;turn 2 "
                                      "angle=90 deg;run 3 length=%1$d mm;"
                                      "turn 3 angle=90 deg;run 4 length=%2$d mm"};
  int fitting[2] = {0};
  for (size_t p = 0; p < sizeof plans / sizeof *plans; p++)
    for (int k = 0; k < 48; k++) {
      char items[320], all[360];
      lw_text text = {0};
      bool fits = true;
      snprintf(items, sizeof items, plans[p], 2400 + 200 * (k % 4), 2000 + 200 * (k / 4 % 4));
      snprintf(all, sizeof all, "%s;course count=%d;method slip=not", items, 1 + k / 16);
      const lw_order *order = order_of(all);
      for (int i = 0; i < order->plan.run_count; i++) fits = fits && order->run[i].fits;
      if (!fits) continue;
      cr_assert_eq(
          lw_report_order_text(order_result(), order, LW_PAGE_ORDER, &(lw_text_style){.columns = 80}, &text),
          LW_OK);
      const order_pieces pieces = order_all(order);
      bool told = strstr(text.data, ", half blocks apart") != NULL;
      cr_expect_eq(pieces.closer, 0, "%s", all);
      cr_expect_eq(told, pieces.half > 0, "%s: %d halves", all, pieces.half);
      fitting[told]++;
      lw_text_free(&text);
    }
  cr_expect(fitting[0] > 5 && fitting[1] > 5, "%d and %d", fitting[0], fitting[1]);
}
