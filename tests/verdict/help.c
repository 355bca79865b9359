/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "help.h"

#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "load_cases/governing.h"
#include "load_cases/kept.h"
#include "load_cases/trench.h"
#include "studies/fence_find.h"
#include "studies/influence.h"
#include "verdict/verdict.h"
#include "wall/wall.h"

static const char clear_bed[] =
    "item,value\n"
    "site behind,bed\nsite back,wall\nlevel difference,0 mm\nboundary distance,60 m\n"
    "building distance,60 m\nother wall distance,60 m\nother wall height,300 mm\n"
    "other wall side,below\n"
    "public way distance,60 m\nservice distance,60 m\nwaterbody distance,600 m\n"
    "pool barrier distance,60 m\nfence height,0 m\nsite above,nobody\nvehicle access,no\n"
    "water held behind,no\nmapped land,no\nheritage,no\nstrong earthquakes,no\n"
    "shaken ground,no\nwater sent next door,no\nreactive soil,no\nworks,new\n"
    "block height,100 mm\nblock depth,300 mm\nblock length,400 mm\ncourse count,4\n"
    "wall embedment,100 mm\nblock unit weight,21 kN/m3\nground slope,0 deg\n"
    "front slope,0 deg\nsoil 1 name,clean sand\nfooting soil name,clean sand\n"
    "drain outlets,2\nstone width,300 mm\nstone filter,cloth\nwall joints,open\nground drains,yes\n"
    "people on cap,no\nsoil below top,0 mm\n"
    "load 1 kind,uniform\nload 1 pressure,2.5 kPa\n";

lw_tables *verdict_tables_copy(void) {
  lw_tables *tables = calloc(1, sizeof *tables);
  lw_error error = {0};
  cr_assert_not_null(tables);
  cr_assert_eq(lw_tables_read(NULL, tables, &error), LW_OK, "%s", error.text);
  return tables;
}

const lw_tables *verdict_tables(void) {
  static lw_tables *tables;
  if (!tables) tables = verdict_tables_copy();
  return tables;
}

lw_limit_row *verdict_limit(lw_tables *tables, const char *id) {
  for (int i = 0; i < tables->limit_count; i++) {
    if (strcmp(tables->limit[i].id, id) == 0) return &tables->limit[i];
  }
  cr_assert_fail("no limit %s", id);
  return NULL;
}

static void change(const char *changes, lw_case *c, lw_faults *faults) {
  char argument[160];
  for (int number = 1; changes[0] != '\0'; number++) {
    size_t length = strcspn(changes, ";");
    snprintf(argument, sizeof argument, "%.*s", (int)length, changes);
    cr_assert_eq(lw_sheet_override(argument, number, c, faults), LW_OK, "%s: %s", argument,
                 faults->fault[0].wanted);
    changes += length + (changes[length] == ';' ? 1 : 0);
  }
}

void verdict_case(const char *changes, lw_case *c) {
  lw_faults faults = {.count = 0};
  cr_assert_eq(lw_sheet_read(clear_bed, sizeof clear_bed - 1, c, &faults), LW_OK, "%s: %s",
               faults.fault[0].stood, faults.fault[0].wanted);
  if (strstr(changes, "load 1 ")) c->load[0] = (lw_case_load){0};
  change(changes, c, &faults);
}

void verdict_situations(lw_holds holds, lw_situations *situations) {
  double has = holds == LW_HOLDS ? 1.77 : 1.32;
  *situations = (lw_situations){.count = 1};
  situations->situation[0] = (lw_situation){
      .name = LW_SITUATION_OUTLET_BLOCKED, .kind = LW_USUAL, .decides = true, .why = LW_WHY_NO_WAY_OUT};
  lw_check check = {.kind = LW_CHECK_SLIDING,
                    .at = LW_AT_BASE,
                    .demand = {2.0, true},
                    .resistance = {2.0 * has, true},
                    .has = {has, true},
                    .needs = {1.5, true},
                    .ratio = {has / 1.5, true},
                    .unit = "kN/m",
                    .holds = holds,
                    .counts = true};
  if (holds == LW_CANNOT_SHOW) {
    check.has.known = check.ratio.known = false;
    check.reason = LW_REASON_NO_WEDGE;
  }
  lw_situation_keep(&situations->situation[0], &check);
  lw_situations_weigh(situations);
}

void verdict_wall_build(const lw_tables *tables, lw_holds holds, lw_result *made) {
  made->tables = tables;
  made->units = LW_UNITS_METRIC;
  made->looks = (lw_looks){0};
  lw_wall_build(&made->given, tables, &made->wall);
  lw_fence_weigh(&made->wall, tables, &made->fence);
  lw_trench_find(&made->wall, tables, &made->trench);
  lw_influence_find(&made->wall, tables, &made->influence);
  verdict_situations(holds, &made->situations);
}

void verdict_wall_make(const lw_tables *tables, const char *changes, lw_holds holds, lw_result *made) {
  lw_faults faults = {.count = 0};
  verdict_case(changes, &made->given);
  cr_assert_eq(lw_case_complete(tables, &made->given, &faults), LW_OK, "%s: %s", changes,
               faults.fault[0].wanted);
  verdict_wall_build(tables, holds, made);
}

lw_verdict verdict_with(const lw_tables *tables, const char *changes, lw_holds holds) {
  static lw_result made;
  verdict_wall_make(tables, changes, holds, &made);
  lw_verdict_reach(&made, LW_DETAIL_EVERYTHING);
  return made.verdict;
}

void verdict_in(lw_result *made, const char *place, lw_verdict *verdict) {
  made->given.about.place = (lw_words){.origin = place ? LW_GIVEN : LW_ABSENT};
  if (place) snprintf(made->given.about.place.text, sizeof made->given.about.place.text, "%s", place);
  lw_verdict_reach(made, LW_DETAIL_EVERYTHING);
  *verdict = made->verdict;
}

const char *verdict_place_at(const lw_tables *tables, int i) {
  for (int row = 0; row < tables->limit_count; row++)
    if (tables->limit_place[row] == row && i-- == 0) return tables->limit[row].place;
  return NULL;
}

lw_verdict verdict_of(const char *changes, lw_holds holds) {
  return verdict_with(verdict_tables(), changes, holds);
}

const lw_verdict_reason *verdict_reason(const lw_verdict *verdict, lw_answer answer, const char *slug) {
  for (int i = 0; i < verdict->reasons.count; i++) {
    const lw_verdict_reason *r = &verdict->reasons.reason[i];
    if (r->answer == answer && strcmp(r->slug, slug) == 0) return r;
  }
  return NULL;
}

lw_result *verdict_run(const char *changes) {
  lw_result *result = calloc(1, sizeof *result);
  lw_error error = {0};
  lw_case c;
  cr_assert_not_null(result);
  verdict_case(changes, &c);
  cr_assert_eq(lw_run(&c, verdict_tables(), LW_DETAIL_EVERYTHING, result, &error), LW_OK, "%s: %s", changes,
               error.text);
  return result;
}
