/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The pre-check: who must sign comes first, all can be read on paper, the hash follows what was given. */
#include "../checks/random_wall.h"
#include "report/draw/drawing.h"
#include "report/draw/pdf_parts.h"
#include "report/precheck/pdf.h"
#include "report/precheck/precheck.h"
#include "every_wall.h"
#include "markup.h"
#include "walls.h"

#include <lowwall/report.h>

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

static const char HASH[] = "0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef";

typedef struct seen {
  int count[LW_BLOCK_HALF_LINE + 1];
  lw_block_kind first, last;
  bool not_checked, nameless; /* the latter: a table of checks whose columns have no names */
  bool shown, said_checked;   /* a check of the table at hand has a figure, and its heading says so */
  int untrue;                 /* headings that say of a table what it does not hold */
  int signing;                /* lines below the last heading */
  char headline[1280], who[256];
} seen;

/* A table is named by what it shows. */
static void see_table(seen *s, const lw_block *block) {
  if (block->kind == LW_BLOCK_CHECK) s->shown = s->shown || strcmp(block->words, "cannot be shown") != 0;
  if (block->kind == LW_BLOCK_CHECK || block->kind == LW_BLOCK_COLUMNS) return;
  if (s->last == LW_BLOCK_CHECK) s->untrue += s->shown != s->said_checked ? 1 : 0;
  s->said_checked = block->kind == LW_BLOCK_HEADING && strncmp(block->words, "Checked", 7) == 0;
  s->shown = false;
}

/* Whoever reads one line learns whom the law calls for. */
static void expect_who(const lw_verdict *verdict, const char *who, const char *wall) {
  static const char *const WORDS[] = {"nobody beyond who builds it", "the council", "a licensed engineer"};
  cr_expect_eq(strncmp(who, "Who must see it: ", 17), 0, "%s", wall);
  for (int i = LW_WHO_BUILDER; i <= LW_WHO_ENGINEER; i++)
    cr_expect_eq(strstr(who, WORDS[i]) != NULL, i == (int)verdict->who, "%s: %s", who, wall);
  if (verdict->who == LW_WHO_BUILDER)
    cr_expect_eq(strstr(who, "not to be built so") != NULL, verdict->stands != LW_HOLDS, "%s", wall);
}

static void see(void *context, const lw_block *block) {
  seen *s = context;
  int all = 0;
  for (int i = 0; i <= LW_BLOCK_HALF_LINE; i++) all += s->count[i];
  if (all == 0) s->first = block->kind;
  if (block->kind == LW_BLOCK_WHO) lw_print(s->who, sizeof s->who, "%s", block->words);
  if (block->kind == LW_BLOCK_HEADLINE) lw_print(s->headline, sizeof s->headline, "%s", block->words);
  see_table(s, block);
  bool line = block->kind == LW_BLOCK_LINE || block->kind == LW_BLOCK_HALF_LINE;
  s->signing = block->kind == LW_BLOCK_HEADING ? 0 : s->signing + (line ? 1 : 0);
  s->not_checked = s->not_checked || (block->kind == LW_BLOCK_WORDS && block->strong);
  s->nameless = s->nameless || (block->kind == LW_BLOCK_CHECK && s->last == LW_BLOCK_HEADING);
  s->last = block->kind;
  s->count[block->kind]++;
}

int every_precheck_says_who_must_sign(const every_wall *wall) {
  const lw_result *result = wall->result;
  seen s = {.first = LW_BLOCK_HALF_LINE};
  lw_precheck_each(result, HASH, see, &s);
  cr_expect_eq(s.first, LW_BLOCK_WHO);
  expect_who(&result->verdict, s.who, wall->name);
  cr_expect_str_eq(s.headline, result->verdict.headline);
  cr_expect_eq(s.untrue, 0, "%s", wall->name);
  cr_expect_eq(s.count[LW_BLOCK_SECTION], 1);
  cr_expect_eq(s.signing, 4, "name, licence, signature, date: %s", wall->name);
  cr_expect_eq(s.count[LW_BLOCK_LINE] + s.count[LW_BLOCK_HALF_LINE], 8, "%s", wall->name);
  cr_expect(s.not_checked);
  cr_expect_not(s.nameless);
  cr_expect_eq(result->wall.section.known && s.count[LW_BLOCK_CHECK] == 0, false, "%s", wall->name);
  return 1;
}

/* What paper sets beside each other: the drawing between the facts, and no column of a check among them. */
static void expect_front(const char *html, const char *name) {
  const char *front = strstr(html, "<div class=\"front\"><div>"), *drawing = strstr(html, "</div>\n<"),
             *rest = drawing ? strstr(drawing, "</div></div>") : NULL,
             *columns = strstr(html, "scope=\"col\"");
  cr_assert(front && drawing && rest, "%s", name);
  cr_expect(front < drawing && drawing < rest, "%s", name);
  cr_expect(columns == NULL || rest < columns, "%s", name);
  cr_expect(strncmp(drawing, "</div>\n<svg", 11) == 0 || strncmp(drawing, "</div>\n<p class=\"s\">", 20) == 0,
            "%s", name);
  cr_expect_null(strstr(strchr(front, '>'), "class=\"front\""), "%s", name);
}

int every_precheck_closes_what_it_opens(const every_wall *wall) {
  static lw_result titled;
  titled = *wall->result;
  lw_print(titled.given.about.title.text, sizeof titled.given.about.title.text, "<b>Peas & \"beans\"</i>");
  lw_text html = {0}, svg = {0};
  lw_drawing drawing = {0};
  cr_expect_eq(lw_precheck_html(&titled, HASH, &html), LW_OK);
  cr_expect(markup_is_closed(html.data), "%s", wall->name);
  expect_front(html.data, wall->name);
  cr_expect_not_null(strstr(html.data, "&lt;b&gt;Peas &amp;"));
  if (lw_draw_section(&titled, 180.0, &drawing, NULL) == LW_OK) {
    cr_expect_eq(lw_drawing_svg(&drawing, &svg), LW_OK);
    cr_expect(markup_is_closed(svg.data), "%s", wall->name);
  }
  lw_drawing_free(&drawing);
  lw_text_free(&html);
  lw_text_free(&svg);
  return 1;
}

Test(precheck, what_does_not_close_is_seen) {
  cr_expect_not(markup_is_closed("<p>a</b>"));
  cr_expect_not(markup_is_closed("<p>a & b</p>"));
  cr_expect_not(markup_is_closed("<p>"));
}

static void expect_within(const lw_drawing *page, const char *wall) {
  static const double SEVEN_POINTS_MM = 7.0 * 25.4 / 72.0;
  for (size_t i = 0; i < page->mark_count; i++) {
    if (page->mark[i].kind != LW_MARK_WORDS) continue;
    lw_box box = lw_drawing_box(page, &page->mark[i]);
    cr_expect(box.left_mm >= 0.0 && box.right_mm <= page->width_mm && box.bottom_mm <= page->height_mm,
              "\"%s\" leaves the page: %s", page->words.data + page->mark[i].words, wall);
    cr_expect(page->mark[i].size_mm >= SEVEN_POINTS_MM, "\"%s\" is too small to read: %s",
              page->words.data + page->mark[i].words, wall);
  }
}

static size_t find_words(const lw_drawing *page, const char *words) {
  for (size_t i = 0; i < page->mark_count; i++)
    if (page->mark[i].kind == LW_MARK_WORDS && strcmp(page->words.data + page->mark[i].words, words) == 0)
      return i;
  return page->mark_count;
}

static double left_of(const lw_drawing *page, size_t mark) {
  return page->spot[page->mark[mark].first].x_mm;
}

/* Whoever signs sees on one page, in one column, what it is that is signed. */
static void expect_signed_in_one_piece(const lw_drawing_pages *pages, const char *wall) {
  const lw_drawing *last = &pages->page[pages->count - 1];
  size_t head = find_words(last, "Who takes responsibility"), hash = find_words(last, "hash");
  cr_assert(head < last->mark_count && hash < last->mark_count, "%s", wall);
  cr_expect_lt(fabs(left_of(last, head) - left_of(last, hash)), 1e-9, "%s", wall);
}

/* Below a heading stands, in its column and on its page, what it heads. */
static void expect_headings_to_head(const lw_drawing *page, const char *wall) {
  for (size_t i = 0; i < page->mark_count; i++) {
    if (page->mark[i].role != LW_ROLE_HEADING || page->mark[i].kind != LW_MARK_WORDS) continue;
    size_t next = i + 1;
    while (next < page->mark_count && page->mark[next].group == page->mark[i].group) next++;
    cr_assert(next < page->mark_count, "%s", wall);
    const lw_xy_mm *head = &page->spot[page->mark[i].first], *headed = &page->spot[page->mark[next].first];
    cr_expect(headed->y_mm > head->y_mm && headed->x_mm < head->x_mm + 90.0, "\"%s\" heads nothing: %s",
              page->words.data + page->mark[i].words, wall);
  }
}

/* Two items of the sheet that stand in one row, too: nothing lies on anything else. */
static void expect_apart(const lw_drawing *page, const char *wall) {
  for (size_t i = 0; i < page->mark_count; i++) {
    const lw_mark *a = &page->mark[i];
    if (a->kind != LW_MARK_WORDS || a->role == LW_ROLE_FIGURE) continue;
    const lw_box x = lw_drawing_box(page, a);
    for (size_t k = 0; k < i; k++) {
      const lw_mark *b = &page->mark[k];
      if (b->kind != LW_MARK_WORDS || b->role == LW_ROLE_FIGURE) continue;
      const lw_box y = lw_drawing_box(page, b);
      bool apart = x.left_mm >= y.right_mm || y.left_mm >= x.right_mm || x.top_mm >= y.bottom_mm - 0.05 ||
                   y.top_mm >= x.bottom_mm - 0.05;
      cr_expect(apart, "\"%s\" lies on \"%s\": %s", page->words.data + a->words, page->words.data + b->words,
                wall);
    }
  }
}

static void expect_readable(const lw_result *result, lw_paper paper, const char *wall) {
  enum { MOST_PAGES = 4 };
  lw_drawing_pages pages = {0};
  lw_error error = {0};
  cr_assert_eq(lw_precheck_pages(result, HASH, paper, &pages, &error), LW_OK, "%s: %s", error.text, wall);
  cr_expect(pages.count <= MOST_PAGES, "%d pages: %s", pages.count, wall);
  for (int k = 0; k < pages.count; k++) expect_within(&pages.page[k], wall);
  for (int k = 0; k < pages.count; k++) expect_headings_to_head(&pages.page[k], wall);
  for (int k = 0; k < pages.count; k++) expect_apart(&pages.page[k], wall);
  expect_signed_in_one_piece(&pages, wall);
  lw_drawing_pages_free(&pages);
}

Test(precheck, it_is_readable_on_either_paper) {
  enum { WALLS = 24 };
  static lw_result result;
  static lw_tables tables;
  char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
  dice d = {7};
  cr_assert_eq(lw_tables_read(NULL, &tables, NULL), LW_OK);
  for (int i = 0; i < WALLS / RANDOM_SHARE; i++) {
    random_wall wall = {0};
    random_wall_make(&d, &wall);
    lw_case c = random_wall_case(&wall);
    random_wall_name(&wall, name, sizeof name);
    cr_assert_eq(lw_run(&c, &tables, LW_DETAIL_EVERYTHING, &result, NULL), LW_OK);
    expect_readable(&result, LW_PAPER_A4, name);
    expect_readable(&result, LW_PAPER_LETTER, name);
  }
}

/* What would else fill a column alone. */
Test(precheck, what_the_sheet_gives_stands_two_in_a_row) {
  lw_drawing_pages pages = {0};
  lw_error error = {0};
  cr_assert_eq(lw_precheck_pages(wall_of(wall_sorts[0]), HASH, LW_PAPER_A4, &pages, &error), LW_OK);
  int beside = 0;
  for (int k = 0; k < pages.count; k++)
    for (size_t i = 0; i < pages.page[k].mark_count; i++) {
      const lw_drawing *page = &pages.page[k];
      if (page->mark[i].role != LW_ROLE_HEAD_CELL || page->mark[i].kind != LW_MARK_WORDS) continue;
      for (size_t j = 0; j < i; j++) {
        if (page->mark[j].role != LW_ROLE_HEAD_CELL || page->mark[j].kind != LW_MARK_WORDS) continue;
        const lw_xy_mm *a = &page->spot[page->mark[i].first], *b = &page->spot[page->mark[j].first];
        double apart = a->x_mm - b->x_mm;
        beside += fabs(a->y_mm - b->y_mm) < 1e-9 && apart > 40.0 && apart < 55.0;
      }
    }
  cr_expect_geq(beside, 2);
  lw_drawing_pages_free(&pages);
}

static lw_text page_of(const char *items) {
  lw_text html = {0};
  cr_assert_eq(lw_precheck_html(wall_of(items), HASH, &html), LW_OK);
  return html;
}

/* 5.7 degrees say to nobody that the sheet had one in ten. */
Test(precheck, a_slope_is_printed_as_the_sheet_gave_it) {
  static const char WALL[] = "site behind=ground;wall height=800 mm;block height=200 mm;block depth=400 mm";
  static const char *const SAID[][2] = {{"1:10", "1:10, 5.71"}, {"1 in 2.5", "1:2.5, 21.8"},
                                        {"10 %", "1:10, 5.71"}, {"5.71 deg", "td>5.71 deg"},
                                        {"3:4", "td>36.8"},     {"0 deg", "td>0 deg"}};
  char items[256], wanted[64];
  for (size_t i = 0; i < sizeof SAID / sizeof *SAID; i++) {
    lw_print(items, sizeof items, "%s;ground slope=%s", WALL, SAID[i][0]);
    lw_text html = page_of(items);
    lw_print(wanted, sizeof wanted, "ground slope</th><td>%s", SAID[i][1] + (SAID[i][1][0] == 't' ? 3 : 0));
    cr_expect_not_null(strstr(html.data, wanted), "%s", SAID[i][0]);
    lw_text_free(&html);
  }
}

Test(precheck, what_the_office_files_by_is_printed_or_has_its_line) {
  static const char *const FIELDS[][3] = {{"applicant", "School kitchen garden", "applicant"},
                                          {"address", "Hill Lane 3, lot 12", "address, lot"},
                                          {"builder", "the parents", "builder"},
                                          {"date", "2028-02-29", "date of issue"}};
  char items[256], wanted[128];
  for (size_t i = 0; i < sizeof FIELDS / sizeof *FIELDS; i++)
    for (int given = 0; given < 2; given++) {
      lw_print(items, sizeof items, "wall height=800 mm;block depth=400 mm%s%s%s%s", given ? ";" : "",
               given ? FIELDS[i][0] : "", given ? "=" : "", given ? FIELDS[i][1] : "");
      lw_print(wanted, sizeof wanted, "%s</th><td%s%s", FIELDS[i][2], given ? ">" : " class=\"w\">",
               given ? FIELDS[i][1] : "");
      lw_text html = page_of(items);
      cr_expect_not_null(strstr(html.data, wanted), "%s", wanted);
      lw_text_free(&html);
    }
}

static void hash_of(const char *items, char *hex) {
  const lw_result *result = wall_of(items);
  cr_assert_eq(lw_precheck_hash(&result->given, NULL, hex, NULL), LW_OK);
}

Test(precheck, the_hash_is_of_what_was_given_and_not_of_how) {
  char one[LW_HASH_HEX], other[LW_HASH_HEX];
  hash_of("wall height=800 mm;block height=200 mm;block depth=400 mm", one);
  cr_expect_eq(strlen(one), 64u);
  hash_of("block depth=40 cm;block height=0.2 m;wall height=800 mm", other);
  cr_expect_str_eq(one, other);
  hash_of("wall height=800 mm;block height=200 mm;block depth=401 mm", other);
  cr_expect_str_neq(one, other);
  hash_of("wall height=800 mm;block height=200 mm;block depth=400 mm;date=2027-03-01", other);
  cr_expect_str_neq(one, other, "a day of issue is part of it");
  hash_of("wall height=800 mm;block height=200 mm;block depth=400 mm;setback=0 mm", other);
  cr_expect_str_neq(one, other, "an answer that agrees with what would be assumed is still an answer");
}

static bool has_bytes(const lw_text *pdf, const char *words) {
  size_t length = strlen(words);
  for (size_t i = 0; i + length <= pdf->length; i++)
    if (memcmp(pdf->data + i, words, length) == 0) return true;
  return false;
}

static void expect_bytes(const lw_text *pdf, const char *words) {
  cr_expect(has_bytes(pdf, words), "%s", words);
}

Test(precheck, a_pdf_says_what_it_is_or_what_to_install) {
  const lw_result *result = wall_of(wall_sorts[1]);
  lw_drawing_pages pages = {0};
  lw_error error = {0};
  lw_text pdf = {0}, png = {0};
  cr_assert_eq(lw_precheck_pages(result, HASH, LW_PAPER_A4, &pages, &error), LW_OK);
  lw_status made = lw_drawing_pdf(pages.page, pages.count, &pdf, &error),
            drawn = lw_drawing_png(pages.page, 4.0, &png, &error);
  if (lw_drawing_has_paper()) {
    cr_assert_eq(made, LW_OK);
    cr_expect_eq(memcmp(pdf.data, "%PDF-", 5), 0);
    cr_expect_eq(memcmp(png.data, "\x89PNG", 4), 0);
    expect_bytes(&pdf, "/Lang (en)");
    expect_bytes(&pdf, "/Marked true");
  } else {
    cr_expect_eq(made, LW_NO_SOLUTION);
    cr_expect_eq(drawn, LW_NO_SOLUTION);
    cr_expect_not_null(strstr(error.text, "libpango1.0-dev"));
  }
  lw_drawing_pages_free(&pages);
  lw_text_free(&pdf);
  lw_text_free(&png);
}

/* The tree that a reader for the blind goes by: each head cell says of what, the drawing has words. */
Test(precheck, a_pdf_brings_its_sheet_and_words_for_its_drawing) {
  const lw_result *result = wall_of(wall_sorts[1]);
  lw_text one = {0}, again = {0}, hash = {0}, sheet = {0}, given = {0};
  lw_error error = {0};
  if (!lw_drawing_has_paper()) return;
  cr_assert_eq(lw_precheck_pdf(result, HASH, LW_PAPER_A4, &one, &error), LW_OK, "%s", error.text);
  cr_assert_eq(lw_precheck_pdf(result, HASH, LW_PAPER_A4, &again, &error), LW_OK);
  cr_expect(one.length == again.length && memcmp(one.data, again.data, one.length) == 0, "bytes differ");
  lw_status status = lw_precheck_sheet(&one, &hash, &sheet, &error);
  if (lw_pdf_has_parts()) {
    cr_assert_eq(status, LW_OK, "%s", error.text);
    lw_sheet_write(&result->given, false, &given);
    cr_expect_str_eq(sheet.data, given.data);
    cr_expect_str_eq(hash.data, HASH);
    expect_bytes(&one, "/Alt (");
    expect_bytes(&one, "/Scope /Row");
    expect_bytes(&one, "/Scope /Column");
  } else {
    cr_expect_eq(status, LW_NO_SOLUTION);
    cr_expect_not_null(strstr(error.text, "libqpdf-dev"));
  }
  lw_text *all[] = {&one, &again, &hash, &sheet, &given};
  for (size_t i = 0; i < sizeof all / sizeof *all; i++) lw_text_free(all[i]);
}

/* A damaged file is refused in a sentence, wherever it was cut. */
Test(precheck, a_pdf_that_is_cut_is_refused_or_read) {
  enum { CUTS = 12 };
  lw_text whole = {0};
  lw_error error = {0};
  if (!lw_drawing_has_paper() || !lw_pdf_has_parts()) return;
  cr_assert_eq(lw_precheck_pdf(wall_of(wall_sorts[1]), HASH, LW_PAPER_A4, &whole, &error), LW_OK);
  for (int i = 0; i < CUTS; i++) {
    lw_text cut = {0}, hash = {0}, sheet = {0};
    lw_text_add_bytes(&cut, whole.data, whole.length * (size_t)i / CUTS);
    lw_status status = lw_precheck_sheet(&cut, &hash, &sheet, &error);
    cr_expect(status == LW_NOT_READ || (status == LW_OK && sheet.length > 0), "cut %d", i);
    lw_text_free(&cut);
    lw_text_free(&hash);
    lw_text_free(&sheet);
  }
  lw_text_free(&whole);
}
