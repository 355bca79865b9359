/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "every_wall.h"
#include "walls.h"

#include "report/text/echo.h"

#include <criterion/criterion.h>

#include <ctype.h>
#include <stdio.h>
#include <string.h>

/* What the page says, and never says. */

/* "There is no safe guess" is the one place where the word may stand. */
static bool is_excused(const char *at) {
  return strncmp(at, "safe guess", 10) == 0 || strncmp(at, "safe\n", 5) == 0;
}

static size_t longest_line(const char *text) {
  size_t longest = 0, width = 0;
  for (; *text; text++) {
    width = *text == '\n' ? 0 : width + (((unsigned char)*text & 0xC0) == 0x80 ? 0 : 1);
    longest = width > longest ? width : longest;
  }
  return longest;
}

static bool has_word(const char *text, const char *word) {
  size_t length = strlen(word);
  for (const char *at = strstr(text, word); at != NULL; at = strstr(at + 1, word)) {
    bool begins = at == text || !isalpha((unsigned char)at[-1]);
    if (begins && !is_excused(at) && !isalpha((unsigned char)at[length])) return true;
  }
  return false;
}

int every_line_fits(const every_wall *wall) {
  size_t page = longest_line(wall->page), working = longest_line(wall->working);
  cr_expect(page <= 80, "%s: %zu", wall->name, page);
  cr_expect(working <= 80, "working of %s: %zu", wall->name, working);
  return 2;
}

int every_page_gives_no_leave_to_build(const every_wall *wall) {
  static const char *const never[] = {"OK",       "safe", "Safe", "SAFE", "compliant", "complies",
                                      "approved", "nan",  "inf",  "NaN",  "(null)"};
  for (size_t w = 0; w < sizeof never / sizeof *never; w++)
    cr_expect(!has_word(wall->page, never[w]), "\"%s\" of %s", never[w], wall->name);
  cr_expect_null(strstr(wall->page, "no approval"), "%s", wall->name);
  return 1;
}

int every_page_begins_and_ends(const every_wall *wall) {
  char beginning[32];
  snprintf(beginning, sizeof beginning, "%.24s", wall->result->verdict.headline);
  cr_expect_eq(strncmp(wall->page, beginning, strlen(beginning)), 0, "%s begins %.40s", wall->name,
               wall->page);
  cr_expect_not_null(strstr(wall->page, "It certifies\nnothing"), "%s", wall->name);
  return 1;
}

int every_page_says_what_is_not_checked(const every_wall *wall) {
  bool slip = wall->result->situations.situation[0].slip_known;
  bool said = strstr(wall->page, "A slip of the whole bank, wall and ground together: NOT CHECKED.") != NULL;
  cr_expect(slip != said || wall->result->wall.site.backfill_refused, "%s", wall->name);
  cr_expect_not_null(strstr(wall->page, "Earthquake: NOT CHECKED."));
  return 1;
}

Test(report, a_bonded_cap_is_not_checked_and_says_so) {
  lw_text page = wall_page(wall_of(wall_sorts[2]));
  cr_expect_not_null(strstr(page.data, "The cap: NOT CHECKED. It relies on its bond"));
  cr_expect_not_null(strstr(page.data, "not checked"));
  lw_text_free(&page);
}

static void take_slope(void *context, const lw_echo *echo) {
  char *words = context;
  if (strcmp(echo->name, "ground slope") == 0) snprintf(words, sizeof echo->words, "%s", echo->words);
}

/* One in so many, as it is measured on site; what nobody gave, too. */
Test(report, a_slope_is_said_as_it_is_measured) {
  static const char *const said[][2] = {{"site behind=ground", "1:4, 14.04 deg"},
                                        {"ground slope=1:10", "1:10, 5.711 deg"},
                                        {"ground slope=7.125 deg", "7.125 deg"},
                                        {"ground slope=0 deg", "0 deg"}};
  for (size_t i = 0; i < sizeof said / sizeof *said; i++) {
    char items[160], words[sizeof(lw_echo)] = "";
    snprintf(items, sizeof items, "wall height=600 mm;block height=200 mm;block depth=400 mm;%s", said[i][0]);
    lw_echo_each(wall_of(items), take_slope, words);
    cr_expect_str_eq(words, said[i][1]);
  }
}

Test(report, every_assumption_has_its_question) {
  const lw_result *result = wall_of(wall_sorts[0]);
  lw_text page = wall_page(result);
  lw_case c = result->given;
  int asked = 0;
  for (size_t i = 0; i < lw_item_count(); i++) {
    const lw_item *item = lw_item_at(i);
    if (item->type != LW_ITEM_CHOICE || item->repeats > 0 || item->question[0] == '\0') continue;
    if (lw_item_choice(item, 0, &c)->origin != LW_ASSUMED) continue;
    char line[96];
    snprintf(line, sizeof line, "  ? %s = ", item->name);
    cr_expect_not_null(strstr(page.data, line), "%s", line);
    asked++;
  }
  cr_assert_neq(asked, 0);
  lw_text_free(&page);
}

Test(report, falling_short_by_movement_and_by_margin_read_differently) {
  lw_text moves =
      wall_page(wall_of("wall height=600 mm;block height=200 mm;wall embedment=200 mm;block depth=250 mm"));
  cr_expect_not_null(strstr(moves.data, "no, it would move"));
  cr_expect_not_null(strstr(moves.data, "These would move: "));
  lw_text_free(&moves);
  lw_text margin = wall_page(wall_of(
      "wall height=400 mm;block height=200 mm;wall embedment=200 mm;block depth=500 mm;people on cap=no;"
      "soil 1 name=clean sand;footing soil name=clean sand;base friction=0.3;drain outlets=2;"
      "stone width=300 mm;stone filter=cloth;wall joints=open;ground slope=0 deg;vehicle access=no"));
  cr_expect_not_null(strstr(margin.data, "on paper, but with less margin than is asked"));
  cr_expect_null(strstr(margin.data, "These would move"));
  lw_text_free(&margin);
}

/* Between design values a ratio below 1 says neither that it would slide nor that it stands on paper; where
 * it tips no share of the moments is missing. */
Test(report, falling_short_by_design_values_claims_no_more) {
  lw_text design = wall_page(wall_of(
      "wall height=600 mm;block height=200 mm;wall embedment=200 mm;block depth=350 mm;people on cap=no;"
      "setback=20 mm;soil 1 friction angle=30 deg;soil 1 unit weight=18 kN/m3;base friction=0.5;"
      "joint friction=0.6;ground slope=0 deg;site behind=ground;vehicle access=no;drain outlets=2;"
      "wall joints=open;stone width=300 mm;stone filter=cloth;soil 1 name=clean sand;footing soil name=clean "
      "sand;"
      "method format=en1997-da1"));
  cr_expect_not_null(strstr(design.data, "not by the design values of its format; worst: sliding"));
  cr_expect_not_null(strstr(design.data, "These do not stand by the design values, which hold the"));
  cr_expect_null(strstr(design.data, "stands on paper"));
  lw_text_free(&design);
  lw_text tips = wall_page(wall_of(
      "wall height=800 mm;block height=200 mm;wall embedment=200 mm;block depth=250 mm;people on cap=no"));
  cr_expect_not_null(strstr(tips.data, "it would tip"));
  cr_expect_null(strstr(tips.data, "by 100 %"));
  lw_text_free(&tips);
}

Test(report, a_wall_of_unknown_depth_says_that_nobody_can_say) {
  lw_text page = wall_page(wall_of(wall_sorts[5]));
  cr_expect_not_null(strstr(page.data, "nobody can say from this sheet"));
  cr_expect_not_null(strstr(page.data, "cannot be shown"));
  lw_text_free(&page);
}

/* The headline stays the first line, whatever the sheet calls its wall. */
Test(report, title_of_the_sheet_is_cleaned_and_comes_second) {
  static lw_result copy;
  copy = *wall_of(wall_sorts[0]);
  snprintf(copy.given.about.title.text, sizeof copy.given.about.title.text, "Herb\033[31m bed");
  snprintf(copy.given.about.mark.text, sizeof copy.given.about.mark.text, "B7");
  lw_text page = wall_page(&copy);
  cr_expect_eq(strncmp(page.data, copy.verdict.headline, 24), 0, "%.60s", page.data);
  cr_expect_not_null(strstr(page.data, "\n\nHerb?[31m bed - B7\n"));
  lw_text_free(&page);
}

Test(report, a_long_title_keeps_the_columns) {
  static lw_result copy;
  copy = *wall_of(wall_sorts[0]);
  for (size_t i = 0; i + 6 < sizeof copy.given.about.title.text; i += 5)
    snprintf(copy.given.about.title.text + i, sizeof copy.given.about.title.text - i, "wall ");
  cr_assert(strlen(copy.given.about.title.text) > 80);
  lw_text page = wall_page(&copy);
  cr_expect(longest_line(page.data) <= 80, "%zu", longest_line(page.data));
  lw_text_free(&page);
}

/* What rests on no answer would bury the checks: the head counts it, and it stands below them. */
Test(report, what_rests_on_no_answer_stands_below_the_checks) {
  const lw_result *result = wall_of(wall_sorts[5]);
  const lw_verdict *v = &result->verdict;
  lw_text page = wall_page(result);
  const char *checks = strstr(page.data, "\nChecks, each");
  const char *below = strstr(page.data, "\nNot known, and");
  cr_assert(checks != NULL && below != NULL && checks < below);
  int above = 0, said = 0, assumed = 0;
  for (const char *at = strstr(page.data, "\n  ? "); at != NULL; at = strstr(at + 1, "\n  ? ")) {
    above += at < checks ? 1 : 0;
    said += at > below && at < strstr(page.data, "\nAssumed, because") ? 1 : 0;
  }
  for (int i = 0; i < v->reasons.count; i++) assumed += v->reasons.reason[i].assumed ? 1 : 0;
  cr_expect(above <= 6, "%d lines at the head rest on no answer", above);
  cr_expect(said >= 10 && said <= assumed, "%d of %d", said, assumed);
  for (int i = 0; i < v->reasons.count; i++) {
    char beginning[24];
    snprintf(beginning, sizeof beginning, "? %.14s", v->reasons.reason[i].text);
    bool limit = strncmp(v->reasons.reason[i].slug, "limit-", 6) == 0;
    if (v->reasons.reason[i].assumed && !limit)
      cr_expect_not_null(strstr(page.data, beginning), "%s", beginning);
  }
  lw_text_free(&page);
}

/* What has 0.996 and would move may not read like what has 1.00. */
Test(report, what_falls_short_never_reads_like_what_is_asked) {
  static lw_result copy;
  copy = *wall_of(wall_sorts[0]);
  for (int i = 0; i < copy.situations.count; i++) {
    for (int k = 0; k < copy.situations.situation[i].check_count; k++) {
      lw_kept_check *check = &copy.situations.situation[i].kept[k];
      if (check->kind != LW_CHECK_SLIDING || check->at != LW_AT_BASE) continue;
      check->has = 1.4996;
      check->needs = 1.5;
      check->marks |= LW_KEPT_HAS | LW_KEPT_NEEDS | LW_KEPT_RATIO;
      check->holds = LW_FALLS_SHORT;
    }
  }
  lw_text page = wall_page(&copy);
  cr_expect_not_null(strstr(page.data, " 1.4996  1.50"));
  cr_expect_null(strstr(page.data, "  1.50   1.50   falls"));
  lw_text_free(&page);
}

Test(report, a_wall_without_depth_is_asked_for_its_depth_first) {
  lw_text page = wall_page(wall_of(wall_sorts[5]));
  cr_expect_not_null(strstr(page.data, "How deep are the blocks, from front to back?"));
  lw_text_free(&page);
}

/* A wall whose formula and wedge must agree and do not may not look like any other. */
Test(report, a_faulty_wall_is_marked_at_the_head) {
  static lw_result copy;
  copy = *wall_of(wall_sorts[0]);
  copy.situations.situation[0].base.faulty = true;
  lw_text page = wall_page(&copy);
  cr_expect_eq(strncmp(page.data, "THIS REPORT IS FAULTY", 21), 0);
  lw_text_free(&page);
}
