/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/random_wall.h"
#include "every_wall.h"
#include "forms_read.h"
#include "markup.h"
#include "report/page.h"

#include <lowwall/report.h>

/* Every form of a report says the same words in the same order, and what a user wrote stays text in each. */

typedef lw_status report(const lw_result *result, const lw_text_style *style, lw_text *out);

static void hold_report(const char *name, const lw_result *result, report *of) {
  lw_text made[LW_AS_COUNT] = {{0}};
  for (int as = 0; as < LW_AS_COUNT; as++) {
    const lw_text_style style = {.columns = 80, .as = (lw_as)as};
    lw_report_begin(&style, result->given.about.title.text, &made[as]);
    cr_assert_eq(of(result, &style, &made[as]), LW_OK);
    lw_report_end(&style, &made[as]);
  }
  forms_expect_same(name, made[LW_AS_TEXT].data, made[LW_AS_MARKDOWN].data, made[LW_AS_HTML].data);
  for (int as = 0; as < LW_AS_COUNT; as++) lw_text_free(&made[as]);
}

static void hold_reports(const char *name, const lw_result *result) {
  hold_report(name, result, lw_report_screen);
  hold_report(name, result, lw_report_text);
  hold_report(name, result, lw_report_working);
}

int every_form_says_the_same(const every_wall *wall) {
  hold_reports(wall->name, wall->result);
  return 1;
}

/* What would be taken for something else in one form or another. */
static const char *const TITLES[] = {"# *x* <script> | a",
                                     "</h1><script>alert(1)</script>",
                                     "[a](javascript:b) ![i](u) <http://c>",
                                     "&lt;b&gt; &amp; &#60; &copy;",
                                     "```",
                                     "`a` ``b``",
                                     "1. x",
                                     "12) y",
                                     "3.",
                                     "4.5 m of it",
                                     "+ z",
                                     "- z",
                                     "===",
                                     "---",
                                     "    far in",
                                     "_a_ __b__ ~~c~~ $d$ {e}",
                                     "\\*a\\* \\",
                                     "https://www.example.org/a_b a@example.org",
                                     "\"quoted\" 'single'",
                                     "a ## ",
                                     "**a** b**",
                                     "Gr\xC3\xBC\xC3\x9F\x65 \xE2\x80\x94 \xE2\x98\x83"};
enum { TITLE_COUNT = sizeof TITLES / sizeof *TITLES, WALLS = 2 * TITLE_COUNT };

Test(report, what_a_user_wrote_stays_text_in_every_form) {
  dice d = {20261129};
  for (int i = 0; i < WALLS / RANDOM_SHARE; i++) {
    random_wall wall;
    char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
    random_wall_make(&d, &wall);
    random_wall_hurry(&wall, i);
    if (i % 2 == 1) random_wall_add(&wall, "units=us");
    random_wall_add(&wall, "title=%s", TITLES[i % TITLE_COUNT]);
    random_wall_add(&wall, "mark=%s", TITLES[(7 * i + 3) % TITLE_COUNT]);
    lw_result *result = random_wall_run(&wall);
    hold_reports(random_wall_name(&wall, name, sizeof name), result);
    free(result);
  }
}

/* Whatever comes by a page, controls and marks of cells too: a page has no say in what is put on it. */
static void put_all(const lw_page *page, const char *words) {
  lw_page_headline(page, LW_TONE_BAD, words);
  lw_page_heading(page, words);
  lw_page_part(page, words);
  lw_page_say(page, "  - ", words);
  lw_page_say(page, "  ? ", words);
  lw_page_linef(page, LW_TONE_PLAIN, "    typed: %s", words);
  lw_page_say(page, "  3. ", words);
  lw_page_say(page, "     ", words);
  lw_page_say(page, "  Name     ", words);
  lw_page_say(page, "           ", words);
  lw_page_tone(page, LW_TONE_STRONG, "  ", words);
  lw_page_linef(page, LW_TONE_PLAIN, "%s", words);
  lw_page_titledf(page, "|%-9s|%9s |%s", "title", "has", "by");
  lw_page_rowf(page, LW_TONE_BAD, "  |%-7s|%9.2f%c |%s", "first", 1.25, 'm', words);
  lw_page_sayf(page, "      ", "%s", words);
  lw_page_headf(page, "|%-9s|%9s", "", "x");
  lw_page_rowf(page, LW_TONE_PLAIN, "|%-9s|%9s", words, "2");
  lw_page_say(page, "  Ka   = ", words);
  lw_page_say(page, "       : ", words);
  lw_page_say(page, "       = ", words);
  lw_page_blank(page);
  lw_page_numbers(page, "   depth       A");
  lw_page_numbers(page, "   1.000        ");
  lw_page_numbers(page, "   2.000   3.000");
}

static void put_as(lw_as as, const char *words, lw_text *out) {
  const lw_text_style style = {.columns = 80, .as = as};
  lw_text kept = {0};
  const lw_page page = lw_page_open(&style, LW_UNITS_METRIC, out, &kept);
  put_all(&page, words);
  cr_assert_eq(lw_page_close(&page, out), LW_OK);
}

Test(report, every_call_of_a_page_takes_any_words) {
  for (int i = 0; i < TITLE_COUNT; i++) {
    lw_text made[LW_AS_COUNT] = {{0}};
    for (int as = 0; as < LW_AS_COUNT; as++) put_as((lw_as)as, TITLES[i], &made[as]);
    forms_expect_same(TITLES[i], made[LW_AS_TEXT].data, made[LW_AS_MARKDOWN].data, made[LW_AS_HTML].data);
    for (int as = 0; as < LW_AS_COUNT; as++) lw_text_free(&made[as]);
  }
}

Test(report, controls_end_no_element_of_a_page) {
  char every[0x20 + 1];
  for (int c = 1; c < 0x20; c++) every[c - 1] = (char)c;
  every[0x1F] = '\0';
  for (int as = LW_AS_MARKDOWN; as < LW_AS_COUNT; as++) {
    lw_text made = {0}, words = {0};
    put_as((lw_as)as, every, &made);
    for (size_t i = 0; i < made.length; i++)
      cr_expect((unsigned char)made.data[i] >= 0x20 || made.data[i] == '\n', "%d: a control stands there",
                as);
    cr_expect(as != LW_AS_HTML || (markup_is_closed(made.data) && forms_rows_are_even(made.data)));
    cr_expect(as != LW_AS_MARKDOWN || forms_read_markdown(made.data, &words));
    lw_text_free(&made);
    lw_text_free(&words);
  }
}

/* The luminance of "#rrggbb" or "#rgb" by its definition [WCAG22 relative luminance]. */
static double luminance(const char *colour) {
  static const double SHARE[] = {0.2126, 0.7152, 0.0722};
  double sum = 0.0;
  bool brief = strspn(colour + 1, "0123456789abcdef") == 3;
  for (int i = 0; i < 3; i++) {
    char digits[3] = {colour[1 + (brief ? i : 2 * i)], colour[1 + (brief ? i : 2 * i + 1)], '\0'};
    double value = (double)strtol(digits, NULL, 16) / 255.0;
    sum += SHARE[i] * (value <= 0.04045 ? value / 12.92 : pow((value + 0.055) / 1.055, 2.4));
  }
  return sum;
}

static const char *colour_of(const char *scheme, const char *name) {
  const char *at = strstr(scheme, name);
  cr_assert_not_null(at, "%s", name);
  return at + strlen(name);
}

Test(report, letters_of_html_stand_out_seven_to_one) {
  static const char *const INKS[] = {"--ink:", "--bad:", "--good:"};
  lw_text out = {0};
  int schemes = 0;
  lw_report_begin(&(lw_text_style){.as = LW_AS_HTML}, "", &out);
  for (const char *at = strstr(out.data, "--ink:"); at != NULL; at = strstr(at + 1, "--ink:"), schemes++) {
    double paper = luminance(colour_of(at, "--paper:"));
    for (size_t i = 0; i < sizeof INKS / sizeof *INKS; i++) {
      double ink = luminance(colour_of(at, INKS[i]));
      double contrast = (fmax(ink, paper) + 0.05) / (fmin(ink, paper) + 0.05);
      cr_expect(7.0 <= contrast, "%s has %.2f in scheme %d", INKS[i], contrast, schemes);
    }
  }
  cr_expect_eq(schemes, 3, "light, dark and print");
  cr_expect_null(strstr(out.data, "<script"));
  cr_expect_null(strstr(out.data, "http"));
  cr_expect_null(strstr(out.data, "url("));
  lw_text_free(&out);
}
