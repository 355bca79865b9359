/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Places as people write them. */
#include "base/print.h"
#include "tables/find.h"
#include "help.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <string.h>

#define EACH_PLACE(t, row) \
  for (int row = 0; row < (t)->limit_count; row++) \
    if ((t)->limit[row].place_row == row && !(t)->limit[row].of_default)

static int row_of(const char *format, const char *a, const char *b) {
  char words[200];
  lw_print(words, sizeof words, format, a, b);
  return lw_tables_place_row(tables_built_in(), words);
}

/* What stands around a place, one after the other; 0 at the end. */
static bool next_around(const char **within, char name[64]) {
  size_t span = strcspn(*within, "|");
  if (span == 0 || span >= 64) return false;
  memcpy(name, *within, span);
  name[span] = '\0';
  *within += span + ((*within)[span] == '|');
  return true;
}

Test(place, a_town_that_is_not_on_file_has_the_limits_of_what_lies_around_it) {
  const lw_tables *t = tables_built_in();
  EACH_PLACE(t, row) {
    const char *name = t->limit[row].place;
    cr_expect(eq(int, row_of("Atlantis, %s%s", name, ""), row), "%s", name);
    cr_expect(eq(int, row_of("Upper Atlantis,Old Mill, %s%s", name, ""), row), "%s", name);
    cr_expect(eq(int, row_of("Atlantis %s%s", name, ""), -1), "%s", name);
  }
}

Test(place, a_place_with_what_lies_around_it_is_itself) {
  const lw_tables *t = tables_built_in();
  int pairs = 0;
  EACH_PLACE(t, row) {
    const char *within = t->limit[row].within, *name = t->limit[row].place;
    for (char around[64]; next_around(&within, around); pairs++)
      cr_expect(eq(int, row_of("%s, %s", name, around), row), "%s, %s", name, around);
    cr_expect(eq(int, row_of("%s, %s", name, t->limit[row].country), row), "%s", name);
  }
  cr_expect(gt(int, pairs, 40));
  cr_expect_str_eq(lw_tables_place(t, "Portland, Oregon"), "portland");
  cr_expect_str_eq(lw_tables_place(t, "Maitland, NSW, Australia"), "maitland");
}

/* Two towns may have one name. */
Test(place, a_town_elsewhere_is_not_the_one_on_file) {
  const lw_tables *t = tables_built_in();
  EACH_PLACE(t, row) {
    const char *name = t->limit[row].place;
    cr_expect(eq(int, row_of("%s, Atlantis%s", name, ""), -1), "%s", name);
    EACH_PLACE(t, other) {
      int found = row_of("%s, %s", name, t->limit[other].place);
      bool abroad = strcmp(t->limit[row].country, t->limit[other].country) != 0;
      if (abroad) cr_expect(eq(int, found, other), "%s, %s", name, t->limit[other].place);
    }
  }
  cr_expect_null(lw_tables_place(t, "Portland, Maine"));
  cr_expect_str_eq(lw_tables_place(t, "Vancouver, Washington"), "washington");
  cr_expect_null(lw_tables_place(t, ""));
  cr_expect_null(lw_tables_place(t, ", ,"));
}

Test(place, what_is_not_on_file_is_answered_by_what_is) {
  const lw_tables *t = tables_built_in();
  const struct {
    const char *stood, *hint;
  } cases[] = {{"quensland", "the nearest on file is \"queensland\""},
               {"United Kingdom", "on file there: england-and-wales, england, scotland"},
               {"Atlantis",
                "its state or country; on file are places in Australia, New Zealand, United States, "
                "Canada, United Kingdom, Ireland, South Africa, Singapore, Hong Kong"}};
  for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
    char hint[LW_PLACE_HINT];
    cr_expect_str_eq(lw_tables_place_hint(t, cases[i].stood, hint, sizeof hint), cases[i].hint);
  }
}

/* No name of the list is cut, however many there are. */
Test(place, each_name_of_a_hint_is_one_that_is_on_file) {
  const lw_tables *t = tables_built_in();
  static const char LIST[] = "on file there: ";
  int lists = 0;
  EACH_PLACE(t, row) {
    char hint[LW_PLACE_HINT], name[64];
    lw_tables_place_hint(t, t->limit[row].country, hint, sizeof hint);
    if (strncmp(hint, LIST, strlen(LIST)) != 0) continue;
    for (const char *at = hint + strlen(LIST); *at != '\0'; at += strspn(at, ", "), lists++) {
      size_t span = strcspn(at, ",");
      cr_assert(span < sizeof name);
      memcpy(name, at, span);
      name[span] = '\0';
      cr_expect(lw_tables_has_place(t, name), "%s in %s", name, hint);
      at += span;
    }
  }
  cr_expect(gt(int, lists, 5));
}
