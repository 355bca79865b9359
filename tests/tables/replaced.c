/* SPDX-License-Identifier: GPL-3.0-or-later */
/* A directory of tables in place of the built-in ones, and everything that can be wrong with it. */
#define _XOPEN_SOURCE 700
#include "help.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

static lw_tables changed;

static const lw_limit_row *limit(const lw_tables *t, const char *id) {
  for (int i = 0; i < t->limit_count; i++)
    if (strcmp(t->limit[i].id, id) == 0) return &t->limit[i];
  return NULL;
}

Test(tables, a_council_changes_one_cell) {
  char *text = table_with("limits", "engineer-above,1,gt", "engineer-above,0.75,gt");
  cr_assert_eq(table_read_with("limits.csv", text, strlen(text), &changed, NULL), LW_OK);
  const lw_tables *built_in = tables_built_in();
  cr_expect(epsilon_eq(dbl, limit(&changed, "AU-NSW-05")->height_m, 0.75, 1e-12));
  cr_expect(epsilon_eq(dbl, limit(built_in, "AU-NSW-05")->height_m, 1.0, 1e-12));
  cr_expect(eq(int, changed.limit_count, built_in->limit_count));
  cr_expect(memcmp(changed.soil, built_in->soil, sizeof changed.soil) == 0);
  free(text);
}

/* What a spreadsheet makes of the file: byte-order mark, CR LF, a blank last row. */
Test(tables, a_spreadsheets_habits_change_nothing) {
  lw_text csv = {0}, saved = {0};
  cr_assert_eq(lw_tables_csv(NULL, "loads", &csv, NULL), LW_OK);
  lw_text_add(&saved, "\xEF\xBB\xBF");
  for (size_t i = 0; i < csv.length; i++) {
    if (csv.data[i] == '\n') lw_text_add(&saved, "\r");
    lw_text_add_bytes(&saved, &csv.data[i], 1);
  }
  lw_text_add(&saved, "\r\n");
  cr_assert_eq(table_read_with("loads.csv", saved.data, saved.length, &changed, NULL), LW_OK);
  const lw_tables *built_in = tables_built_in();
  cr_expect(eq(int, changed.load_count, built_in->load_count));
  cr_expect(memcmp(changed.load, built_in->load, sizeof changed.load) == 0);
  lw_text_free(&csv);
  lw_text_free(&saved);
}

Test(tables, the_text_in_effect_is_the_files_own) {
  table_directory directory;
  table_directory_make(&directory);
  char *text = table_with("loads", "people, barrow", "children, barrow");
  table_directory_write(&directory, "loads.csv", text, strlen(text));
  lw_text csv = {0}, other = {0}, built_in = {0};
  cr_assert_eq(lw_tables_csv(directory.path, "loads", &csv, NULL), LW_OK);
  cr_expect_str_eq(csv.data, text);
  cr_assert_eq(lw_tables_csv(directory.path, "soils", &other, NULL), LW_OK);
  cr_assert_eq(lw_tables_csv(NULL, "soils", &built_in, NULL), LW_OK);
  cr_expect_str_eq(other.data, built_in.data);
  cr_expect(eq(int, (int)lw_tables_csv(NULL, "recipes", &csv, NULL), LW_NO_SOLUTION));
  table_directory_remove(&directory);
  lw_text_free(&csv);
  lw_text_free(&other);
  lw_text_free(&built_in);
  free(text);
}

/* table, was, is, and what the message must name: file and row, column, cell, cure */
static const char *const faults[][7] = {
    {"loads", "slug,name", "slug,title", "loads.csv row 1", "name", "\"title\"", "header should be"},
    {"loads", "slug,name", "slug;name", "loads.csv row 1", "slug", "\"slug;name\"", "commas"},
    {"loads", ",seen\n", "\n", "loads.csv row 1", "all", "9 cells", "10 cells"},
    {"loads", "2.5,kPa", "2;5,kPa", "loads.csv row 2", "value", "\"2;5\"", "decimal point"},
    {"loads", "2.5,kPa", "\"2,5\",kPa", "loads.csv row 2", "value", "\"2,5\"", "decimal point"},
    {"loads", "2.5,kPa", "nan,kPa", "loads.csv row 2", "value", "\"nan\"", "decimal point"},
    {"loads", "2.5,kPa", "-2.5,kPa", "loads.csv row 2", "value", "\"-2.5\"", "within 0"},
    {"loads", "2.5,kPa", ",kPa", "loads.csv row 2", "value", "\"\"", "empty"},
    {"loads", "2.5,kPa", "2.5,kPa,", "loads.csv row 2", "seen", "LOWWALL", "one of seen|"},
    {"loads", ",proposal\n", ",proposal,\n", "loads.csv row 2", "all", "11 cells", "10 cells"},
    {"loads", ",proposal\n", "\n", "loads.csv row 2", "all", "9 cells", "10 cells"},
    {"loads", "2.5,kPa", "2.5,kilopascal", "loads.csv row 2", "unit", "\"kilopascal\"", "7 bytes"},
    {"loads", ",proposal\n", ",rumour\n", "loads.csv row 2", "seen", "\"rumour\"", "seen|memory"},
    {"loads", "\nvehicle,", "\ngarden,", "loads.csv row 6", "slug", "\"garden\"", "earlier row"},
    {"loads", "people, barrow", "people\xFF barrow", "loads.csv row 2", "name", "people", "UTF-8"},
    {"loads", "people, barrow", "peo\"ple", "loads.csv row 2", "any", "\"", "quotation mark"},
    {"limits", "engineer-above,1,gt", "engineer-above,1000,gt", "limits.csv row 6", "height [m]", "\"1000\"",
     "30"},
    {"limits", "engineer-above,1,gt", "engineer-above,1,above", "limits.csv row 6", "comparison", "\"above\"",
     "le|lt"},
    {"limits", "engineer-above,1,gt", "engineer,1,gt", "limits.csv row 6", "trigger", "\"engineer\"",
     "exempt-below|"},
    {"soils", "good,yes", "good,maybe", "soils.csv row 2", "free_draining", "\"maybe\"", "no|yes"},
    {"hazards", ",5,collapse,outlet", ",4.5,collapse,outlet", "hazards.csv row 2", "severity", "\"4.5\"",
     "whole number"},
    {"hazards", ",5,collapse,outlet", ",6,collapse,outlet", "hazards.csv row 2", "severity", "\"6\"",
     "within 1 and 5"},
    {"conditions", ",engineer,L,", ",engineer,X,", "conditions.csv row 2", "basis", "\"X\"", "L|J"},
    {"conditions", ",engineer,L,", ",enginer,L,", "conditions.csv row 2", "who", "\"enginer\"",
     "engineer|council"},
    {"clearances", ",1.0,1.0,greatest,", ",1.0,1.0,gretest,", "clearances.csv row 2", "height_of",
     "\"gretest\"", "greatest|lower-wall"},
    {"limits", "2014,,law,high,", "2014,,law,hihg,", "limits.csv row 2", "confidence", "\"hihg\"",
     "high|medium|low"},
    {"limits", "2014,,law,high,", "2014,,lore,high,", "limits.csv row 2", "status", "\"lore\"",
     "law|authority"},
    {"limits", ",planning-and-building,", ",planing,", "limits.csv row 2", "regime", "\"planing\"",
     "building|planning"},
    {"limits", ",near-boundary|mapped-land|near-waterbody,", ",near-boundry|mapped-land,", "limits.csv row 5",
     "only_if", "near-boundry", "words of"},
    {"limits", ",heritage|mapped-land|changes-drainage|", ",heritage|maped-land|", "limits.csv row 2",
     "any_height_if", "maped-land", "words of"},
};

Test(tables, a_fault_names_file_row_column_cell_and_cure) {
  for (size_t i = 0; i < sizeof faults / sizeof faults[0]; i++) {
    lw_error error = {0};
    char *text = table_with(faults[i][0], faults[i][1], faults[i][2]);
    lw_text file = {0};
    lw_text_addf(&file, "%s.csv", faults[i][0]);
    lw_status status = table_read_with(file.data, text, strlen(text), &changed, &error);
    cr_expect(eq(int, (int)status, LW_FAULTS), "%s -> %s", faults[i][1], faults[i][2]);
    cr_expect(eq(int, (int)error.status, LW_FAULTS));
    for (int k = 3; k < 7; k++)
      cr_expect(strstr(error.text, faults[i][k]) != NULL, "\"%s\" is not in: %s", faults[i][k], error.text);
    lw_text_free(&file);
    free(text);
  }
}

/* What the rows say together. */
static const char *const clashes[][4] = {
    {"soils", "34,37,18,15,16.5,21", "34,37,18,19,19,21", "light unit weight"},
    {"soils", "34,37,18,15,16.5,21", "34,37,18,15,16.5,17", "saturated unit weight"},
    {"soils", "34,37,18,15,16.5,21", "38,37,18,15,16.5,21", "typical"},
    {"soils", "34,37,18,15,16.5,21", "34,37,18,15,19,21", "typical unit weight"},
    {"materials", ",21,24,22,", ",21,24,25,", "likely unit weight"},
    {"soils", ",0,5,30,34,", ",5,5,30,34,", "hand test"},
    {"soils", "\nloam,", "\nlome,", "no row for loam"},
    {"materials", ",21,24,22,", ",25,24,22,", "low unit weight"},
    {"interfaces", "0.55,0.6,,29,31", "0.65,0.6,,29,31", "low friction"},
    {"loads", "\npeople-leaning,", "\npeople-lying,", "no row for people-leaning"},
    {"thresholds", "\nlean-height,", "\nleen-height,", "the nearest that is read is lean-height"},
    {"thresholds", "\nlean-height,", "\nbeauty,a,1,m,,[KEY p.1],seen\nlean-height,",
     "nothing reads that row"},
    {"thresholds", "guard,0.6,m,", "guard,600,mm,", "takes this figure in m"},
    {"fences", "\nrun-end,", "\nrun-and,", "the nearest that is read is run-end"},
    {"fences", "over that mid-run,2,,", "over that mid-run,2,m,", "no unit"},
    {"ordering", "\nbarrow-mass,", "\nbarow-mass,", "the nearest that is read is barrow-mass"},
    {"ordering", "one barrow,80,kg,", "one barrow,176,lb,", "takes this figure in kg"},
    {"conditions", "\nheritage,", "\nheritages,", "the nearest that is read is heritage"},
    {"clearances", "\nwaterbody,", "\nwaterbodies,", "nothing reads that row"},
    {"formats", "lowwall,sliding,", "lowwall,slideing,", "no check asks for it"},
    {"formats", "own cautious set,0,proposal,0,proposal,0", "own cautious set,0,proposal,1,proposal,0",
     "holds in every situation"},
    {"formats", "own cautious set,0,proposal,0,proposal,0", "own cautious set,0.5,proposal,0,proposal,0",
     "0 or 1 should"},
    {"formats", "approach 1\",1,memory", "approach 1\",0,memory", "1 should stand there"},
    {"formats", "includes-en1997-equ,", "includes-en1997-eku,", "no row has that set"},
    {"formats", "\nen1997-da1,includes-en1997-da1-1,",
     "\nen1997-da1,includes-ibc,a,1,memory,,,,,,,[KEY p.1],memory"
     "\nen1997-da1,includes-irc,a,1,memory,,,,,,,[KEY p.1],memory"
     "\nen1997-da1,includes-cp2,a,1,memory,,,,,,,[KEY p.1],memory"
     "\nen1997-da1,includes-en1997-da1-1,",
     "five others at most"},
    {"loads", "mower behind the wall\",uniform,2.5,kPa,", "mower behind the wall\",uniform,50,psf,",
     "in kPa|kPa/m"},
    {"loads", "one wheel of a car,point,10,kN,", "one wheel of a car,point,10,kPa,", "in kN"},
    {"loads", "one wheel of a car,point,10,kN,,", "one wheel of a car,point,10,kN,1,",
     "only a load of kind cap"},
    {"loads", "one wheel of a car,point,10,kN,,,", "one wheel of a car,point,10,kN,,1,",
     "only a load of kind strip"},
    {"soils", "filter,no,no,no,26,28,", "filter,no,no,no,,28,", "where the answer is left out"},
    {"soils", "filter,no,no,no,24,25,", "filter,no,no,no,,25,", "where the answer is left out"},
    {"soils", "20,17,18.5,21,50,30,50", "20,17,18.5,21,,30,50", "where the answer is left out"},
    {"interfaces", "assumed joint,joint,default,0.4,", "assumed joint,joint,default,,", "left out"},
    {"hazards", "{thresholds/root-radius}", "{thresholds/root-radious}", "a figure is quoted as"},
    {"hazards", "{thresholds/root-radius}", "{threshold/root-radius}", "a figure is quoted as"},
    {"hazards", "{thresholds/root-radius}", "{root-radius}", "a figure is quoted as"},
    {"hazards", "{thresholds/root-radius}", "{thresholds/root-radius", "a figure is quoted as"},
    {"hazards", "{thresholds/root-radius}", "{thresholds/root-radius as feet}", "a figure is quoted as"},
    {"conditions", "{thresholds/tier-apart as times}", "{thresholds/tier-a-part as times}",
     "a figure is quoted as"},
    {"hazards", "digging", "diging", "no wall has this cue"},
    {"limits", ",maitland,,new-south-wales|australia,", ",maitland,,new-south-wale|australia,",
     "within names"},
    {"limits", ",maitland,,new-south-wales|australia,", ",Maitland,,new-south-wales|australia,",
     "small letters"},
    {"limits", "AU-NSW-02,new-south-wales,", "AU-NSW-02,new-south-wale,", "another place"},
    {"limits", ",2019-08,law,", ",2019-13,law,", "day of reading"},
    {"limits", ",2019-08,law,", ",2019-8,law,", "day of reading"},
    {"limits", ",2019-08,law,", ",August,law,", "day of reading"},
};

Test(tables, rows_that_contradict_each_other_are_faults) {
  for (size_t i = 0; i < sizeof clashes / sizeof clashes[0]; i++) {
    lw_error error = {0};
    char *text = table_with(clashes[i][0], clashes[i][1], clashes[i][2]);
    lw_text file = {0};
    lw_text_addf(&file, "%s.csv", clashes[i][0]);
    lw_status status = table_read_with(file.data, text, strlen(text), &changed, &error);
    cr_expect(eq(int, (int)status, LW_FAULTS), "%s -> %s", clashes[i][1], clashes[i][2]);
    cr_expect(strstr(error.text, clashes[i][3]) != NULL, "\"%s\" is not in: %s", clashes[i][3], error.text);
    lw_text_free(&file);
    free(text);
  }
}

static void expect_fault(const char *file, const char *bytes, size_t length, lw_status expected,
                         const char *says) {
  lw_error error = {0};
  lw_status status = table_read_with(file, bytes, length, &changed, &error);
  cr_expect(eq(int, (int)status, (int)expected), "%s: %s", file, error.text);
  cr_expect(strstr(error.text, says) != NULL, "\"%s\" is not in: %s", says, error.text);
}

Test(tables, files_that_are_no_tables) {
  static const char header[] = "slug,name,kind,value,unit,push [kN/m],width [m],note,source,seen\n";
  static const char with_nul[] = "slug,name,kind,value,unit,push [kN/m],width [m],note,source,seen\n"
                                 "gar\0den,a,uniform,1,kPa,,,,[KEY p.1],seen\n";
  expect_fault("loads.csv", "", 0, LW_FAULTS, "no rows");
  expect_fault("loads.csv", "\n\n", 2, LW_FAULTS, "no rows");
  expect_fault("loads.csv", header, strlen(header), LW_FAULTS, "no rows");
  expect_fault("loads.csv", with_nul, sizeof with_nul - 1, LW_FAULTS, "NUL");
  expect_fault("loads.csv", "\"never closed\n", 14, LW_FAULTS, "quotation mark");
  expect_fault("load.csv", header, strlen(header), LW_FAULTS, "load.csv is no table");
  expect_fault("notes.txt", header, strlen(header), LW_NOT_READ, "holds no table");
}

Test(tables, a_table_may_not_outgrow_its_room) {
  lw_text text = {0};
  lw_text_add(&text, "slug,name,kind,value,unit,push [kN/m],width [m],note,source,seen\n");
  for (int i = 0; i <= LW_LOAD_ROWS; i++)
    lw_text_addf(&text, "load-%d,a,uniform,1,kPa,,,,[KEY p.1],seen\n", i);
  expect_fault("loads.csv", text.data, text.length, LW_TOO_MANY, "there is room for");
  lw_text_clear(&text);
  while (text.length <= (size_t)4 * 1024 * 1024)
    lw_text_add(&text, "a long line of no use to anybody at all\n");
  expect_fault("loads.csv", text.data, text.length, LW_TOO_MANY, "larger than a table");
  lw_text_free(&text);
}

Test(tables, directories_that_cannot_be_read) {
  table_directory directory;
  lw_error error = {0};
  table_directory_make(&directory);
  cr_expect(eq(int, (int)lw_tables_read(directory.path, &changed, &error), LW_NOT_READ));
  lw_text inner = {0};
  lw_text_addf(&inner, "%s/loads.csv", directory.path);
  cr_assert(mkdir(inner.data, 0700) == 0);
  cr_expect(eq(int, (int)lw_tables_read(directory.path, &changed, &error), LW_NOT_READ));
  cr_expect(strstr(error.text, "loads.csv") != NULL, "%s", error.text);
  table_directory_remove(&directory);
  cr_expect(eq(int, (int)lw_tables_read(directory.path, &changed, &error), LW_NOT_READ));
  cr_expect(eq(int, (int)lw_tables_csv(directory.path, "loads", &inner, &error), LW_NOT_READ));
  lw_text_free(&inner);
}

Test(tables, a_failure_leaves_the_callers_tables_alone) {
  cr_assert_eq(lw_tables_read(NULL, &changed, NULL), LW_OK);
  char *text = table_with("limits", "engineer-above,1,gt", "engineer-above,one,gt");
  cr_expect(eq(int, (int)table_read_with("limits.csv", text, strlen(text), &changed, NULL), LW_FAULTS));
  const lw_tables *built_in = tables_built_in();
  cr_expect(memcmp(&changed, built_in, sizeof changed) == 0);
  free(text);
}
