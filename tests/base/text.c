/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <lowwall/base.h>

#include "base/working.h"

Test(base, text_grows_and_keeps_every_byte) {
  lw_text text = {0};
  for (int i = 0; i < 1000; i++) {
    lw_text_addf(&text, "%03d,", i);
  }
  cr_expect(eq(sz, text.length, 4000));
  cr_expect(eq(int, memcmp(text.data + 3996, "999,", 5), 0));
  lw_text_clear(&text);
  cr_expect(eq(str, text.data, ""));
  lw_text_add_bytes(&text, "a\0b", 3);
  cr_expect(eq(sz, text.length, 3));
  lw_text_free(&text);
  cr_expect(text.data == NULL);
}

Test(base, a_long_formatted_text_is_whole) {
  char long_word[1200];
  memset(long_word, 'w', sizeof long_word - 1);
  long_word[sizeof long_word - 1] = '\0';
  lw_text text = {0};
  lw_text_addf(&text, "<%s>", long_word);
  cr_expect(eq(sz, text.length, sizeof long_word - 1 + 2));
  cr_expect(text.data[text.length - 1] == '>');
  lw_text_free(&text);
}

Test(base, text_has_a_ceiling) {
  lw_text text = {0};
  lw_text_add(&text, "kept");
  lw_text_add_bytes(&text, NULL, LW_TEXT_CEILING);
  cr_expect(text.failed);
  lw_text_add(&text, "dropped");
  cr_expect(eq(str, text.data, "kept"));
  lw_text_clear(&text);
  cr_expect(text.failed, "a text used again and again is looked at once, at the end");
  lw_text_free(&text);
}

Test(base, status_and_reason_slugs_are_all_there_and_all_different) {
  for (int i = 0; i <= LW_NOT_WRITTEN; i++) {
    cr_expect(strlen(lw_status_slug((lw_status)i)) > 0 && strlen(lw_status_sentence((lw_status)i)) > 0);
  }
  for (int i = 1; i < LW_REASON_COUNT; i++) {
    cr_expect(strlen(lw_reason_sentence((lw_reason)i)) > 0);
    cr_expect(strcmp(lw_reason_slug((lw_reason)i), lw_reason_slug((lw_reason)(i - 1))) != 0);
  }
  cr_expect(strcmp(lw_reason_slug(LW_REASON_NO_DEMAND), "no-demand") == 0);
  cr_expect(strcmp(lw_status_slug((lw_status)99), "unknown") == 0);
}

Test(base, an_error_takes_its_words_and_may_be_left_out) {
  lw_error error = {0};
  cr_expect(lw_error_set(&error, LW_NOT_READ, LW_REASON_NONE, "%s: %.1f", "soils.csv", 2.5) == LW_NOT_READ);
  cr_expect(eq(str, error.text, "soils.csv: 2.5"));
  cr_expect(error.status == LW_NOT_READ);
  cr_expect(lw_error_set(NULL, LW_NO_MEMORY, LW_REASON_NONE, "x") == LW_NO_MEMORY);
}

typedef struct heard {
  int headings, steps;
  char inserted[64];
} heard;

static void hear_heading(void *context, const char *title) {
  ((heard *)context)->headings += title[0] == 'H';
}

static void hear_step(void *context, const lw_step *step) {
  heard *h = context;
  h->steps++;
  lw_print(h->inserted, sizeof h->inserted, "%s", step->inserted);
}

Test(base, the_recorder_gets_each_step_with_its_numbers_and_may_be_null) {
  heard h = {0};
  lw_working working = {.context = &h, .heading = hear_heading, .step = hear_step};
  lw_working_heading(&working, "Heights");
  lw_working_step(&working, &(lw_step){"Ka", "tan2(45 - phi/2)", "", 0.333, "", ""}, "tan2(45 - %.0f/2)",
                  30.0);
  cr_expect(eq(int, h.headings, 1));
  cr_expect(eq(int, h.steps, 1));
  cr_expect(eq(str, h.inserted, "tan2(45 - 30/2)"));
  lw_working_line(&working, &(lw_step){"R", "mu V", "", 1.0, "kN/m", ""}, "%.1f x %.1f", 0.5, 2.0);
  cr_expect(eq(int, h.steps, 2), "without a way of its own a line is a step");
  lw_working_heading(NULL, "Heights");
  lw_working_step(NULL, &(lw_step){0}, "%d", 1);
}

/* Words put together without printf come out as printf has them, cut where it cuts. */
Test(base, words_are_put_together_as_printf_does) {
  static const char *const words[] = {"", "a", "of nothing", "100 %", "\xC3\xA9 and more than fits in there"};
  enum { WORDS = sizeof words / sizeof *words };
  for (size_t size = 0; size < 48; size++)
    for (size_t i = 0; i < WORDS; i++)
      for (size_t k = 0; k < WORDS; k++) {
        char ours[64] = "untouched", theirs[64] = "untouched";
        int cut = (int)(size % 7);
        int length = lw_print(ours, size, "%s: (%.*s)%s.", words[i], cut, words[k], words[i]);
        cr_expect_eq(length, snprintf(theirs, size, "%s: (%.*s)%s.", words[i], cut, words[k], words[i]));
        cr_expect_str_eq(ours, theirs);
        length = lw_print(ours, size, "%s %d %%", words[i], (int)k);
        cr_expect_eq(length, snprintf(theirs, size, "%s %d %%", words[i], (int)k));
        cr_expect_str_eq(ours, theirs);
      }
  char plain[8];
  cr_expect_eq(lw_print(plain, sizeof plain, "plain"), 5);
  cr_expect_str_eq(plain, "plain");
}
