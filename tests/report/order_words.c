/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/order/words.h"

#include <criterion/criterion.h>

#include <string.h>

/* An order holds slugs and numbers; each has its words, and no two have the same. */

static void expect_words(const char *words, const char *slug) {
  cr_assert(words != NULL && strlen(words) > 3, "%s", slug);
  cr_expect(strlen(words) < LW_ORDER_SENTENCE - 40, "%s", slug);
}

Test(order_words, every_line_has_its_name) {
  char name[LW_LINE_NAME], other[LW_LINE_NAME], note[LW_LINE_NOTE];
  for (int i = 0; i < LW_LINE_COUNT; i++) {
    lw_order_line line = {.kind = (lw_line_kind)i};
    const char *slug = lw_order_line_slug(line.kind),
               *words = lw_order_line_name(&line, LW_UNITS_METRIC, name);
    expect_words(words, slug);
    cr_expect_not_null(lw_order_line_note(&line, LW_UNITS_METRIC, note), "%s", slug);
    cr_expect(strlen(lw_line_unit_slug(lw_order_line_unit(line.kind))) > 0, "%s", slug);
    for (int k = 0; k < i; k++) {
      lw_order_line before = {.kind = (lw_line_kind)k};
      cr_expect_str_neq(words, lw_order_line_name(&before, LW_UNITS_METRIC, other));
      cr_expect_str_neq(slug, lw_order_line_slug(before.kind));
    }
  }
}

Test(order_words, every_note_has_its_sentence) {
  static lw_order order;
  char words[LW_ORDER_SENTENCE], slug[LW_NOTE_SLUG];
  order.corner_count = 1;
  for (int i = 0; i < LW_NOTE_COUNT; i++) {
    lw_order_note note = {.kind = (lw_order_note_kind)i, .number = 1, .step = 1};
    expect_words(lw_order_note_words(&order, &note, words), lw_order_note_name(&note, slug));
    for (int k = 0; k < i; k++)
      cr_expect_str_neq(lw_order_note_slug(note.kind), lw_order_note_slug((lw_order_note_kind)k));
  }
}

Test(order_words, every_step_of_the_work_has_its_sentence) {
  static lw_order order;
  char words[LW_ORDER_SENTENCE];
  for (int i = 0; i < LW_WORK_COUNT; i++) {
    lw_work_step step = {.kind = (lw_work_kind)i};
    expect_words(lw_work_words(&order, &step, "", words), "work");
  }
}

Test(order_words, every_level_has_its_name) {
  char name[LW_SPOT_NAME];
  for (int i = 0; i < LW_LEVEL_KINDS; i++)
    expect_words(lw_level_name(&(lw_level){.kind = (lw_level_kind)i}, name), "level");
}
