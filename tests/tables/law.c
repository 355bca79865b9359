/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Places, limits, conditions, distances and cautions of the built-in tables. */
#include "tables/find.h"
#include "tables/known.h"
#include "tables/shape.h"
#include "help.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <string.h>

static const lw_limit_row *limit(const char *id) {
  const lw_tables *t = tables_built_in();
  for (int i = 0; i < t->limit_count; i++)
    if (strcmp(t->limit[i].id, id) == 0) return &t->limit[i];
  cr_assert(false, "no limit %s", id);
  return NULL;
}

static bool applies(const lw_limit_row *row, const char *place) {
  const lw_tables *t = tables_built_in();
  lw_places places = {0};
  lw_tables_add_places(t, lw_tables_place_row(t, place), &places);
  return places.at[row->place_row];
}

static int rows_that_apply(const char *place) {
  const lw_tables *t = tables_built_in();
  int rows = 0;
  for (int i = 0; i < t->limit_count; i++) rows += applies(&t->limit[i], place);
  return rows;
}

Test(tables, a_councils_wall_meets_the_rows_of_state_and_country) {
  cr_expect(applies(limit("AU-NSW-05"), "maitland"));
  cr_expect(applies(limit("AU-NSW-01"), "maitland"));
  cr_expect(applies(limit("AU-NCC-03"), "maitland"));
  cr_expect(applies(limit("AU-NSW-01"), "NSW"));
  cr_expect_not(applies(limit("AU-NSW-05"), "new-south-wales"));
  cr_expect_not(applies(limit("AU-NSW-01"), "queensland"));
  cr_expect_not(applies(limit("DEFAULT-01"), "maitland"));
  cr_expect_not(applies(limit("AU-NSW-01"), "nowhere"));
  cr_expect(eq(int, rows_that_apply("default"), 6));
}

Test(tables, places_are_found_by_slug_and_other_names) {
  const lw_tables *t = tables_built_in();
  cr_expect(lw_tables_has_place(t, "New South Wales"));
  cr_expect_str_eq(lw_tables_place(t, "nsw"), "new-south-wales");
  cr_expect_str_eq(lw_tables_place(t, "Greater Bendigo"), "bendigo");
  cr_expect_null(lw_tables_place(t, "atlantis"));
  cr_expect_str_eq(lw_tables_nearest(t, "places", "quensland"), "queensland");
}

/* A country around a place must itself have rows, or its name is a slip. */
Test(tables, every_place_reaches_a_country_that_has_rows) {
  const lw_tables *t = tables_built_in();
  for (int i = 0; i < t->limit_count; i++) {
    const char *last = strrchr(t->limit[i].within, '|');
    const char *country = last ? last + 1 : t->limit[i].within;
    if (strcmp(country, "united-kingdom") == 0 || strcmp(country, "canada") == 0) continue;
    cr_expect(country[0] == '\0' || lw_tables_has_place(t, country), "%s is within %s", t->limit[i].id,
              country);
  }
}

Test(tables, comparisons_say_whether_the_figure_itself_counts) {
  cr_expect_not(limit("AU-NSW-01")->at_or_above);
  cr_expect(limit("AU-VIC-01")->at_or_above);
  cr_expect_not(limit("AU-VIC-03")->at_or_above);
  cr_expect(limit("AU-VIC-02")->at_or_above);
}

/* Four feet and the like are exact conversions. */
Test(tables, heights_in_feet_are_exact) {
  cr_expect(epsilon_eq(dbl, limit("US-IBC-01")->height_m, 4 * 0.3048, 1e-12));
  cr_expect(epsilon_eq(dbl, limit("US-GUARD-01")->height_m, 30 * 0.0254, 1e-12));
  cr_expect(epsilon_eq(dbl, limit("GB-ENG-01")->height_m, 4.5 * 0.3048, 1e-12));
  cr_expect(epsilon_eq(dbl, limit("GB-ENG-01")->street_within_m, 4 * 0.9144, 1e-12));
}

Test(tables, parsed_conditions_of_two_places) {
  const lw_limit_row *nsw = limit("AU-NSW-01");
  cr_expect(epsilon_eq(dbl, nsw->height_m, 0.6, 1e-12));
  cr_expect(eq(int, (int)nsw->measured, LW_HEIGHT_TOTAL));
  cr_expect(epsilon_eq(dbl, nsw->min_boundary_m, 1.0, 1e-12));
  cr_expect(epsilon_eq(dbl, nsw->min_other_wall_m, 2.0, 1e-12));
  cr_expect(epsilon_eq(dbl, nsw->min_waterbody_m, 40.0, 1e-12));
  cr_expect(isnan(nsw->min_building_m));
  const lw_limit_row *douglas = limit("US-CO-DOU-01");
  cr_expect(eq(int, (int)douglas->trigger, LW_ENGINEER_ABOVE));
  cr_expect(douglas->no_surcharge);
  cr_expect(epsilon_eq(dbl, douglas->surcharge_zone_per_height, 2.0, 1e-12));
  cr_expect(epsilon_eq(dbl, douglas->tier_spacing_per_height, 2.0, 1e-12));
  cr_expect(limit("AU-SA-01")->tiers_add);
  cr_expect(limit("AU-SA-02")->fence_counts);
  cr_expect(limit("AU-NSW-02")->not_a_wall_height);
}

Test(tables, the_default_place_is_the_conservative_one) {
  const lw_limit_row *first = limit("DEFAULT-01");
  cr_expect(eq(int, (int)first->trigger, LW_EXEMPT_BELOW));
  cr_expect(epsilon_eq(dbl, first->height_m, 0.5, 1e-12));
  cr_expect(epsilon_eq(dbl, first->min_other_wall_per_height, 2.0, 1e-12));
  cr_expect(epsilon_eq(dbl, limit("DEFAULT-03")->height_m, 0.6, 1e-12));
  cr_expect(eq(int, (int)limit("DEFAULT-03")->trigger, LW_ENGINEER_ABOVE));
  cr_expect(epsilon_eq(dbl, limit("DEFAULT-04")->height_m, 1.0, 1e-12));
}

Test(tables, conditions_name_who_must_look) {
  const lw_tables *t = tables_built_in();
  static const char *const slugs[] = {
      "supports-building",  "vehicle-load", "water-held",    "other-wall-near", "sloping-ground",
      "boundary",           "public-way",   "mapped-land",   "reactive-soil",   "fence-load",
      "barrier-needed",     "no-outlet",    "bad-fill",      "earthquake",      "wall-that-moved",
      "digs-below-footing", "heritage",     "vibrating-load"};
  for (size_t i = 0; i < sizeof slugs / sizeof slugs[0]; i++) {
    const lw_condition_row *row = lw_tables_condition(t, slugs[i]);
    cr_assert_not_null(row, "%s", slugs[i]);
    bool council = strcmp(slugs[i], "heritage") == 0;
    cr_expect_str_eq(row->who, council ? "council" : "engineer", "%s", slugs[i]);
    cr_expect(row->basis == 'L' || row->basis == 'J', "%s", slugs[i]);
  }
  cr_expect(eq(chr, lw_tables_condition(t, "bad-fill")->basis, 'J'));
  cr_expect_null(lw_tables_condition(t, "bad-weather"));
}

Test(tables, clearances_and_thresholds_have_their_figures) {
  const lw_tables *t = tables_built_in();
  const struct {
    const char *slug;
    double at_least_m, per_height;
  } rows[] = {{"boundary", 1.0, 1.0},     {"building", 1.5, 1.0},    {"other-wall", 2.0, 2.0},
              {"load", 1.5, 2.0},         {"service", 1.0, NAN},     {"waterbody", 40, NAN},
              {"public-way", 3.66, NAN},  {"fall-flag", 0.6, NAN},   {"pool-barrier-nz", 1.2, NAN},
              {"fall-barrier", 1.0, NAN}, {"pool-barrier", 0.9, NAN}};
  for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
    const lw_clearance_row *row = lw_tables_clearance(t, rows[i].slug);
    cr_assert_not_null(row, "%s", rows[i].slug);
    cr_expect(epsilon_eq(dbl, row->at_least_m, rows[i].at_least_m, 1e-12), "%s", rows[i].slug);
    if (isnan(rows[i].per_height))
      cr_expect(isnan(row->per_height), "%s", rows[i].slug);
    else
      cr_expect(epsilon_eq(dbl, row->per_height, rows[i].per_height, 1e-12), "%s", rows[i].slug);
  }
  cr_expect(epsilon_eq(dbl, lw_tables_threshold(t, "level-ground")->value, 1.0 / 20, 1e-12));
  cr_expect(epsilon_eq(dbl, lw_tables_threshold(t, "lift-mass")->value, 20, 1e-12));
  cr_expect_null(lw_tables_threshold(t, "patience"));
}

Test(tables, every_hazard_has_a_bit_for_each_cue) {
  static const char *const slugs[] = {
#define SLUG(name, slug) slug,
      LW_CUES(SLUG)
#undef SLUG
  };
  const lw_tables *t = tables_built_in();
  int always = 0;
  cr_assert(le(int, LW_CUE_COUNT, 32));
  for (int i = 0; i < t->hazard_count; i++) {
    for (int cue = 0; cue < LW_CUE_COUNT; cue++)
      cr_expect_eq(t->hazard[i].cues >> cue & 1u, lw_tables_listed(t->hazard[i].when, slugs[cue]), "%s: %s",
                   t->hazard[i].id, slugs[cue]);
    cr_expect_neq(t->hazard[i].cues, 0u);
    always += (t->hazard[i].cues >> LW_CUE_ALWAYS & 1u) != 0;
  }
  cr_expect(lt(int, 0, always));
  cr_expect_not(lw_tables_listed("tall|pool", "poo"));
  cr_expect_not(lw_tables_listed("tall|pool", ""));
}
