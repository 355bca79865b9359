/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "help.h"

/* What holds in every place on file. */

/* Four courses, nothing buried, soil to the top: all heights are one figure. */
static verdict_wall *wall_of(double height_m, const char *more) {
  char changes[320];
  verdict_wall *made = malloc(sizeof *made);
  cr_assert_not_null(made);
  snprintf(changes, sizeof changes, "wall embedment=0 mm;block height=%.9g mm%s%s", height_m * 250.0,
           more[0] ? ";" : "", more);
  verdict_wall_make(verdict_tables(), changes, made);
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
      verdict_wall *made = wall_of(mm / 1000.0, sites[s]);
      const char *place;
      for (int p = 0; (place = verdict_place_at(verdict_tables(), p)) != NULL; p++) {
        verdict_in(verdict_tables(), made, place, v);
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
  verdict_wall *made = wall_of(2.4, "");
  const char *place;
  cr_assert_not_null(v);
  for (int p = 0; (place = verdict_place_at(verdict_tables(), p)) != NULL; p++) {
    verdict_in(verdict_tables(), made, place, v);
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
    verdict_wall *made = wall_of(0.3, rows[i].changes);
    const char *place;
    for (int p = 0; (place = verdict_place_at(verdict_tables(), p)) != NULL; p++) {
      verdict_in(verdict_tables(), made, place, v);
      if (lw_tables_listed(rows[i].own, place)) continue;
      cr_expect_geq(v->who, LW_WHO_COUNCIL, "%s, %s", place, rows[i].changes);
      cr_expect_not_null(verdict_reason(v, LW_ANSWER_WHO, rows[i].slug), "%s, %s", place, rows[i].changes);
    }
    free(made);
  }
  free(v);
}

static bool cites(const lw_verdict *v, const lw_limit_row *row) {
  static const char *const slugs[] = {"limit-exemption", "limit-approval", "limit-engineer", "limit-design",
                                      "limit-barrier"};
  char figure[32];
  snprintf(figure, sizeof figure, row->height_m > 0.0 ? "the %.2f m" : "any height", row->height_m);
  for (int i = 0; i < v->reason_count; i++) {
    const lw_verdict_reason *r = &v->reason[i];
    bool of_row = strcmp(r->slug, slugs[row->trigger]) == 0 && strcmp(r->source, row->from.source) == 0;
    if (of_row && !r->assumed && strstr(r->text, figure)) return true;
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
    verdict_wall *made = wall_of(height, "site above=household");
    verdict_in(verdict_tables(), made, row->place, v);
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
