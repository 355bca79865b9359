/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "tables/known.h"
#include "tables/shape.h"
#include "help.h"

/* What holds in every place on file. */

/* Four courses, nothing buried, soil to the top: all heights are one figure. */
static lw_result *wall_of(double height_m, const char *more) {
  char changes[320];
  lw_result *made = malloc(sizeof *made);
  cr_assert_not_null(made);
  snprintf(changes, sizeof changes, "wall embedment=0 mm;block height=%.9g mm%s%s", height_m * 250.0,
           more[0] ? ";" : "", more);
  verdict_wall_make(verdict_tables(), changes, LW_HOLDS, made);
  return made;
}

/* All answered; people above; real ground behind, of which cut and fill are not told; loaded. */
static const char *const sites[] = {"", "site above=household",
                                    "site behind=ground;site back=ground;level difference=0.3 m",
                                    "load 1 kind=uniform;load 1 pressure=5 kPa;boundary distance=1.2 m"};
enum { SITES = sizeof sites / sizeof *sites, PLACES_MAX = LW_LIMIT_ROWS };

Test(verdict, a_wall_grown_in_height_never_gets_a_milder_answer) {
  lw_verdict *v = malloc(sizeof *v);
  cr_assert_not_null(v);
  for (int s = 0; s < SITES; s++) {
    lw_who before[PLACES_MAX] = {LW_WHO_BUILDER};
    for (int mm = 100; mm <= 3000; mm += 50) {
      lw_result *made = wall_of(mm / 1000.0, sites[s]);
      const char *place;
      for (int p = 0; (place = verdict_place_at(verdict_tables(), p)) != NULL; p++) {
        verdict_in(made, place, v);
        cr_expect_geq(v->who, before[p], "%s, %d mm, %s: %s", place, mm, sites[s], v->headline);
        before[p] = v->who;
      }
      free(made);
    }
  }
  free(v);
}

/* Dry, level, unloaded and far from everything: tall all the same. */
Test(verdict, a_tall_wall_calls_an_engineer_in_every_place) {
  lw_verdict *v = malloc(sizeof *v);
  lw_result *made = wall_of(2.4, "");
  const char *place;
  cr_assert_not_null(v);
  for (int p = 0; (place = verdict_place_at(verdict_tables(), p)) != NULL; p++) {
    verdict_in(made, place, v);
    cr_expect_eq(v->who, LW_WHO_ENGINEER, "%s: %s", place, v->headline);
  }
  free(made), free(v);
}

/* Each distance of the default that a place says nothing of itself. */
Test(verdict, pools_streets_services_and_water_are_kept_off_in_every_place) {
  static const struct {
    const char *changes, *slug, *own;
  } rows[] = {
      {"pool barrier distance=0.8 m", "clearance-pool-barrier", ""},
      {"service distance=0.9 m", "clearance-service", ""},
      {"waterbody distance=39 m", "clearance-waterbody", ""},
      {"public way distance=3.6 m", "clearance-public-way", "ontario|england-and-wales|england"},
  };
  lw_verdict *v = malloc(sizeof *v);
  cr_assert_not_null(v);
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
    lw_result *made = wall_of(0.3, rows[i].changes);
    const char *place;
    for (int p = 0; (place = verdict_place_at(verdict_tables(), p)) != NULL; p++) {
      verdict_in(made, place, v);
      if (lw_tables_listed(rows[i].own, place)) continue;
      cr_expect_geq(v->who, LW_WHO_COUNCIL, "%s, %s", place, rows[i].changes);
      cr_expect_not_null(verdict_reason(v, LW_ANSWER_WHO, rows[i].slug), "%s, %s", place, rows[i].changes);
    }
    free(made);
  }
  free(v);
}

/* With as many decimals as tell it from the height. */
static bool has_figure(const char *text, double figure_m) {
  if (figure_m <= 0.0) return strncmp(text, "At any height ", 14) == 0;
  for (int decimals = 2; decimals <= 4; decimals++) {
    char figure[32];
    snprintf(figure, sizeof figure, "the %.*f m", decimals, figure_m);
    if (strstr(text, figure)) return true;
  }
  return false;
}

static bool cites(const lw_verdict *v, const lw_limit_row *row) {
  static const char *const slugs[] = {"limit-exemption", "limit-approval", "limit-engineer", "limit-design",
                                      "limit-barrier"};
  for (int i = 0; i < v->reasons.count; i++) {
    const lw_verdict_reason *r = &v->reasons.reason[i];
    bool of_row = strcmp(r->slug, slugs[row->trigger]) == 0 && strcmp(r->source, row->from.source) == 0;
    if (of_row && !r->assumed && has_figure(r->text, row->height_m)) return true;
  }
  return false;
}

static bool held_against(const lw_verdict *v, const lw_limit_row *row) {
  for (int i = 0; i < v->limit_count; i++)
    if (v->limit[i].row == row) return true;
  return false;
}

/* A millimetre to either side of a row's figure, in its own place. */
static void at_the_figure_of(const lw_limit_row *row, lw_verdict *v) {
  const double step = 0.001;
  for (int side = -1; side <= 1; side++) {
    double height = row->height_m + side * step;
    if (height < 0.2) continue;
    char more[80];
    snprintf(more, sizeof more, "site above=household%s%.9g%s",
             row->cut_only ? ";cut depth=" : ";title=", height, row->cut_only ? " m" : "");
    lw_result *made = wall_of(height, more);
    verdict_in(made, row->place, v);
    free(made);
    bool past = side > 0 || (side == 0 && row->at_or_above);
    if (row->narrows && !(row->narrows & 1u << LW_ONLY_IF_WALKING_SURFACE)) continue;
    if (!held_against(v, row)) continue;
    cr_expect_eq(cites(v, row), past, "%s, %g m: %s", row->id, height, v->headline);
    if (past) cr_expect_geq(v->who, LW_WHO_COUNCIL, "%s, %g m", row->id, height);
  }
}

Test(verdict, a_millimetre_past_its_figure_each_row_is_cited) {
  const lw_tables *tables = verdict_tables();
  lw_verdict *v = malloc(sizeof *v);
  cr_assert_not_null(v);
  for (int i = 0; i < tables->limit_count; i++) at_the_figure_of(&tables->limit[i], v);
  free(v);
}

/* A guard, a class of earthquake or a fence is no height of the wall, and a model code or another council's
 * page no law of the place: 0.70 m in all, 0.60 m of soil, is past what the default leaves to a builder. */
Test(verdict, a_place_is_known_by_a_height_about_the_wall) {
  static const char *const places[] = {"connecticut", "washington", "gawler",
                                       "england",     "ireland",    "vincent"};
  for (size_t i = 0; i < sizeof places / sizeof *places; i++) {
    char changes[160];
    snprintf(changes, sizeof changes,
             "place=%s;wall embedment=0 mm;block height=175 mm;soil below top=100 mm", places[i]);
    lw_verdict v = verdict_of(changes, LW_HOLDS);
    cr_expect_not(v.place_known, "%s", places[i]);
    cr_expect_geq(v.who, LW_WHO_COUNCIL, "%s: %s", places[i], v.headline);
  }
  lw_verdict maitland = verdict_of("place=maitland", LW_HOLDS);
  cr_expect(maitland.place_known, "the policy of the state is law there");
}

/* ---- the words of the rows ---- */

/* What makes each word of `any_height_if` so, on a low wall. */
static const struct {
  lw_only_if word;
  const char *changes;
} words[] = {
    {LW_ONLY_IF_HERITAGE, "heritage=yes"},
    {LW_ONLY_IF_MAPPED_LAND, "mapped land=yes"},
    {LW_ONLY_IF_CHANGES_DRAINAGE, "water sent next door=yes"},
    {LW_ONLY_IF_NOT_DRAINED, "drain outlets=0;wall joints=sealed;ground drains=no"},
    {LW_ONLY_IF_SLOPING_GROUND, "ground slope=1:10"},
    {LW_ONLY_IF_OTHER_WALL_NEAR, "other wall distance=0.4 m;other wall side=above"},
    {LW_ONLY_IF_LIQUID_HELD, "water held behind=yes"},
    {LW_ONLY_IF_REACTIVE_SOIL, "reactive soil=yes"},
    {LW_ONLY_IF_BAD_FILL, "soil 1 name=organic soil"},
    {LW_ONLY_IF_SUPPORTS_STRUCTURE, "site back=ground;building distance=0.1 m"},
    {LW_ONLY_IF_CROSSES_BOUNDARY, "boundary distance=0.1 m"},
    {LW_ONLY_IF_WEAKENS_ADJOINING, "boundary distance=0.1 m"},
    {LW_ONLY_IF_DRY_LAID, ""},
    {LW_ONLY_IF_ALWAYS, ""},
};

static bool asks_at_any_height(const lw_verdict *v, const lw_limit_row *row) {
  for (int i = 0; i < v->reasons.count; i++) {
    const lw_verdict_reason *r = &v->reasons.reason[i];
    if (strcmp(r->source, row->from.source) == 0 && strncmp(r->text, "At any height ", 14) == 0)
      return r->who >= LW_WHO_COUNCIL && !r->assumed;
  }
  return false;
}

Test(verdict, each_word_of_a_row_that_asks_at_any_height_is_read) {
  const lw_tables *tables = verdict_tables();
  lw_verdict *v = malloc(sizeof *v);
  int read = 0;
  cr_assert_not_null(v);
  for (size_t w = 0; w < sizeof words / sizeof *words; w++) {
    lw_result *made = wall_of(0.25, words[w].changes);
    for (int i = 0; i < tables->limit_count; i++) {
      const lw_limit_row *row = &tables->limit[i];
      if (!(row->any_height & 1u << words[w].word) || row->narrows || row->boundary_within_m > 0.0) continue;
      verdict_in(made, row->place, v);
      cr_expect(asks_at_any_height(v, row), "%s with %s", row->id, words[w].changes);
      read++;
    }
    free(made);
  }
  cr_expect_lt(30, read, "%d", read);
  free(v);
}

static void expect_reason(const char *changes, lw_who who, const char *said) {
  lw_verdict v = verdict_of(changes, LW_HOLDS);
  bool told = false;
  for (int i = 0; i < v.reasons.count; i++) told = told || strstr(v.reasons.reason[i].text, said);
  cr_expect_eq(v.who, who, "%s: %s", changes, v.headline);
  cr_expect(told, "%s: nothing says \"%s\"", changes, said);
}

#define LOW "wall embedment=0 mm;block height=75 mm"

Test(verdict, what_a_row_says_beside_its_height_is_read) {
  expect_reason("place=mundaring;" LOW, LW_WHO_ENGINEER, "At any height council leaflet");
  expect_reason("place=norton;" LOW, LW_WHO_COUNCIL, "when it is laid dry");
  expect_reason("place=los-angeles;" LOW, LW_WHO_COUNCIL, "At any height");
  expect_reason("place=westmount;" LOW, LW_WHO_COUNCIL, "not of dry stone");
  expect_reason("place=south-africa;" LOW, LW_WHO_COUNCIL, "At any height National Building Regulations");
  expect_reason("place=macedon-ranges;boundary distance=0.29 m;building distance=60 m;" LOW
                ";reactive soil=no",
                LW_WHO_ENGINEER, "Nearer than 0.30 m to a boundary");
  expect_reason("place=tasmania;boundary distance=1.4 m;wall embedment=0 mm;block height=130 mm",
                LW_WHO_COUNCIL, "where Director's Determination");
  expect_reason("place=NSW;wall embedment=0 mm;block height=150.25 mm", LW_WHO_COUNCIL,
                "It is 0.601 m high from underside to top, past the 0.600 m");
}

/* Whatever their distance, as far as another wall is asked about at all. */
Test(verdict, tiers_that_always_add_are_one_wall) {
  static const char wall[] = "place=south-australia;wall embedment=0 mm;block height=150 mm;"
                             "other wall height=0.6 m;other wall distance=";
  char changes[200];
  for (int metres = 2; metres <= 14; metres += 4) {
    snprintf(changes, sizeof changes, "%s%d m", wall, metres);
    lw_verdict v = verdict_of(changes, LW_HOLDS);
    bool added = verdict_reason(&v, LW_ANSWER_WHO, "limit-approval") != NULL;
    cr_expect_eq(added, metres < 12, "%d m: %s", metres, v.headline);
  }
  expect_reason("place=douglas-county;wall embedment=0 mm;block height=150 mm;other wall height=0.7 m;"
                "other wall side=above;other wall distance=5 m",
                LW_WHO_ENGINEER, "together with the other wall");
}

/* Only what is cut below the existing ground counts there, and a scope asks for nobody. */
Test(verdict, the_row_that_is_cited_is_the_one_that_decides) {
  lw_verdict filled = verdict_of("place=NSW;site behind=ground;site back=ground;wall embedment=0 mm;"
                                 "block height=160 mm;cut depth=0 m;fill depth=0.64 m",
                                 LW_HOLDS);
  cr_expect_null(verdict_reason(&filled, LW_ANSWER_WHO, "limit-engineer"), "%s", filled.headline);
  expect_reason("place=maitland;wall embedment=0 mm;block height=210 mm", LW_WHO_COUNCIL, "begins to apply");
  lw_verdict old = verdict_of("place=singapore", LW_HOLDS);
  cr_expect_not(old.place_known, "a superseded text clears nothing");
}

/* Heritage is the council's, and named. */
Test(verdict, heritage_asks_the_council) {
  lw_verdict v = verdict_of("heritage=yes", LW_HOLDS);
  cr_expect_eq(v.who, LW_WHO_COUNCIL);
  cr_expect_not_null(verdict_reason(&v, LW_ANSWER_WHO, "heritage"));
}
