/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "base/print.h"
#include "report/page.h"

#include <criterion/criterion.h>

#include <stdlib.h>
#include <string.h>

static lw_page page_of(lw_text *text, int columns, bool colour) {
  return (lw_page){.out = text, .style = {.colour = colour, .columns = columns}};
}

Test(report, text_wraps_at_its_columns_and_indents) {
  lw_text text = {0};
  lw_page page = page_of(&text, 40, false);
  lw_page_say(&page, "  - ", "one two three four five six seven eight nine ten");
  cr_assert_str_eq(text.data, "  - one two three four five six seven\n    eight nine ten\n");
  lw_text_free(&text);
}

Test(report, text_counts_characters_not_bytes) {
  lw_text text = {0};
  lw_page page = page_of(&text, 40, false);
  /* 40 columns in 42 bytes fit on the line. */
  lw_page_say(&page, "", "\xC3\xA9\xC3\xA8 aaaaaaaaaa bbbbbbbbbb cccccccccc dddd");
  cr_assert_str_eq(text.data, "\xC3\xA9\xC3\xA8 aaaaaaaaaa bbbbbbbbbb cccccccccc dddd\n");
  lw_text_free(&text);
}

Test(report, text_longer_than_a_line_stands_alone) {
  lw_text text = {0};
  lw_page page = page_of(&text, 40, false);
  lw_page_say(&page, "  ", "a bbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbb c");
  cr_assert_str_eq(text.data, "  a\n  bbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbbb\n  c\n");
  lw_text_free(&text);
}

/* Every unit that there is, behind a number that would just have had room. */
Test(report, a_number_keeps_its_unit) {
  const lw_unit *unit;
  for (size_t i = 0; (unit = lw_unit_at(i)) != NULL; i++)
    for (int fill = 25; fill < 45; fill++) {
      lw_text text = {0};
      char words[120], pair[48];
      lw_page page = page_of(&text, 40, false);
      lw_print(pair, sizeof pair, "12.5 %s,", unit->name);
      lw_print(words, sizeof words, "%.*s %s then", fill, "aaaa aaaa aaaa aaaa aaaa aaaa aaaa aaaa aaaa aaaa",
               pair);
      lw_page_say(&page, "", words);
      cr_expect_not_null(strstr(text.data, pair), "%s", text.data);
      lw_text_free(&text);
    }
}

Test(report, a_value_keeps_what_it_is) {
  for (int fill = 20; fill < 45; fill++) {
    lw_text text = {0};
    char words[120];
    lw_page page = page_of(&text, 40, false);
    lw_print(words, sizeof words, "%.*s rho = 57.25 deg, d = 10", fill,
             "aaaa aaaa aaaa aaaa aaaa aaaa aaaa aaaa aaaa aaaa");
    lw_page_say(&page, "", words);
    cr_expect(strstr(text.data, "rho = 57.25 deg,") && strstr(text.data, "d = 10"), "%s", text.data);
    lw_text_free(&text);
  }
}

Test(report, a_word_that_begins_like_a_unit_is_none) {
  lw_text text = {0};
  lw_page page = page_of(&text, 40, false);
  lw_page_say(&page, "", "aaaa aaaa aaaa aaaa aaaa aaaa aaaa aa 12 months 3");
  cr_assert_str_eq(text.data, "aaaa aaaa aaaa aaaa aaaa aaaa aaaa aa 12\nmonths 3\n");
  lw_text_free(&text);
}

Test(report, colour_only_where_it_is_asked_for) {
  lw_text with = {0}, without = {0};
  lw_page a = page_of(&with, 80, true), b = page_of(&without, 80, false);
  lw_page_tone(&a, LW_TONE_BAD, "", "falls short");
  lw_page_tone(&b, LW_TONE_BAD, "", "falls short");
  cr_assert_not_null(strchr(with.data, '\033'));
  cr_assert_not_null(strstr(with.data, "falls short"));
  cr_assert_str_eq(without.data, "falls short\n");
  lw_text_free(&with);
  lw_text_free(&without);
}

Test(report, text_of_the_user_cannot_steer_the_terminal) {
  static const struct {
    const char *stood, *printed;
  } cases[] = {
      {"plain", "plain"},
      {"a\033[2Jb", "a?[2Jb"},
      {"tab\tline\n", "tab?line?"},
      {"\xC2\x9B"
       "31m",
       "?31m"},                                   /* a control in two bytes */
      {"\xC3\xA9t\xC3\xA9", "\xC3\xA9t\xC3\xA9"}, /* good */
      {"\xC3", "?"},                              /* cut */
      {"\xE2\x82", "??"},                         /* cut */
      {"\xC0\xAF", "??"},                         /* overlong */
      {"\xED\xA0\x80", "???"},                    /* half of a pair */
      {"\xF4\x90\x80\x80", "????"},               /* beyond the last character */
      {"\xF0\x9F\xAA\xB4", "\xF0\x9F\xAA\xB4"},
  };
  for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
    char out[32];
    lw_text_clean(cases[i].stood, out, sizeof out);
    cr_expect_str_eq(out, cases[i].printed, "case %zu", i);
  }
}

Test(report, text_that_is_cut_is_cut_at_a_whole_character) {
  char out[4];
  lw_text_clean("ab\xC3\xA9", out, sizeof out);
  cr_assert_str_eq(out, "ab");
}

Test(report, numbers_of_the_page) {
  char out[16];
  lw_page_number((lw_number){1.2345, true}, out, sizeof out);
  cr_expect_str_eq(out, "1.23");
  lw_page_number((lw_number){0.0, false}, out, sizeof out);
  cr_expect_str_eq(out, "-");
  lw_page_number((lw_number){123456.0, true}, out, sizeof out);
  cr_expect_str_eq(out, ">999");
}
