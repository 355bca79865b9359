/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/result.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../sheet/support.h"

/* One word brings what a book's sheet says method by method. */

static const struct book {
  const char *word, *sheet, *more; /* more: what the book says besides its sheet */
} books[] = {
    {"das gravity", "das-pfe-8-4",
     "method passive=100 %;method passive as=resistance;method passive by=rankine"},
    {"das cantilever", "das-pfe-8-1",
     "method passive=100 %;method passive as=resistance;method passive by=rankine"},
    {"craig gravity", "craig-gravity", ""},
    {"craig cantilever", "craig-cantilever-q40", ""},
    {"punmia dam", "punmia-8-11", ""},
};

/* A sheet of the handbook as it is, or without its method items. */
static lw_case read_sheet(const struct book *book, bool methods, const lw_tables *tables) {
  char path[128], more[160];
  static char kept[16384];
  lw_case c;
  lw_faults faults = {.count = 0};
  snprintf(path, sizeof path, "tests/handbook/walls/%s.csv", book->sheet);
  lw_text text = sheet_test_file(path);
  kept[0] = '\0';
  for (const char *at = text.data; *at != '\0';) {
    size_t length = strcspn(at, "\n");
    if (methods || strncmp(at, "method", 6) != 0) strncat(kept, at, length + 1);
    at += length + (at[length] == '\n' ? 1 : 0);
  }
  lw_text_free(&text);
  cr_assert_eq(lw_sheet_read(kept, strlen(kept), &c, &faults), LW_OK, "%s", book->sheet);
  if (methods)
    snprintf(more, sizeof more, "%s", book->more);
  else
    snprintf(more, sizeof more, "method conventions=%s", book->word);
  for (char *at = more; *at != '\0';) {
    size_t length = strcspn(at, ";");
    char one[96];
    snprintf(one, sizeof one, "%.*s", (int)length, at);
    cr_assert_eq(lw_sheet_override(one, 1, &c, &faults), LW_OK, "%s", one);
    at += length + (at[length] == ';' ? 1 : 0);
  }
  cr_assert_eq(lw_case_complete(tables, &c, &faults), LW_OK, "%s: %s", book->word, faults.fault[0].wanted);
  return c;
}

Test(handbook, one_word_brings_a_books_conventions) {
  lw_tables *tables = malloc(sizeof *tables);
  lw_result *by_items = malloc(sizeof *by_items), *by_word = malloc(sizeof *by_word);
  cr_assert(tables && by_items && by_word);
  cr_assert_eq(lw_tables_read(NULL, tables, NULL), LW_OK);
  cr_assert_eq(tables->conventions_count, (int)(sizeof books / sizeof *books), "a book without a sheet");
  for (size_t i = 0; i < sizeof books / sizeof *books; i++) {
    lw_case items = read_sheet(&books[i], true, tables), word = read_sheet(&books[i], false, tables);
    cr_assert_eq(lw_run(&items, tables, LW_DETAIL_EVERYTHING, by_items, NULL), LW_OK);
    cr_assert_eq(lw_run(&word, tables, LW_DETAIL_EVERYTHING, by_word, NULL), LW_OK);
    const lw_situation *a = &by_items->situations.situation[0], *b = &by_word->situations.situation[0];
    cr_assert_eq(a->check_count, b->check_count, "%s", books[i].word);
    for (int k = 0; k < a->check_count; k++) {
      double x = lw_situation_check(a, k).has.known ? lw_situation_check(a, k).has.value : -1.0,
             y = lw_situation_check(b, k).has.known ? lw_situation_check(b, k).has.value : -1.0;
      cr_expect_lt(fabs(x - y), 1e-12, "%s, check %d: %g and %g", books[i].word, k, x, y);
    }
  }
  free(by_word);
  free(by_items);
  free(tables);
}

/* What the sheet gives outranks the book; completing anew follows the word; one that no row has is a
 * fault. */
Test(handbook, what_is_given_outranks_conventions) {
  lw_tables *tables = malloc(sizeof *tables);
  lw_case c = CASE("wall height=1 m", "base width=0.8 m", "top width=0.4 m", "method conventions=punmia dam",
                   "method uplift=50 %");
  lw_faults faults = {.count = 0};
  cr_assert_not_null(tables);
  cr_assert_eq(lw_tables_read(NULL, tables, NULL), LW_OK);
  cr_expect(c.method.uplift.origin == LW_GIVEN && c.method.uplift.si > 0.49);
  cr_expect(c.method.base_pressure.origin == LW_TABLE && c.method.base_pressure.value == LW_BASE_LINEAR);
  c.complete = false;
  snprintf(c.method.conventions.text, sizeof c.method.conventions.text, "%s", "craig cantilever");
  cr_assert_eq(lw_case_complete(tables, &c, &faults), LW_OK);
  cr_expect(c.method.base_pressure.origin != LW_TABLE && c.method.surcharge_on_heel.origin == LW_TABLE);
  c.complete = false;
  snprintf(c.method.conventions.text, sizeof c.method.conventions.text, "%s", "nobody");
  cr_expect_eq(lw_case_complete(tables, &c, &faults), LW_FAULTS);
  cr_expect_eq(faults.fault[0].slug, LW_FAULT_UNKNOWN_ROW);
  free(tables);
}
