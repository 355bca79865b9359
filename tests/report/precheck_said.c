/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The pre-check as an officer reads it: on two pages, nothing asked twice, nothing told that is not there. */
#include "../ordinary/walls.h"
#include "../sheet/support.h"
#include "report/precheck/precheck.h"
#include "report/text/echo.h"
#include "every_wall.h"
#include "walls.h"

#include <lowwall/report.h>
#include <lowwall/sheet.h>

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static const char HASH[] = "0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef";

/* Without remedies, which are dear and not on the page. */
static lw_result *run_case(const lw_case *c) {
  lw_result *result = calloc(1, sizeof *result);
  cr_assert_eq(lw_run(c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK);
  return result;
}

static lw_result *run_sheet(const char *path) {
  lw_text sheet = sheet_test_file(path);
  lw_case c = {0};
  lw_faults faults;
  cr_assert_eq(sheet_test_settled(sheet.data, &c, &faults), LW_OK, "%s", path);
  lw_text_free(&sheet);
  return run_case(&c);
}

static void expect_two_pages(void *context, const ordinary_wall *wall) {
  int *held = context;
  char path[CASE_CELL_MAX + 32];
  snprintf(path, sizeof path, "tests/ordinary/sheets/%s.csv", wall->id);
  lw_result *result = run_sheet(path);
  for (lw_paper paper = LW_PAPER_A4; paper <= LW_PAPER_LETTER; paper++) {
    lw_drawing_pages pages = {0};
    cr_assert_eq(lw_precheck_pages(result, HASH, paper, &pages, NULL), LW_OK);
    cr_expect_leq(pages.count, 2, "%d pages: %s on %s", pages.count, wall->id,
                  paper == LW_PAPER_A4 ? "A4" : "Letter");
    lw_drawing_pages_free(&pages);
    ++*held;
  }
  free(result);
}

/* Whoever files a wall that people build files one leaf of paper. How small letters may be is held apart. */
Test(precheck, an_ordinary_wall_takes_two_pages) {
  int held = 0;
  int walls = ordinary_each(expect_two_pages, &held);
  cr_expect(walls > 40 && held == 2 * walls, "%d", walls);
}

typedef struct page_text {
  lw_text text;
  char ways[200];
} page_text;

static void keep(void *context, const lw_block *block) {
  page_text *page = context;
  lw_text_addf(&page->text, "%s: %s\n", block->label ? block->label : "", block->words ? block->words : "");
  if (block->label && strcmp(block->label, "ways out") == 0)
    lw_print(page->ways, sizeof page->ways, "%s", block->words);
}

static page_text text_of(const lw_result *result) {
  page_text page = {.ways = ""};
  lw_precheck_each(result, HASH, keep, &page);
  return page;
}

static int count_of(const char *text, const char *words) {
  int count = 0;
  for (const char *at = strstr(text, words); at != NULL; at = strstr(at + 1, words)) count++;
  return count;
}

typedef struct asked {
  const char *page, *wall;
  int count;
} asked;

/* Two layers may have the same question. */
static void expect_asked(void *context, const lw_echo *said) {
  asked *a = context;
  const char *question = said->item->question;
  if (said->origin != LW_ASSUMED || question[0] == '\0') return;
  int times = count_of(a->page, question);
  cr_expect(times >= 1 && (times == 1 || said->number > 1), "%s %d times: %s", question, times, a->wall);
  a->count++;
}

/* What is assumed is asked, and once: among the reasons, or beside what is assumed. */
int every_precheck_asks_once(const every_wall *wall) {
  page_text page = text_of(wall->result);
  asked a = {page.text.data, wall->name, 0};
  lw_echo_each(wall->result, expect_asked, &a);
  lw_text_free(&page.text);
  return a.count;
}

/* A fence, a pad: a height that counts one in is not told of a wall without, unless a limit counts by it. */
Test(precheck, no_height_is_of_what_is_not_there) {
  static const struct {
    const char *more, *place, *told;
    int times;
  } EACH[] = {{"fence height=0 m", "place=seattle", "with-fence: ", 0},
              {"fence height=1.8 m", "place=seattle", "with-fence: ", 1},
              {"fence height=0 m", "place=queensland", "with-fence: ", 1},
              {"fence height=0 m", "place=seattle", "to the pad: ", 0},
              {"pad thickness=150 mm", "pad width=600 mm", "to the pad: ", 1}};
  for (size_t i = 0; i < sizeof EACH / sizeof *EACH; i++) {
    lw_case c = CASE("wall height=800 mm", "wall embedment=150 mm", "block depth=400 mm", "site back=ground",
                     "fence place=on wall", EACH[i].more, EACH[i].place);
    lw_result *result = run_case(&c);
    page_text page = text_of(result);
    int times = count_of(page.text.data, EACH[i].told);
    cr_expect_eq(times, EACH[i].times, "%s%d times: %s", EACH[i].told, times, EACH[i].more);
    lw_text_free(&page.text);
    free(result);
  }
}

/* Whoever says that it is more than so far has not measured it. */
Test(precheck, a_distance_told_by_its_least_is_told_so) {
  static const char *const FAR[] = {"boundary distance",   "building distance",     "service distance",
                                    "public way distance", "pool barrier distance", "other wall distance"};
  char items[600] = "wall height=800 mm;block depth=400 mm;other wall height=0.3 m;other wall side=above";
  for (size_t i = 0; i < sizeof FAR / sizeof *FAR; i++) {
    size_t used = strlen(items);
    lw_print(items + used, sizeof items - used, ";%s=more than 7.31 m", FAR[i]);
  }
  const lw_result *result = wall_of(items);
  page_text page = text_of(result);
  lw_drawing drawing = {0};
  cr_assert_eq(lw_draw_section(result, 180.0, &drawing, NULL), LW_OK);
  lw_text_add(&page.text, drawing.description.data);
  int all = count_of(page.text.data, "7.31 m"), more = count_of(page.text.data, "more than 7.31 m");
  cr_expect(all == more && all >= (int)(2 * sizeof FAR / sizeof *FAR), "%d of %d", more, all);
  lw_drawing_free(&drawing);
  lw_text_free(&page.text);
}

static void expect_ways(const char *outlets, const char *joints, const char *drains, const char *stone,
                        const char *filter) {
  char number[8];
  lw_case c = CASE("wall height=800 mm", "block depth=400 mm", "site behind=ground", "soil 1 name=silty sand",
                   outlets, joints, drains, stone, filter);
  lw_result *result = run_case(&c);
  const lw_site *site = &result->wall.site;
  page_text page = text_of(result);
  int named = strchr(page.ways, ':') ? count_of(page.ways, ";") + 1 : 0;
  cr_expect_eq(named, site->ways_found, "%s: %s, %s, %s, %s", page.ways, outlets, joints, drains, stone);
  lw_print(number, sizeof number, "%d ", site->ways_out);
  cr_expect_eq(strncmp(page.ways, number, strlen(number)), 0, "%s", page.ways);
  cr_expect_eq(strstr(page.ways, "filter") != NULL, site->ways_out < site->ways_found, "%s", page.ways);
  lw_text_free(&page.text);
  free(result);
}

/* The ways out that are named are those that are counted, whatever leads to them. */
Test(precheck, ways_out_are_named_as_many_as_are_counted) {
  static const char *const OUTLETS[] = {"drain outlets=0", "drain outlets=3"},
                           *const JOINTS[] = {"wall joints=open", "wall joints=sealed"},
                           *const DRAINS[] = {"ground drains=yes", "ground drains=no"},
                           *const STONE[] = {"stone width=0 mm", "stone width=300 mm"},
                           *const FILTER[] = {"stone filter=none", "stone filter=cloth"};
  for (int i = 0; i < 2 * 16; i++)
    expect_ways(OUTLETS[i / 16], JOINTS[i & 1], DRAINS[i >> 1 & 1], STONE[i >> 2 & 1], FILTER[i >> 3 & 1]);
}
