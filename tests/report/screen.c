/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _POSIX_C_SOURCE 200809L
#include <criterion/criterion.h>

#include <ctype.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <lowwall/report.h>

#include "../checks/random_wall.h"
#include "../sheet/support.h"
#include "advised.h"
#include "every_wall.h"
#include "slugs.h"
#include "walls.h"

/* The first screen keeps its sixty lines of eighty columns for any wall, and what it may never leave out. */

static int lines_of(const char *text) {
  int lines = 0;
  for (; *text; text++) lines += *text == '\n' ? 1 : 0;
  return lines;
}

static int widest(const char *text) {
  int most = 0, width = 0;
  for (; *text; text++) {
    width = *text == '\n' ? 0 : width + (((unsigned char)*text & 0xC0) == 0x80 ? 0 : 1);
    most = width > most ? width : most;
  }
  return most;
}

/* Blanks and ends of lines run together, so that what is wrapped can be looked for. */
static void unwrap(const char *text, char *out, size_t size) {
  size_t used = 0;
  for (; *text && used + 1 < size; text++) {
    bool blank = *text == ' ' || *text == '\n';
    if (blank && used > 0 && out[used - 1] == ' ') continue;
    out[used++] = blank ? ' ' : *text;
  }
  out[used] = '\0';
}

/* "[IBC 1807]", "LIMIT-01": for whoever looks up a source. */
static bool has_key(const char *text) {
  for (; *text; text++) {
    if (text[0] == '[' && isupper((unsigned char)text[1]) && isupper((unsigned char)text[2])) return true;
    if (strncmp(text, "DEFAULT-", 8) == 0) return true;
  }
  return false;
}

/* The table has the check for which the wall is said to move, or says why it is said without one. */
static void hold_would_move(const lw_result *r, const char *said, const char *name) {
  const char *table = strstr(said, "Checks, each at its worst");
  if (r->verdict.grade != LW_GRADE_WOULD_MOVE || r->looks.bare || table == NULL) return;
  cr_expect(strstr(table, " would move ") != NULL || strstr(table, " would tip ") != NULL ||
                strstr(table, "so it counts as a wall that would move.") != NULL,
            "%.900s: %s", table, name);
}

/* gives how many cautions it may not leave out */
static int hold(const lw_result *r, const char *name) {
  static const char engineer[] =
      "This is past the simple garden-bed limit: a licensed engineer must design it under the local code "
      "before work starts.";
  static const char *const there[] = {" What it is ",   " Does it stand ",        " Who answers ",
                                      " Not checked: ", "`lowwall check --full`", "It certifies nothing"};
  static char said[16384];
  lw_text screen = {0};
  int staying = 0;
  cr_assert_eq(lw_report_screen(r, &(lw_text_style){0}, &screen), LW_OK);
  cr_expect(lines_of(screen.data) <= LW_SCREEN_LINES, "%d lines: %s", lines_of(screen.data), name);
  cr_expect(widest(screen.data) <= LW_SCREEN_COLUMNS, "%d columns: %s", widest(screen.data), name);
  unwrap(screen.data, said, sizeof said);
  cr_expect_not(has_key(said), "%s", name);
  cr_expect(slug_in(said) == NULL, "%s: %s", slug_in(said) ? slug_in(said) : "", name);
  hold_would_move(r, said, name);
  if (r->verdict.who == LW_WHO_ENGINEER)
    cr_expect_eq(strncmp(said, engineer, sizeof engineer - 1), 0, "%.90s: %s", said, name);
  for (size_t i = 0; i < sizeof there / sizeof *there; i++)
    cr_expect_not_null(strstr(said, there[i]), "%s: %s", there[i], name);
  for (int i = 0; i < r->verdict.reasons.caution_count; i++) {
    const lw_hazard_row *row = r->verdict.reasons.caution[i];
    char hazard[sizeof row->hazard + 2];
    snprintf(hazard, sizeof hazard, "%s: ", row->hazard);
    if (row->names[0] == '\0') continue;
    cr_expect_not_null(strstr(said, hazard), "%s: %s", hazard, name);
    staying++;
  }
  lw_text_free(&screen);
  return staying;
}

/* Titles that no screen has room for, and that would steer it. */
static void name_it(lw_result *r, int number) {
  static const char *const bad[] = {"", "word ", "x", "\xC3\xA9", "\033[31m", "[a] 100 % ", "\xE2\x82\xAC. "};
  enum { SORTS = sizeof bad / sizeof *bad };
  char *title = r->given.about.title.text, *mark = r->given.about.mark.text;
  const char *with = bad[number % SORTS], *by = bad[number / SORTS % SORTS];
  memset(title, 0, LW_WORDS_MAX);
  memset(mark, 0, LW_WORDS_MAX);
  while (with[0] && strlen(title) + strlen(with) < LW_WORDS_MAX)
    memcpy(title + strlen(title), with, strlen(with));
  while (by[0] && strlen(mark) + strlen(by) < LW_WORDS_MAX) memcpy(mark + strlen(mark), by, strlen(by));
}

static void add_place_and_set(random_wall *wall, int number) {
  const lw_tables *t = sheet_test_tables();
  const char *place = t->limit[number * 7 % t->limit_count].place;
  const char *set = t->factor[number * 5 % t->factor_count].factor_set;
  if (number % 3 != 0) random_wall_add(wall, "place=%s", place);
  if (number % 4 == 1) random_wall_add(wall, "method format=%s", set);
}

Test(screen, keeps_its_size_and_what_matters_whatever_the_wall) {
  enum { WALLS = 480 / RANDOM_SHARE, WITH_REMEDIES = 40 };
  lw_result *result = calloc(2, sizeof *result);
  dice d = {29};
  int staying = 0, engineers = 0;
  cr_assert(result != NULL);
  for (int i = 0; i < WALLS; i++) {
    char name[1600];
    random_wall wall;
    random_wall_make(&d, &wall);
    random_wall_hurry(&wall, i);
    add_place_and_set(&wall, i);
    random_wall_name(&wall, name, sizeof name);
    lw_case c = random_wall_case(&wall);
    cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK, "%s", name);
    if (i % WITH_REMEDIES == 0) lw_remedies_find(result, result + 1);
    if (i % WITH_REMEDIES == 0) advised_hold(result, name);
    name_it(result, i);
    staying += hold(result, name);
    engineers += result->verdict.who == LW_WHO_ENGINEER ? 1 : 0;
  }
  cr_expect(staying > WALLS && engineers > WALLS / 10, "%d cautions stay, %d engineers", staying, engineers);
  free(result);
}

/* Ordinary walls, of which a look at likely values changes what is said. */
Test(screen, shows_the_check_for_which_a_wall_is_said_to_move) {
  static const char *const grounds[] = {"loam", "soft clay", "stiff clay", "clean sand"};
  static const char *const soils[] = {"loam", "clean sand", "sandy loam"};
  lw_result *result = calloc(1, sizeof *result);
  dice d = {31};
  int moves = 0;
  cr_assert(result != NULL);
  for (int i = 0; i < 90 / RANDOM_SHARE; i++) {
    char name[1600];
    random_wall wall = {0};
    random_wall_add(&wall, "wall height=%d mm", 300 + 50 * dice_pick(&d, 18));
    random_wall_add(&wall, "block depth=%d mm", 400 + 50 * dice_pick(&d, 10));
    random_wall_add(&wall, "soil 1 name=%s", soils[dice_pick(&d, 3)]);
    random_wall_add(&wall, "footing soil name=%s", grounds[dice_pick(&d, 4)]);
    random_wall_add(&wall, "ground slope=%d deg", 5 * dice_pick(&d, 3));
    random_wall_add(&wall, "front slope=%d %%", 15 * dice_pick(&d, 2));
    random_wall_add(&wall, "wall joints=open");
    random_wall_add(&wall, "drain outlets=%d", dice_pick(&d, 3));
    random_wall_add(&wall, "vehicle access=no");
    random_wall_hurry(&wall, i);
    random_wall_name(&wall, name, sizeof name);
    lw_case c = random_wall_case(&wall);
    cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK, "%s", name);
    hold(result, name);
    moves += result->verdict.grade == LW_GRADE_WOULD_MOVE ? 1 : 0;
  }
  cr_expect(RANDOM_SHARE > 1 || moves > 20, "%d move", moves);
  free(result);
}

/* All cautions that there can be name something that stays: the least that is left of all else still fits. */
Test(screen, keeps_its_size_with_as_many_cautions_as_there_can_be) {
  static lw_result copy;
  const lw_tables *t = sheet_test_tables();
  for (size_t sort = 0; wall_sorts[sort] != NULL; sort++) {
    copy = *wall_of(wall_sorts[sort]);
    lw_reasons *to = &copy.verdict.reasons;
    to->caution_count = 0;
    for (int i = t->hazard_count - 1; i >= 0 && to->caution_count < LW_CAUTION_MAX; i--)
      if (t->hazard[i].names[0] != '\0') to->caution[to->caution_count++] = &t->hazard[i];
    cr_assert_eq(to->caution_count, LW_CAUTION_MAX);
    cr_expect_eq(hold(&copy, wall_sorts[sort]), LW_CAUTION_MAX);
  }
}

/* A wall a row of a file without quotes, its items in the first line: "wall height [mm]". */
static bool wall_of_row(FILE *file, char *const header[], int count, random_wall *wall) {
  char line[1024], *cell = line;
  wall->count = 0;
  if (fgets(line, sizeof line, file) == NULL) return false;
  for (int i = 0; i < count; i++) {
    size_t length = strcspn(cell, ",\n");
    char item[64], *unit = strchr(header[i], '[');
    snprintf(item, sizeof item, "%.*s", unit ? (int)(unit - header[i] - 1) : (int)strlen(header[i]),
             header[i]);
    random_wall_add(wall, "%s=%.*s %.*s", item, (int)length, cell, unit ? (int)strcspn(unit + 1, "]") : 0,
                    unit ? unit + 1 : "");
    cell += length + 1;
  }
  return true;
}

static int hold_street(const char *sort, lw_result *result) {
  char command[120], line[1024], *header[40];
  int count = 0, walls = 0;
  snprintf(command, sizeof command, "awk -v sort=%s -v rows=40 -f tests/bench/street.awk", sort);
  FILE *file = popen(command, "r");
  cr_assert(file != NULL && fgets(line, sizeof line, file) != NULL);
  for (char *cell = strtok_r(line, ",\n", &header[39]); cell; cell = strtok_r(NULL, ",\n", &header[39]))
    header[count++] = cell;
  for (random_wall wall; wall_of_row(file, header, count, &wall); walls++) {
    lw_case c = random_wall_case(&wall);
    cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK);
    hold(result, sort);
  }
  pclose(file);
  return walls;
}

Test(screen, keeps_its_size_along_the_streets_of_the_bench) {
  lw_result *result = calloc(1, sizeof *result);
  cr_assert(result != NULL);
  cr_expect_eq(hold_street("beds", result), 40);
  cr_expect_eq(hold_street("walls", result), 40);
  cr_expect_eq(hold_street("mixed", result), 40);
  free(result);
}

int every_screen_keeps_its_size(const every_wall *wall) {
  hold(wall->result, wall->name);
  return 1;
}

/* What is left out is counted: of a screen with room for all there is nothing to count. */
Test(screen, counts_what_it_leaves_out) {
  lw_text much = {0};
  cr_assert_eq(lw_report_screen(wall_of(wall_sorts[5]), &(lw_text_style){0}, &much), LW_OK);
  cr_expect_not_null(strstr(much.data, "\n  and "));
  cr_expect_eq(lines_of(much.data) > 45, true);
  lw_text_free(&much);
}

Test(screen, colours_only_what_a_word_says_too) {
  static char with[16384], without[16384];
  lw_text colour = {0}, plain = {0};
  const lw_result *r = wall_of(wall_sorts[0]);
  cr_assert_eq(lw_report_screen(r, &(lw_text_style){.colour = true}, &colour), LW_OK);
  cr_assert_eq(lw_report_screen(r, &(lw_text_style){0}, &plain), LW_OK);
  size_t used = 0;
  for (const char *at = colour.data; *at; at++) {
    if (*at == '\033')
      at += strcspn(at, "m");
    else
      with[used++] = *at;
  }
  snprintf(without, sizeof without, "%s", plain.data);
  cr_expect_str_eq(with, without);
  cr_expect_not_null(strchr(colour.data, '\033'));
  cr_expect_null(strchr(plain.data, '\033'));
  lw_text_free(&colour);
  lw_text_free(&plain);
}
