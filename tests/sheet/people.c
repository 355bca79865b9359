/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "support.h"

/* As people write: fractions of an inch, slopes, and names of items that are nearly right. */

static lw_quantity read_item(const char *item, const char *value) {
  static lw_case c;
  char argument[160];
  lw_faults faults = {.count = 0};
  int number = 0;
  memset(&c, 0, sizeof c);
  snprintf(argument, sizeof argument, "%s=%s", item, value);
  lw_status status = lw_sheet_override(argument, 1, &c, &faults);
  const lw_item *found = lw_item_find(item, strlen(item), &number);
  lw_quantity absent = {.origin = LW_ABSENT};
  return status == LW_OK ? *lw_item_quantity(found, number, &c) : absent;
}

static void expect_metres(const char *value, double metres) {
  lw_quantity q = read_item("block depth", value);
  cr_expect(q.origin == LW_GIVEN && fabs(q.si - metres) < 1e-12, "%s: %.9g m", value, q.si);
}

/* Every fraction of a tape, beside whole inches and feet: an inch is 25.4 mm, exactly. */
Test(sheet, fractions_of_an_inch_are_lengths) {
  for (int bottom = 2; bottom <= 32; bottom *= 2) {
    for (int top = 1; top < bottom; top++) {
      char value[48];
      double part = (double)top / bottom;
      snprintf(value, sizeof value, "%d %d/%d in", 3 + top, top, bottom);
      expect_metres(value, (3 + top + part) * 0.0254);
      snprintf(value, sizeof value, "%d-%d/%d\"", 11, top, bottom);
      expect_metres(value, (11 + part) * 0.0254);
      snprintf(value, sizeof value, "1 ft %d/%d in", top, bottom);
      expect_metres(value, (12 + part) * 0.0254);
      snprintf(value, sizeof value, "2' 7 %d/%d\"", top, bottom);
      expect_metres(value, (31 + part) * 0.0254);
    }
  }
  expect_metres("7\xC2\xBD in", 7.5 * 0.0254);
  expect_metres("7 \xE2\x85\x9D in", 7.625 * 0.0254);
  expect_metres("1' 7\xC2\xBE\"", 19.75 * 0.0254);
  expect_metres("1 1/2 ft", 18 * 0.0254);
}

Test(sheet, what_is_no_fraction_of_an_inch_is_refused) {
  static const char *const wrong[] = {"7 5/8 m", "7 8/5 in",   "5/0 in", "7 5/ in",  "7 /8 in",    "1/2 mm",
                                      "7 5/8",   "-5/8 in",    "1 in 8", "10 %",     "2'--7\"",    "2' -7\"",
                                      "2'-\"",   "2 ft -7 in", "2'-7",   "--5/8 in", "2'-7 -1/2\""};
  for (size_t i = 0; i < sizeof wrong / sizeof *wrong; i++)
    cr_expect_eq(read_item("block depth", wrong[i]).origin, LW_ABSENT, "%s", wrong[i]);
}

/* In a cell beside its unit as well. */
Test(sheet, a_fraction_stands_beside_its_unit) {
  static const char sheet[] =
      "item,value,unit\nwall height,2,ft\nblock depth,7 5/8,in\nground slope,12.5,%\n";
  lw_case c;
  lw_faults faults = {.count = 0};
  cr_assert_eq(lw_sheet_read(sheet, sizeof sheet - 1, &c, &faults), LW_OK, "%s", faults.fault[0].wanted);
  cr_expect_float_eq(c.courses.block_depth.si, 7.625 * 0.0254, 1e-12);
  cr_expect_float_eq(c.ground.slope.si, atan(0.125), 1e-12);
}

/* "1 in 8", "1:8" and "12.5 %" are one slope; of a fall the same number. */
Test(sheet, slopes_are_read_three_ways) {
  static const char *const slopes[] = {"ground slope", "front slope", "face batter", "back batter"};
  for (int run = 2; run <= 40; run++) {
    char colon[24], in[24], percent[32];
    snprintf(colon, sizeof colon, "1:%d", run);
    snprintf(in, sizeof in, "1 in %d", run);
    snprintf(percent, sizeof percent, "%.15g %%", 100.0 / run);
    for (size_t i = 0; i < sizeof slopes / sizeof *slopes; i++) {
      double si = atan(1.0 / run);
      if (i > 1 && run < 4) continue; /* steeper than a batter may be */
      cr_expect_float_eq(read_item(slopes[i], colon).si, si, 1e-12, "%s %s", slopes[i], colon);
      cr_expect_float_eq(read_item(slopes[i], in).si, si, 1e-12, "%s %s", slopes[i], in);
      cr_expect_float_eq(read_item(slopes[i], percent).si, si, 1e-12, "%s %s", slopes[i], percent);
    }
    if (run < 5) continue;
    cr_expect_float_eq(read_item("drain pipe fall", in).si, 1.0 / run, 1e-12);
    cr_expect_float_eq(read_item("drain pipe fall", percent).si, 1.0 / run, 1e-12);
  }
  cr_expect_eq(read_item("soil 1 friction angle", "30 %").origin, LW_ABSENT);
  cr_expect_eq(read_item("wall friction", "30 %").kind, LW_KIND_SHARE);
}

static const char *wanted_of(const char *name) {
  static lw_faults faults;
  char argument[160];
  lw_case c = {0};
  faults.count = 0;
  snprintf(argument, sizeof argument, "%s=1", name);
  cr_assert_eq(lw_sheet_override(argument, 1, &c, &faults), LW_FAULTS, "%s is an item", name);
  return faults.fault[0].wanted;
}

/* The name without its k-th word, or with another in its place. */
static bool spoil(const char *name, int k, const char *instead, char *out, size_t size) {
  size_t used = 0;
  int word = 0, kept = 0;
  for (const char *at = name; *at != '\0'; word++) {
    size_t length = strcspn(at, " ");
    bool out_of_it = word == k;
    if (out_of_it && *at == '#') return false;
    const char *put = out_of_it ? instead : at;
    size_t put_length = out_of_it ? strlen(instead) : length;
    kept += !out_of_it && *at != '#' ? 1 : 0;
    if (put_length > 0)
      used += (size_t)snprintf(out + used, size - used, "%s%.*s", used > 0 ? " " : "",
                               *at == '#' ? 1 : (int)put_length, *at == '#' ? "1" : put);
    at += length + (at[length] == ' ' ? 1 : 0);
  }
  return k < word && kept > 0;
}

/* Every other item of the vocabulary, one word of its name left out or another: names are given, and each
 * is an item. */
Test(sheet, an_item_unknown_by_one_word_gets_its_nearest_names) {
  int tried = 0;
  for (size_t i = 0; i < lw_item_count(); i += 2) {
    for (int k = 0; k < 5; k++) {
      char name[96];
      int number;
      const char *instead = i % 4 ? "" : "quux";
      if (!spoil(lw_item_at(i)->name, k, instead, name, sizeof name)) continue;
      if (lw_item_find(name, strlen(name), &number)) continue;
      const char *wanted = wanted_of(name);
      cr_expect_eq(strncmp(wanted, "an item; the nearest ", 21), 0, "%s: %s", name, wanted);
      tried++;
      for (const char *at = strchr(wanted, '"'); at != NULL; at = strchr(at, '"')) {
        size_t length = strcspn(at + 1, "\"");
        cr_expect_not_null(lw_item_find(at + 1, length, &number), "%s: %.*s", name, (int)length, at + 1);
        at += length + 2;
      }
    }
  }
  cr_expect(tried > 150, "%d", tried);
  cr_expect_not_null(strstr(wanted_of("block weight"), "\"block unit weight\""));
  cr_expect_not_null(strstr(wanted_of("friction angle"), "\"soil 1 friction angle\""));
  cr_expect_not_null(strstr(wanted_of("outlets"), "\"drain outlets\""));
}

Test(sheet, river_sand_is_sand) {
  const lw_soil_row *river = lw_tables_soil(sheet_test_tables(), "river sand");
  cr_assert_not_null(river);
  cr_expect_eq(river, lw_tables_soil(sheet_test_tables(), "sand"));
}
