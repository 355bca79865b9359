/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The questions on paper. */
#include "ask/form.h"
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <ctype.h>
#include <string.h>

Test(ask_form, which_walls_have_a_question_is_said_in_words) {
  for (int i = 0; i < ask_tables()->question_count; i++)
    cr_expect(lw_form_when(ask_tables()->question[i].when) != NULL, "%s: %s", ask_tables()->question[i].key,
              ask_tables()->question[i].when);
}

static int count_words(const lw_drawing *page, const char *words) {
  int count = 0;
  for (size_t i = 0; i < page->mark_count; i++)
    count +=
        page->mark[i].kind == LW_MARK_WORDS && strstr(page->words.data + page->mark[i].words, words) != NULL;
  return count;
}

/* Nothing lies beyond the margins, and no letters are smaller than 7 pt. */
static void expect_inside(const lw_drawing *page) {
  for (size_t i = 0; i < page->mark_count; i++) {
    const lw_mark *mark = &page->mark[i];
    for (size_t k = mark->first; k < mark->first + mark->count; k++)
      cr_expect(page->spot[k].x_mm > 10.0 && page->spot[k].x_mm < page->width_mm - 10.0 &&
                page->spot[k].y_mm > 10.0 && page->spot[k].y_mm < page->height_mm - 10.0);
    cr_expect(mark->kind != LW_MARK_WORDS || mark->size_mm > 7.0 * 25.4 / 72.0 - 0.005, "%.2f mm",
              mark->size_mm);
  }
}

/* Where a column begins there begins a question, or the sketch: none has left a box or a line behind. The
 * first page begins with its title and its lead, each ends with a line below all columns. */
static int expect_whole(const lw_drawing *page, bool first) {
  double middle = page->width_mm / 2.0, before = first ? 0.0 : -1.0;
  int columns = 0;
  for (size_t i = 0; i < page->mark_count; i++) {
    const lw_mark *mark = &page->mark[i];
    const char *words = page->words.data + mark->words;
    if (mark->kind != LW_MARK_WORDS || page->spot[mark->first].y_mm > page->height_mm - 16.0) continue;
    double column = page->spot[mark->first].x_mm > middle ? 1.0 : 0.0;
    if (column > before) {
      cr_expect(mark->bold && (isdigit((unsigned char)words[0]) || strncmp(words, "Sketch", 6) == 0), "%s",
                words);
      columns++;
    }
    if (column > before) before = column;
  }
  return columns;
}

Test(ask_form, a_question_stays_with_its_boxes) {
  for (int paper = LW_PAPER_A4; paper <= LW_PAPER_LETTER; paper++) {
    lw_drawing page[LW_FORM_PAGES] = {0};
    lw_error error = {0};
    int count = 0;
    cr_assert(lw_questions_form_pages(ask_tables(), (lw_paper)paper, LW_FORM_IN_BOTH, page, &count, &error) ==
              LW_OK);
    cr_expect(eq(int, expect_whole(&page[0], true), 1));
    cr_expect(eq(int, expect_whole(&page[1], false), 2));
    for (int i = 0; i < LW_FORM_PAGES; i++) lw_drawing_free(&page[i]);
  }
}

Test(ask_form, the_pages_of_either_paper_hold_every_question_and_a_sketch) {
  for (int paper = LW_PAPER_A4; paper <= LW_PAPER_LETTER; paper++) {
    lw_drawing page[LW_FORM_PAGES] = {0};
    lw_error error = {0};
    int boxes = 0, choices = 0, count = 0;
    cr_assert(lw_questions_form_pages(ask_tables(), (lw_paper)paper, LW_FORM_IN_BOTH, page, &count, &error) ==
                  LW_OK,
              "%s", error.text);
    cr_assert(eq(int, count, LW_FORM_PAGES));
    for (int i = 0; i < LW_FORM_PAGES; i++) {
      expect_inside(&page[i]);
      for (size_t k = 0; k < page[i].mark_count; k++)
        boxes += page[i].mark[k].kind == LW_MARK_AREA && page[i].mark[k].pen == LW_PEN_SEEN;
    }
    for (int i = 0; i < ask_tables()->question_count; i++) {
      const lw_question q = lw_question_of(ask_tables(), i);
      bool ticks = q.row->kind == LW_QUESTION_CHOICE || q.row->kind == LW_QUESTION_SEVERAL;
      bool place = strcmp(q.row->key, "place") == 0; /* words, and a box for who does not know */
      choices += ticks ? q.choice_count + (q.row->not_known[0] != '\0') + (q.row->kind == LW_QUESTION_SEVERAL)
                       : place;
    }
    cr_expect(eq(int, boxes, choices));
    cr_expect(eq(int, count_words(&page[LW_FORM_PAGES - 1], "For the officer"), 1));
    cr_expect(eq(int, count_words(&page[0], "Sketch") + count_words(&page[1], "Sketch"), 1));
    for (int i = 0; i < LW_FORM_PAGES; i++) lw_drawing_free(&page[i]);
  }
}

/* Whoever has the paper alone can knead the ribbon that a box speaks of. */
Test(ask_form, each_test_by_hand_stands_on_the_paper_under_its_number) {
  for (int paper = LW_PAPER_A4; paper <= LW_PAPER_LETTER; paper++) {
    lw_drawing page[LW_FORM_PAGES] = {0};
    lw_error error = {0};
    int count = 0, tests = 0;
    cr_assert(lw_questions_form_pages(ask_tables(), (lw_paper)paper, LW_FORM_IN_BOTH, page, &count, &error) ==
              LW_OK);
    const lw_drawing *last = &page[LW_FORM_PAGES - 1];
    for (int i = 0; i < ask_tables()->question_count; i++) {
      const lw_question_row *row = &ask_tables()->question[i];
      char words[24];
      lw_ask_part step;
      if (row->part == LW_QUESTION_OFFICER || row->hand_test[0] == '\0') continue;
      lw_print(words, sizeof words, "%d  %.12s", i + 1, row->words);
      cr_expect(gt(int, count_words(last, words), 0), "%s", words);
      for (const char *at = row->hand_test; lw_ask_next(&at, '|', &step); tests++) {
        lw_print(words, sizeof words, "%.*s", (int)(step.length < 14 ? step.length : 14), step.text);
        cr_expect(gt(int, count_words(last, words), 0), "%s", words);
      }
    }
    cr_expect(gt(int, tests, 20));
    for (int i = 0; i < LW_FORM_PAGES; i++) lw_drawing_free(&page[i]);
  }
}

Test(ask_form, the_page_of_html_has_every_question_and_asks_nothing_of_elsewhere) {
  lw_text out = {0};
  cr_assert(lw_questions_form_html(ask_tables(), LW_FORM_IN_BOTH, &out) == LW_OK);
  for (int i = 0; i < ask_tables()->question_count; i++)
    cr_expect(strstr(out.data, ask_tables()->question[i].words) != NULL, "%s",
              ask_tables()->question[i].words);
  cr_expect(strstr(out.data, "http") == NULL && strstr(out.data, "<script") == NULL);
  lw_text_free(&out);
}

/* Of a council that asks nothing besides the last page has the tests by hand alone. */
Test(ask_form, without_an_officer_s_part_the_last_page_has_the_tests) {
  static lw_tables tables;
  lw_drawing page[LW_FORM_PAGES] = {0};
  lw_error error = {0};
  int count = 0;
  tables = *ask_tables();
  for (int i = 0; i < tables.question_count; i++)
    if (tables.question[i].part == LW_QUESTION_OFFICER) tables.question_count = i;
  cr_assert(lw_questions_form_pages(&tables, LW_PAPER_A4, LW_FORM_IN_BOTH, page, &count, &error) == LW_OK,
            "%s", error.text);
  cr_expect(eq(int, count, LW_FORM_PAGES));
  cr_expect(eq(int, count_words(&page[count - 1], "For the officer"), 0));
  cr_expect(eq(int, count_words(&page[count - 1], "How to find out"), 1));
  for (int i = 0; i < LW_FORM_PAGES; i++) lw_drawing_free(&page[i]);
}
