/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Pre-checks of many walls: names of their files, and the page before them. */
#include "../checks/random_wall.h"
#include "report/precheck/file_names.h"
#include "report/precheck/index.h"
#include "sheet/faults.h"
#include "walls.h"

#include <lowwall/report.h>

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <stdlib.h>
#include <string.h>
#include <strings.h>

static const char LETTERS[] = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_.";

/* What people might type, and what somebody would who wishes to leave the folder. */
static const char *const MARKS[] = {"W1",
                                    "w1",
                                    "W 1",
                                    "W-1",
                                    "W/1",
                                    "../../etc/passwd",
                                    "/abs",
                                    "..",
                                    ".",
                                    "",
                                    " ",
                                    ".hidden",
                                    "CON",
                                    "nul.pdf",
                                    "com7",
                                    "LPT1",
                                    "index",
                                    "INDEX.html",
                                    "a\\b",
                                    "a:b",
                                    "S\xc3\xbcss",
                                    "\xe5\xa2\x99",
                                    "row-3",
                                    "W1-row-2",
                                    "-o",
                                    "--tables",
                                    "a\nb",
                                    "a\"b",
                                    "a'b; rm -r x",
                                    "<b>",
                                    "%2e%2e/",
                                    "*",
                                    "W1.",
                                    "W1.html"};
enum { MARK_COUNT = sizeof MARKS / sizeof *MARKS };

static void expect_safe(const char *name, const char *mark) {
  size_t length = strlen(name);
  cr_expect(length > 4 && length < LW_FILE_NAME && strspn(name, LETTERS) == length, "%s of %s", name, mark);
  cr_expect(name[0] != '.' && name[0] != '-' && !strstr(name, "..") == !strstr(mark, "a..b"), "%s of %s",
            name, mark);
  cr_expect(strcmp(name + length - 4, ".pdf") == 0 && strcasecmp(name, "index.html") != 0, "%s of %s", name,
            mark);
  static const char *const devices[] = {"con.", "nul.", "com7.", "lpt1.", "aux.", "prn."};
  for (size_t i = 0; i < sizeof devices / sizeof *devices; i++)
    cr_expect(strncasecmp(name, devices[i], strlen(devices[i])) != 0, "%s of %s", name, mark);
}

static void expect_apart(const lw_file_names *names) {
  for (size_t i = 0; i < names->count; i++)
    for (size_t k = 0; k < i; k++)
      cr_expect(strcasecmp(names->taken[i].name, names->taken[k].name) != 0, "%s twice",
                names->taken[i].name);
}

Test(file_names, no_mark_leaves_the_folder_nor_takes_the_place_of_another) {
  lw_file_names names = {.count = 0};
  char name[LW_FILE_NAME];
  for (int twice = 0; twice < 2; twice++)
    for (int i = 0; i < MARK_COUNT; i++) {
      lw_file_names_make(&names, MARKS[i], 2 + i, ".pdf", name);
      expect_safe(name, MARKS[i]);
    }
  expect_apart(&names);
  cr_expect(eq(int, (int)names.count, 2 * MARK_COUNT));
  cr_expect_str_eq(names.taken[0].name, "W1.pdf");
  lw_file_names_free(&names);
}

Test(file_names, any_bytes_make_a_name_of_their_own) {
  lw_file_names names = {.count = 0};
  dice d = {.state = 606};
  for (int i = 0; i < 1500 / RANDOM_SHARE; i++) {
    char mark[LW_WORDS_MAX] = "", name[LW_FILE_NAME];
    int length = dice_pick(&d, dice_pick(&d, 3) ? 3 : LW_WORDS_MAX);
    for (int k = 0; k < length; k++) mark[k] = (char)(1 + dice_pick(&d, 255));
    lw_file_names_make(&names, mark, 2 + i, ".pdf", name);
    size_t bytes = strlen(name);
    cr_expect(bytes > 4 && bytes < LW_FILE_NAME && strspn(name, LETTERS) == bytes && name[0] != '.', "%s",
              name);
  }
  expect_apart(&names);
  lw_file_names_free(&names);
}

/* --- the page --- */

static lw_index_group group_of(lw_who who) {
  return who == LW_WHO_ENGINEER  ? LW_INDEX_ENGINEER
         : who == LW_WHO_COUNCIL ? LW_INDEX_COUNCIL
                                 : LW_INDEX_BUILDER;
}

/* What moves before what nobody knows of, and that before what only lacks margin. */
static int gravity_of(lw_grade grade) {
  static const lw_grade ORDER[] = {LW_GRADE_WOULD_MOVE, LW_GRADE_MAY_MOVE, LW_GRADE_CANNOT_BE_SHOWN,
                                   LW_GRADE_LESS_MARGIN, LW_GRADE_HOLDS};
  int at = 0;
  while (ORDER[at] != grade) at++;
  return at;
}

static void add_faulty(lw_precheck_index *index, int row) {
  lw_case c = {.about.mark.text = "<broken> & gone"};
  static lw_faults faults;
  faults.count = 0;
  lw_faults_add(&faults, LW_FAULT_NOT_A_NUMBER, (lw_cell_place){row, 4}, "wall height", "9o0", "a number");
  lw_faults_add(&faults, LW_FAULT_UNKNOWN_WORD, (lw_cell_place){row, 7}, "wall joints", "ajar",
                "open or sealed");
  lw_precheck_index_add_faults(index, &c, row, &faults);
}

static const char *after(const char *text, const char *words, const char *wall) {
  const char *at = strstr(text, words);
  cr_assert(at != NULL, "%s: no %s", wall, words);
  return at;
}

Test(precheck_index, the_gravest_comes_first_and_each_wall_is_there) {
  lw_precheck_index index = {.count = 0};
  lw_text page = {0};
  dice d = {.state = 31};
  int groups[LW_INDEX_GROUPS] = {0};
  for (int n = 0; n < 24; n++) {
    random_wall wall;
    char file[40];
    if (n % 2)
      random_wall_make(&d, &wall);
    else
      wall = (random_wall){.count = 0};
    if (n % 2 == 0)
      random_wall_add(&wall, "%s", n % 4 ? "site behind=bed" : "boundary distance=0.1 m"),
          random_wall_add(&wall, "wall height=%d mm", 200 + 50 * n),
          random_wall_add(&wall, "block height=200 mm"), random_wall_add(&wall, "block depth=500 mm");
    random_wall_hurry(&wall, n);
    random_wall_add(&wall, "mark=M%d", n);
    lw_result *r = random_wall_run(&wall);
    lw_print(file, sizeof file, "M%d.pdf", n);
    lw_precheck_index_add(&index, r, n + 2, file);
    groups[group_of(r->verdict.who)]++;
    if (n % 8 == 3) add_faulty(&index, 100 + n);
    free(r);
  }
  cr_assert(lw_precheck_index_html(&index, "street & co.csv", wall_of(wall_sorts[0])->tables, &page) ==
            LW_OK);
  for (size_t i = 1; i < index.count; i++) {
    const lw_index_entry *a = &index.entry[i - 1], *b = &index.entry[i];
    cr_expect(a->group <= b->group, "%s before %s", a->mark, b->mark);
    cr_expect(a->group != b->group || gravity_of(a->grade) <= gravity_of(b->grade), "%s", b->mark);
  }
  const char *at = page.data;
  for (size_t i = 0; i < index.count; i++) {
    char link[64];
    const lw_index_entry *e = &index.entry[i];
    lw_print(link, sizeof link, e->file[0] ? "<a href=\"%s\">" : "&lt;broken&gt; &amp; gone%s", e->file);
    at = after(at, link, e->mark) + 1;
    bool told = e->file[0] == '\0' || strlen(index.words.data + e->why) > 20;
    cr_expect(told, "%s: nothing says why", e->mark);
  }
  after(page.data, "Pre-checks of street &amp; co.csv", "title");
  after(page.data, "Row 103, column 4, wall height: ", "faults");
  after(page.data, "right would be: open or sealed.", "faults");
  cr_expect(strstr(page.data, "http") == NULL && strstr(page.data, "<script") == NULL);
  cr_expect(groups[LW_INDEX_ENGINEER] > 0 && groups[LW_INDEX_COUNCIL] > 0);
  lw_text_free(&page);
  lw_precheck_index_free(&index);
}

Test(precheck_index, of_no_wall_it_says_so) {
  lw_precheck_index index = {.count = 0};
  lw_text page = {0};
  cr_assert(lw_precheck_index_html(&index, "empty.csv", wall_of(wall_sorts[0])->tables, &page) == LW_OK);
  after(page.data, "0 walls", "none");
  lw_text_free(&page);
  lw_precheck_index_free(&index);
}
