/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "walls.h"

#include <criterion/criterion.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../sheet/support.h"

int ordinary_each(ordinary_taker taker, void *context) {
  char line[CASE_LINE_MAX];
  int count = 0;
  FILE *in = fopen("tests/ordinary/walls.csv", "r");
  cr_assert_not_null(in);
  cr_assert_not_null(fgets(line, sizeof line, in));
  cr_assert_str_eq(line, "id,what,class,source,seen,outcome,note\n");
  for (; fgets(line, sizeof line, in) != NULL; count++) {
    ordinary_wall wall;
    char *cells[] = {wall.id, wall.what, wall.class, wall.source, wall.seen, wall.outcome, wall.note};
    const char *at = line;
    for (size_t i = 0; i < sizeof cells / sizeof *cells; i++) {
      cr_assert_not_null(at, "too few cells in: %s", line);
      at = case_cell(at, cells[i]);
    }
    taker(context, &wall);
  }
  fclose(in);
  return count;
}

bool ordinary_is(const ordinary_wall *wall, const char *class) {
  return strcmp(wall->class, class) == 0;
}

static bool begins(const char *line, const char *with) {
  return strncmp(line, with, strlen(with)) == 0;
}

/* The x of a line "point 3 x,0.2500 m"; false on any other line. */
static bool point_of(const char *line, int *number, double *x_m) {
  char *end;
  if (!begins(line, "point ")) return false;
  *number = (int)strtol(line + strlen("point "), &end, 10);
  if (!begins(end, " x,")) return false;
  *x_m = case_number_of(end + strlen(" x,"));
  return true;
}

/* One line of the sheet, changed. */
static void take_line(const char *line, size_t length, const ordinary_change *change, lw_text *out) {
  int number = 0;
  double x_m = 0.0;
  bool scaled = change->depth_share > 0.0 && point_of(line, &number, &x_m);
  if (change->garden_load && begins(line, "load 1 ")) return;
  if (scaled)
    lw_text_addf(out, "point %d x,%.6f m", number, x_m * change->depth_share);
  else if (change->loam_on_clay && begins(line, "soil 1 name,"))
    lw_text_add(out, "soil 1 name,loam");
  else if (change->loam_on_clay && begins(line, "footing soil name,"))
    lw_text_add(out, "footing soil name,stiff clay");
  else
    lw_text_add_bytes(out, line, length);
  lw_text_add(out, "\n");
}

static lw_text sheet_of(const ordinary_wall *wall, const ordinary_change *change) {
  char path[CASE_CELL_MAX + 32];
  snprintf(path, sizeof path, "tests/ordinary/sheets/%s.csv", wall->id);
  lw_text file = sheet_test_file(path), out = {0};
  cr_assert_not_null(file.data, "%s", path);
  for (const char *line = file.data; *line;) {
    size_t length = strcspn(line, "\n");
    take_line(line, length, change, &out);
    line += length + (line[length] != '\0');
  }
  lw_text_free(&file);
  return out;
}

static void look_at(const lw_result *r, ordinary_answer *answer) {
  const lw_situation *built = &r->situations.situation[0];
  for (int i = 0; i < built->check_count; i++) {
    lw_check check = lw_situation_check(built, i);
    if (check.at != LW_AT_BASE) continue;
    if (check.kind == LW_CHECK_SLIDING) answer->sliding = check.has;
    if (check.kind == LW_CHECK_OVERTURNING) answer->tipping = check.has;
  }
  if (!r->situations.governed) return;
  const lw_situation *at = &r->situations.situation[r->situations.governing_situation];
  lw_check check = lw_situation_check(at, r->situations.governing_check);
  char words[40];
  lw_check_words(&check, words, sizeof words);
  snprintf(answer->governs, sizeof answer->governs, "%s, %s", words, lw_situation_short(at->name));
}

ordinary_answer ordinary_run(const ordinary_wall *wall, const ordinary_change *change) {
  lw_result *r = calloc(1, sizeof *r), *scratch = calloc(1, sizeof *scratch);
  lw_text sheet = sheet_of(wall, change), told = {0};
  lw_case c = {0};
  lw_faults faults;
  lw_status status = sheet_test_settled(sheet.data, &c, &faults);
  lw_faults_print(&faults, &told);
  cr_assert(r && scratch && status == LW_OK, "%s: %s", wall->id, told.data);
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_VERDICT, r, NULL), LW_OK, "%s", wall->id);
  lw_looks_find(r, scratch);
  ordinary_answer answer = {.stands = r->verdict.stands,
                            .grade = r->verdict.grade,
                            .has = r->looks.cautious.has,
                            .likely = r->looks.likely.has};
  look_at(r, &answer);
  lw_text_free(&sheet);
  lw_text_free(&told);
  free(r);
  free(scratch);
  return answer;
}
