/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <dirent.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* Malformed sheets, a file each, and the faults expected of each in bad/slugs.csv: file,row,column,slug. */

static const char folder[] = "tests/sheet/bad/";

static void note_all(const lw_faults *faults, lw_text *found, const char *file) {
  for (int i = 0; i < faults->count; i++) {
    const lw_fault *fault = &faults->fault[i];
    lw_text_addf(found, "%s,%d,%d,%s\n", file, fault->row, fault->column, lw_fault_slug_name(fault->slug));
    cr_expect(fault->wanted[0] != '\0', "%s: %s says nothing of what would be right", file,
              lw_fault_slug_name(fault->slug));
  }
}

typedef struct rows {
  lw_text found;
  const char *file;
} rows;

static void take_row(void *context, int row, const lw_case *c, const lw_faults *faults) {
  rows *r = context;
  (void)row;
  lw_case completed = *c;
  lw_faults *all = malloc(sizeof *all);
  memcpy(all, faults, sizeof *all);
  lw_case_complete(sheet_test_tables(), &completed, all);
  note_all(all, &r->found, r->file);
  free(all);
}

/* All faults of a file, a line each. */
static lw_text faults_of(const char *file) {
  char path[256];
  lw_case c = {0};
  lw_faults faults = {0};
  rows r = {.file = file};
  lw_print(path, sizeof path, "%s%s", folder, file);
  lw_text sheet = sheet_test_file(path);
  if (lw_sheet_is_schedule(sheet.data, sheet.length)) {
    lw_schedule *schedule = lw_schedule_open(take_row, &r, &faults);
    lw_schedule_feed(schedule, sheet.data, sheet.length);
    lw_schedule_finish(schedule);
    lw_schedule_close(schedule);
  } else {
    lw_sheet_read(sheet.data, sheet.length, &c, &faults);
    lw_case_complete(sheet_test_tables(), &c, &faults);
  }
  note_all(&faults, &r.found, file);
  lw_text_free(&sheet);
  return r.found;
}

/* The lines of slugs.csv that are about this file. */
static lw_text expected_of(const char *slugs, const char *file) {
  lw_text expected = {0};
  size_t length = strlen(file);
  for (const char *line = slugs; *line != '\0';) {
    const char *end = strchr(line, '\n') + 1;
    if (strncmp(line, file, length) == 0 && line[length] == ',') {
      lw_text_add_bytes(&expected, line, (size_t)(end - line));
    }
    line = end;
  }
  return expected;
}

Test(sheet, every_malformed_sheet_gives_exactly_its_faults) {
  char path[256];
  lw_print(path, sizeof path, "%sslugs.csv", folder);
  lw_text slugs = sheet_test_file(path);
  int sheets = 0;
  DIR *files = opendir(folder);
  cr_assert(files != NULL);
  for (const struct dirent *entry; (entry = readdir(files)) != NULL;) {
    if (strstr(entry->d_name, ".csv") == NULL || strcmp(entry->d_name, "slugs.csv") == 0) {
      continue;
    }
    sheets++;
    lw_text expected = expected_of(slugs.data, entry->d_name);
    lw_text found = faults_of(entry->d_name);
    cr_expect(expected.length > 0, "%s is not in slugs.csv", entry->d_name);
    cr_expect(expected.length == found.length && strcmp(expected.data, found.data) == 0,
              "expected\n%sfound\n%s", expected.data, found.length > 0 ? found.data : "nothing\n");
    lw_text_free(&expected);
    lw_text_free(&found);
  }
  closedir(files);
  lw_text_free(&slugs);
  cr_expect(sheets >= 130, "%d sheets", sheets);
}

Test(sheet, every_slug_is_provoked_by_some_sheet) {
  char path[256];
  lw_print(path, sizeof path, "%sslugs.csv", folder);
  lw_text slugs = sheet_test_file(path);
  for (int i = 0; i < LW_FAULT_SLUG_COUNT; i++) {
    char wanted[64];
    /* A file that cannot be opened is the command's to provoke; a hundred faults are provoked below. */
    if (i == LW_FAULT_UNREADABLE || i == LW_FAULT_NO_ROOM) {
      continue;
    }
    lw_print(wanted, sizeof wanted, ",%s\n", lw_fault_slug_name((lw_fault_slug)i));
    cr_expect(strstr(slugs.data, wanted) != NULL, "%s", wanted);
  }
  lw_text_free(&slugs);
}

static lw_text sheet_with_long_cell(size_t length, const char *before, const char *after) {
  lw_text sheet = {0};
  char *filler = malloc(length);
  memset(filler, 'x', length);
  lw_text_add(&sheet, before);
  lw_text_add_bytes(&sheet, filler, length);
  lw_text_add(&sheet, after);
  free(filler);
  return sheet;
}

Test(sheet, a_cell_of_ten_megabytes_is_one_fault) {
  static const char *const before[] = {"item,value\nwall height,", "item,value\ntitle,\"", "", "\"",
                                       "item,value\n"};
  for (size_t i = 0; i < sizeof before / sizeof *before; i++) {
    lw_text sheet = sheet_with_long_cell(10000000, before[i], "\nblock depth,300 mm\n");
    lw_case c;
    lw_faults faults = {0};
    cr_expect(lw_sheet_read(sheet.data, sheet.length, &c, &faults) == LW_FAULTS);
    cr_expect(eq(int, faults.count, 1));
    cr_expect(faults.fault[0].slug == LW_FAULT_CELL_TOO_LONG, "%zu: %s", i,
              lw_fault_slug_name(faults.fault[0].slug));
    cr_expect(not(lw_sheet_is_schedule(sheet.data, sheet.length)));
    lw_text_free(&sheet);
  }
}

Test(sheet, more_faults_than_there_is_room_for_say_so) {
  lw_text sheet = {0};
  lw_text_add(&sheet, "item,value\n");
  for (int i = 0; i < 150; i++) {
    lw_text_addf(&sheet, "thing %d,1\n", i);
  }
  lw_case c;
  lw_faults faults = {0};
  lw_sheet_read(sheet.data, sheet.length, &c, &faults);
  cr_expect(eq(int, faults.count, LW_FAULT_MAX));
  cr_expect(faults.fault[LW_FAULT_MAX - 2].slug == LW_FAULT_UNKNOWN_ITEM);
  cr_expect(faults.fault[LW_FAULT_MAX - 1].slug == LW_FAULT_NO_ROOM);
  lw_text_free(&sheet);
}

Test(sheet, a_fault_is_one_line_that_names_file_place_and_cure) {
  lw_faults faults = {.file = "beds.csv"};
  lw_case c;
  const char *sheet = "item,value,unit\nsoil 1 frction angle,30,deg\nblock depth,\"3\n\t00\",mm\n";
  lw_sheet_read(sheet, strlen(sheet), &c, &faults);
  lw_text text = {0};
  lw_faults_print(&faults, &text);
  cr_expect(
      eq(str, text.data,
         "beds.csv: row 2, column 1: unknown-item: there is no such item; stood: \"soil 1 frction angle\"; "
         "wanted: an item; the nearest is \"soil 1 friction angle\"\n"
         "beds.csv: row 3, column 2: unknown-unit: block depth: there is no such unit; stood: \"3??00\"; "
         "wanted: one of the units m, mm, cm, in, ft, yd\n"));
  lw_text_free(&text);
}
