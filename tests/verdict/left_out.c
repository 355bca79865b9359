/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "help.h"

/* Every answer that a condition or a clearance asks for, left out by itself, in every place on file. */

/* A wall on which the item matters, and what it is where it is told; NULL: as that bed has it. */
typedef struct left_out {
  const char *wall, *item, *told;
} left_out;

#define GROUND "site behind=ground;site back=ground;level difference=0.3 m;fill depth=0 m"
#define FENCE "fence height=1.8 m;fence place=behind"

static const left_out items[] = {
    {"", "boundary distance", NULL},
    {"", "building distance", NULL},
    {"", "other wall distance", NULL},
    {"", "public way distance", NULL},
    {"", "service distance", NULL},
    {"", "waterbody distance", NULL},
    {"", "pool barrier distance", NULL},
    {"", "fence height", NULL},
    {"", "site above", NULL},
    {"", "site behind", NULL},
    {"", "site back", NULL},
    {"", "vehicle access", NULL},
    {"", "water held behind", NULL},
    {"", "mapped land", NULL},
    {"footing soil name=stiff clay", "reactive soil", NULL},
    {"", "works", NULL},
    {"", "heritage", NULL},
    {"", "strong earthquakes", NULL},
    {"", "shaken ground", NULL},
    {"", "water sent next door", NULL},
    {"", "ground slope", NULL},
    {"", "front slope", NULL},
    {"", "soil 1 name", NULL},
    {"", "footing soil name", NULL},
    {"other wall distance=5 m;other wall side=below", "other wall height", "0.3 m"},
    {"other wall distance=5 m;other wall height=3 m", "other wall side", "above"},
    {FENCE, "fence distance", "30 m"},
    {"wall joints=sealed;ground drains=no", "drain outlets", NULL},
    {"drain outlets=0;ground drains=no", "wall joints", NULL},
    {"drain outlets=0;wall joints=sealed", "ground drains", NULL},
    {GROUND, "ground slope", NULL},
    {GROUND ";cut depth=0.3 m", "boundary distance", NULL},
};

enum { ITEMS = sizeof items / sizeof *items };

/* Heights from the underside of four courses to the top, a quarter of them buried. */
static const double heights_m[] = {0.32, 0.4, 0.48, 0.62, 0.9, 1.1, 1.3, 1.6, 2.4};
enum { HEIGHTS = sizeof heights_m / sizeof *heights_m };

static void make(const left_out *row, double height_m, bool told, lw_result *made) {
  char changes[320];
  int length = snprintf(changes, sizeof changes, "block height=%.6g mm;wall embedment=%.6g mm%s%s",
                        250.0 * height_m, 250.0 * height_m, row->wall[0] ? ";" : "", row->wall);
  const char *value = told ? row->told : "unknown";
  if (value) snprintf(changes + length, sizeof changes - (size_t)length, ";%s=%s", row->item, value);
  verdict_wall_make(verdict_tables(), changes, LW_HOLDS, made);
}

static void expect_question(const lw_verdict *v, const left_out *row, double height_m, const char *place) {
  bool named = false;
  for (int i = 0; i < v->reasons.count; i++)
    named =
        named ||
        (v->reasons.reason[i].left_out && strcmp(v->reasons.reason[i].left_out, row->item) == 0 &&
         strstr(v->reasons.reason[i].text, row->item) != NULL && v->reasons.reason[i].who == LW_WHO_COUNCIL);
  cr_expect(named, "%s, %g m: %s is not asked for", place, height_m, row->item);
}

/* Never to the builder, never to the engineer for want of it alone; and it is named. */
Test(verdict, an_answer_left_out_asks_the_council_in_every_place) {
  lw_result *told = malloc(sizeof *told), *open = malloc(sizeof *open);
  lw_verdict *full = malloc(sizeof *full), *v = malloc(sizeof *v);
  int compared = 0, left_to_builder = 0;
  cr_assert(told && open && full && v);
  for (int i = 0; i < ITEMS * HEIGHTS; i++) {
    const left_out *row = &items[i / HEIGHTS];
    double height = heights_m[i % HEIGHTS];
    make(row, height, true, told);
    make(row, height, false, open);
    const char *place;
    for (int p = 0; (place = verdict_place_at(verdict_tables(), p)) != NULL; p++, compared++) {
      verdict_in(told, place, full);
      verdict_in(open, place, v);
      left_to_builder += full->exit_status == 0;
      cr_expect_neq(v->exit_status, 0, "%s, %g m without %s: %s", place, height, row->item, v->headline);
      cr_expect(v->who < LW_WHO_ENGINEER || full->who == LW_WHO_ENGINEER, "%s, %g m without %s: %s", place,
                height, row->item, v->headline);
      if (full->who < LW_WHO_ENGINEER) expect_question(v, row, height, place);
    }
  }
  cr_expect_lt(1000, compared);
  cr_expect_lt(100, left_to_builder, "%d walls were left to the builder, all answered", left_to_builder);
  free(told), free(open), free(full), free(v);
}

/* Who says that plants or people are all that is ever behind has told of the load: nobody is asked of it
 * again, in any place at any height. A vehicle, or nothing told of the use, still asks. */
Test(verdict, a_use_on_foot_tells_of_the_load_in_every_place) {
  static const char *const USES[] = {"planted", "walked", "vehicle", "unknown"};
  lw_result *told = malloc(sizeof *told), *used = malloc(sizeof *used);
  lw_verdict *full = malloc(sizeof *full), *v = malloc(sizeof *v);
  cr_assert(told && used && full && v);
  for (int i = 0; i < HEIGHTS * 4; i++) {
    char wall[160];
    bool on_foot = i % 4 < 2;
    left_out row = {wall, "load 1 pressure", NULL};
    snprintf(wall, sizeof wall, "bed use=%s", USES[i % 4]);
    make(&row, heights_m[i / 4], true, told);
    snprintf(wall, sizeof wall, "bed use=%s;load 1 kind=unknown", USES[i % 4]);
    make(&row, heights_m[i / 4], false, used);
    const char *place;
    for (int p = 0; (place = verdict_place_at(verdict_tables(), p)) != NULL; p++) {
      verdict_in(told, place, full);
      verdict_in(used, place, v);
      if (on_foot)
        cr_expect_eq(v->who, full->who, "%s, %g m: %s", place, heights_m[i / 4], v->headline);
      else
        cr_expect_neq(v->exit_status, 0, "%s, %g m: %s", place, heights_m[i / 4], v->headline);
    }
  }
  free(told), free(used), free(full), free(v);
}

/* Nothing answered at all, whatever the height: the council, with the questions. */
Test(verdict, with_nothing_answered_the_council_is_asked_in_every_place) {
  lw_verdict *v = malloc(sizeof *v);
  cr_assert_not_null(v);
  for (int h = 0; h < HEIGHTS; h++) {
    lw_result *made = calloc(1, sizeof *made);
    lw_faults faults = {.count = 0};
    char sheet[120];
    cr_assert_not_null(made);
    int length = snprintf(sheet, sizeof sheet, "item,value\nblock depth,900 mm\nwall height,%g m\n",
                          heights_m[h] * 0.5);
    cr_assert_eq(lw_sheet_read(sheet, (size_t)length, &made->given, &faults), LW_OK);
    cr_assert_eq(lw_case_complete(verdict_tables(), &made->given, &faults), LW_OK);
    verdict_wall_build(verdict_tables(), LW_HOLDS, made);
    const char *place;
    for (int p = 0; (place = verdict_place_at(verdict_tables(), p)) != NULL; p++) {
      verdict_in(made, place, v);
      /* Its leaflet has an engineer certify a wall of any height. */
      bool low = heights_m[h] * 0.5 < 0.5 && strcmp(place, "mundaring") != 0;
      cr_expect(v->who == LW_WHO_COUNCIL || (!low && v->who == LW_WHO_ENGINEER), "%s: %s", place,
                v->headline);
    }
    free(made);
  }
  free(v);
}
