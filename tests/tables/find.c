/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Names, other names, hand tests, and the nearest name. */
#include "tables/find.h"
#include "help.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <string.h>

static const char *soil(const char *name) {
  const lw_soil_row *row = lw_tables_soil(tables_built_in(), name);
  return row ? row->name : "(none)";
}

static void expect_soils(const char *const pairs[][2], size_t count) {
  for (size_t i = 0; i < count; i++) cr_expect_str_eq(soil(pairs[i][0]), pairs[i][1], "%s", pairs[i][0]);
}

Test(tables, soils_by_name_and_plain_words) {
  static const char *const pairs[][2] = {
      {"silty sand", "silty sand"},
      {"Silty  Sand", "silty sand"},
      {" silty_sand ", "silty sand"},
      {"sandy loam", "silty sand"},
      {"SM", "silty sand"},
      {"low plasticity clay", "low-plasticity clay"},
      {"clay", "high-plasticity clay"},
      {"compost", "compost"},
      {"garden mix", "planting mix"},
      {"garden soil", "topsoil"},
      {"plant soil", "topsoil"},
      {"mulch", "compost"},
      {"thumb dents", "stiff clay"},
      {"thumb sinks with effort", "firm clay"},
      {"fist sinks", "very soft clay"},
      {"jar mostly sand", "silty sand"},
      {"jar mostly clay", "high-plasticity clay"},
      {"not known", "loam"},
      {"silty", "(none)"},
      {"", "(none)"},
      {"|", "(none)"},
  };
  expect_soils(pairs, sizeof pairs / sizeof pairs[0]);
}

/* A ribbon that ends at a boundary is the weaker soil; a range, the weaker of what it covers. */
Test(tables, soils_by_ribbon) {
  static const char *const pairs[][2] = {
      {"ribbon 0", "clean sand"},
      {"ribbon 4.9", "clean sand"},
      {"ribbon 0-5", "clean sand"},
      {"ribbon 5", "clayey sand"},
      {"ribbon 5-15", "clayey sand"},
      {"ribbon 12 mm", "clayey sand"},
      {"ribbon 15-20", "silty sand"},
      {"ribbon 18", "silty sand"},
      {"ribbon 25", "loam"},
      {"Ribbon 25 mm", "loam"},
      {"ribbon 2.5 cm", "loam"},
      {"ribbon 1 in", "loam"},
      {"ribbon 30", "clay loam"},
      {"ribbon 30-50", "clay loam"},
      {"ribbon 3 cm", "clay loam"},
      {"ribbon 50", "high-plasticity clay"},
      {"ribbon 120", "high-plasticity clay"},
      {"ribbon 18-25", "loam"},
      {"ribbon 25 to 35 mm", "clay loam"},
      {"ribbon 20-60", "high-plasticity clay"},
      {"ribbon", "(none)"},
      {"ribbon long", "(none)"},
      {"ribbon 25 kg", "(none)"},
      {"ribbon 25 mm more", "(none)"},
      {"ribbon 30-20", "(none)"},
      {"ribbon 1.2.3", "(none)"},
  };
  expect_soils(pairs, sizeof pairs / sizeof pairs[0]);
}

/* Dry grains poured slowly lie at an angle that their friction is not below. */
Test(tables, soils_by_poured_heap) {
  static const char *const pairs[][2] = {
      {"heap 34 deg", "crushed rock"}, {"poured heap 34", "crushed rock"},
      {"heap 38", "crushed rock"},     {"heap 33.9 deg", "clean sand"},
      {"heap 30", "clean sand"},       {"heap 27 deg", "loose sand"},
      {"heap 32-36", "clean sand"},    {"heap 20", "(none)"},
      {"heap 60 deg", "(none)"},       {"heap 34 mm", "(none)"},
  };
  expect_soils(pairs, sizeof pairs / sizeof pairs[0]);
  const lw_soil_row *row = lw_tables_soil(tables_built_in(), "heap 36 deg");
  cr_expect(le(dbl, row->friction_rad, 36 * 3.14159265358979323846 / 180));
}

/* Every name and other name leads back to its own row, so no two rows claim the same words. */
Test(tables, no_two_soils_share_a_name) {
  const lw_tables *t = tables_built_in();
  for (int i = 0; i < t->soil_count; i++) {
    char words[LW_ALIASES_MAX];
    memcpy(words, t->soil[i].aliases, sizeof words);
    cr_expect(lw_tables_soil(t, t->soil[i].name) == &t->soil[i], "%s", t->soil[i].name);
    for (char *word = words, *end; word && *word; word = end) {
      end = strchr(word, '|');
      if (end) *end++ = '\0';
      cr_expect(lw_tables_soil(t, word) == &t->soil[i], "%s: %s", t->soil[i].name, word);
    }
  }
}

Test(tables, other_lists_by_name) {
  const lw_tables *t = tables_built_in();
  cr_expect_str_eq(lw_tables_material(t, "Pad Stone")->name, "crushed stone");
  cr_expect_str_eq(lw_tables_load(t, "People sitting down")->slug, "people-sitting-down");
  cr_expect_str_eq(lw_tables_interface(t, "masonry on clean gravel")->use, "base");
  cr_expect_null(lw_tables_material(t, "lead"));
  cr_expect_null(lw_tables_load(t, "elephants"));
  cr_expect_null(lw_tables_interface(t, "glass on ice"));
  cr_expect_null(lw_tables_factor(t, "ibc", "beauty"));
  cr_expect_null(lw_tables_factor(t, "no-such-set", "sliding"));
  cr_expect_not(lw_tables_has_factor_set(t, "no-such-set"));
}

Test(tables, the_nearest_name_is_near_or_nothing) {
  const lw_tables *t = tables_built_in();
  const char *const triples[][3] = {
      {"soils", "silty snad", "silty sand"},
      {"soils", "clay lom", "clay loam"},
      {"soils", "sandy lom", "silty sand"},
      {"formats", "navfac", "navfac-dm7"},
      {"formats", "lowwal", "lowwall"},
      {"materials", "concreet", "concrete"},
      {"loads", "gardn", "garden"},
      {"interfaces", "assumed bse", "assumed base"},
      {"places", "New Zeeland", "new-zealand"},
  };
  for (size_t i = 0; i < sizeof triples / sizeof triples[0]; i++) {
    const char *nearest = lw_tables_nearest(t, triples[i][0], triples[i][1]);
    cr_expect_str_eq((nearest ? nearest : "(none)"), triples[i][2], "%s", triples[i][1]);
  }
  cr_expect_null(lw_tables_nearest(t, "soils", "xylophone"));
  cr_expect_null(lw_tables_nearest(t, "soils", ""));
  cr_expect_null(lw_tables_nearest(t, "no such list", "sand"));
}

Test(tables, seen_has_words) {
  cr_expect_str_eq(lw_seen_word(LW_SEEN), "seen");
  cr_expect_str_eq(lw_seen_word(LW_MEMORY), "memory");
  cr_expect_str_eq(lw_seen_word(LW_PRACTICE), "practice");
}
