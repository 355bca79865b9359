/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheet/items_document.h"
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <ctype.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

/* The tables of docs/sheet.md stand between these lines. */
#define BEGIN "<!-- items: begin -->\n"
#define END "<!-- items: end -->\n"

Test(sheet, the_document_has_the_tables_of_the_items) {
  lw_text document = sheet_test_file("docs/sheet.md");
  lw_text tables = {0};
  lw_items_document(&tables);
  const char *begin = strstr(document.data, BEGIN);
  const char *end = strstr(document.data, END);
  cr_assert(begin != NULL && end != NULL);
  begin += strlen(BEGIN);
  bool same = (size_t)(end - begin) == tables.length && memcmp(begin, tables.data, tables.length) == 0;
  cr_expect(same,
            "docs/sheet.md lags behind the items: put the output of `lowwall list items --markdown` between "
            "its two marks");
  lw_text_free(&document);
  lw_text_free(&tables);
}

Test(sheet, every_item_is_whole) {
  cr_expect(lw_item_count() >= 100);
  for (size_t i = 0; i < lw_item_count(); i++) {
    const lw_item *item = lw_item_at(i);
    cr_expect(item->means[0] != '\0' && item->example[0] != '\0' && item->question != NULL, "%s", item->name);
    bool numbered = strchr(item->name, '#') != NULL;
    cr_expect(numbered == (item->repeats > 0), "%s", item->name);
    cr_expect(item->type != LW_ITEM_QUANTITY || item->low < item->high, "%s", item->name);
    cr_expect(item->type != LW_ITEM_QUANTITY || isnan(item->assumed) ||
                  (item->assumed >= item->low && item->assumed <= item->high),
              "%s: its default is out of range", item->name);
  }
  cr_expect(lw_item_at(lw_item_count()) == NULL);
}

Test(sheet, no_two_items_share_a_name_a_key_or_a_place) {
  for (size_t i = 0; i < lw_item_count(); i++) {
    for (size_t k = 0; k < i; k++) {
      cr_expect(strcmp(lw_item_at(i)->name, lw_item_at(k)->name) != 0, "%s", lw_item_at(i)->name);
      cr_expect(lw_item_at(i)->offset != lw_item_at(k)->offset, "%s", lw_item_at(i)->name);
    }
  }
}

/* Each item's own example, read by the parser, is taken and lands in that item alone. */
Test(sheet, every_example_is_read) {
  for (size_t i = 0; i < lw_item_count(); i++) {
    const lw_item *item = lw_item_at(i);
    char name[64];
    char argument[256];
    lw_case c = {0};
    lw_faults faults = {0};
    int number = item->repeats;
    lw_item_print_name(item, number, name, sizeof name);
    lw_print(argument, sizeof argument, "%s=%s", name, item->example);
    cr_expect(lw_sheet_override(argument, 1, &c, &faults) == LW_OK, "%s: %s", argument,
              faults.fault[0].wanted);
    lw_text text = {0};
    lw_sheet_write(&c, false, &text);
    const char *row = strchr(text.data, '\n') + 1;
    cr_expect(strncmp(row, name, strlen(name)) == 0 && strchr(row, '\n')[1] == '\0', "%s", text.data);
    lw_text_free(&text);
  }
}

Test(sheet, every_item_is_found_by_its_name_and_its_key_is_plain) {
  for (size_t i = 0; i < lw_item_count(); i++) {
    const lw_item *item = lw_item_at(i);
    char name[64];
    char key[96];
    int number;
    lw_item_print_name(item, item->repeats > 0 ? 3 : 0, name, sizeof name);
    cr_expect(lw_item_find(name, strlen(name), &number) == item, "%s", name);
    cr_expect(number == (item->repeats > 0 ? 3 : 0), "%s", name);
    lw_item_print_key(item, item->repeats > 0 ? 3 : 0, key, sizeof key);
    for (const char *c = key; *c != '\0'; c++) {
      bool plain = islower((unsigned char)*c) || isdigit((unsigned char)*c) || *c == '_';
      cr_expect(plain, "%s", key);
    }
  }
  int number;
  char key[96];
  lw_item_print_key(lw_item_find("soil 1 friction angle", 21, &number), 1, key, sizeof key);
  cr_expect(eq(str, key, "soil_1_friction_angle_deg"));
  lw_item_print_key(lw_item_find("wall height", 11, &number), 0, key, sizeof key);
  cr_expect(eq(str, key, "wall_height_m"));
}

Test(sheet, every_word_of_every_choice_is_read_as_itself) {
  for (size_t i = 0; i < lw_item_count(); i++) {
    const lw_item *item = lw_item_at(i);
    char word[32];
    for (int value = 0;
         item->type == LW_ITEM_CHOICE && lw_item_word(item, value, word, sizeof word)[0] != '\0'; value++) {
      char name[64];
      char argument[128];
      lw_case c = {0};
      lw_faults faults = {0};
      int number = item->repeats > 0 ? 1 : 0;
      lw_item_print_name(item, number, name, sizeof name);
      lw_print(argument, sizeof argument, "%s=%s", name, word);
      cr_expect(lw_sheet_override(argument, 1, &c, &faults) == LW_OK, "%s", argument);
      cr_expect(lw_item_choice(item, number, &c)->value == value, "%s", argument);
    }
  }
}

Test(sheet, yes_and_no_have_other_ways_to_say_them) {
  static const char *const yes[] = {"people on cap=yes", "people on cap=Y", "people on cap=TRUE"};
  static const char *const no[] = {"people on cap=no", "people on cap=n", "people on cap=false"};
  for (int i = 0; i < 3; i++) {
    cr_expect(CASE("wall height=1 m", yes[i]).courses.people_on_cap.value == LW_YES);
    cr_expect(CASE("wall height=1 m", no[i]).courses.people_on_cap.value == LW_NO);
  }
}

Test(sheet, every_starter_sheet_runs_as_it_is) {
  static const char *const kinds[] = {"bed", "ground", "section"};
  for (size_t i = 0; i < sizeof kinds / sizeof *kinds; i++) {
    lw_text sheet = {0};
    lw_case c;
    lw_faults faults = {0};
    cr_expect(lw_sheet_start(kinds[i], &sheet) == LW_OK);
    cr_expect(sheet_test_settled(sheet.data, &c, &faults) == LW_OK, "%s: row %d, %s", kinds[i],
              faults.fault[0].row, faults.fault[0].wanted);
    cr_expect(strstr(sheet.data, "invented") != NULL);
    cr_expect(c.wall.kind.value == (i == 2 ? LW_WALL_SECTION : LW_WALL_COURSES));
    lw_text_free(&sheet);
  }
  lw_text none = {0};
  cr_expect(lw_sheet_start("castle", &none) == LW_NO_SOLUTION);
  cr_expect(none.data == NULL);
}

Test(sheet, the_bed_starter_answers_every_question_that_is_asked_of_it) {
  lw_text sheet = {0};
  lw_case c;
  lw_faults faults = {0};
  lw_sheet_start("bed", &sheet);
  cr_assert(sheet_test_settled(sheet.data, &c, &faults) == LW_OK);
  cr_expect(c.site.behind.value == LW_BEHIND_BED && c.site.back.value == LW_BACK_WALL);
  cr_expect(c.site.building_distance.origin == LW_GIVEN && c.site.mapped_land.value == LW_NO);
  cr_expect(c.courses.block_depth.origin == LW_GIVEN && c.load[0].kind.origin == LW_GIVEN);
  lw_text_free(&sheet);
}
