/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "rests_on.h"

#include "echo.h"
#include "loads.h"
#include "said.h"
#include "report/back_rows.h"
#include "report/difference.h"
#include "report/faces.h"
#include "report/fluid.h"

/* The one list of what a result rests on. */

typedef struct telling {
  const lw_result *result;
  lw_rest_each each;
  void *context;
} telling;

static void tell(const telling *t, const char *source, lw_seen seen) {
  t->each(t->context, &(lw_rest){.source = source, .seen = seen, .marked = true, .decides = true});
}

static void tell_row(const telling *t, const lw_origin_note *from) {
  tell(t, from->source, from->seen);
}

static void tell_unmarked(const telling *t, const char *source) {
  t->each(t->context, &(lw_rest){.source = source, .decides = true});
}

static void method(const telling *t) {
  const lw_result *result = t->result;
  const lw_bearing_routine *bearing = lw_bearing_routine_of(result->wall.method.bearing);
  const lw_words *book = &result->given.method.conventions;
  const lw_conventions_row *row =
      book->origin == LW_GIVEN ? lw_tables_conventions(result->tables, book->text) : NULL;
  tell_unmarked(t, lw_thrust_source(result));
  tell(t, lw_loads_source(result), LW_MEMORY);
  if (bearing) tell_unmarked(t, bearing->source);
  if (row) tell_row(t, &row->from);
}

static void checks(const telling *t) {
  for (int i = 0; i < t->result->situations.count; i++) {
    const lw_situation *s = &t->result->situations.situation[i];
    for (int k = 0; k < s->check_count; k++) {
      lw_check check = lw_situation_check(s, k);
      lw_rest rest = {.seen = lw_check_seen(&check, s->kind), .marked = true, .decides = s->decides};
      if (!check.by) continue;
      rest.source = check.by->from.source;
      t->each(t->context, &rest);
    }
  }
}

static void soil(const telling *t, const lw_case_soil *of) {
  const lw_soil_row *row =
      of->name.origin == LW_GIVEN ? lw_tables_soil(t->result->tables, of->name.text) : NULL;
  if (!row) return;
  if (of->friction.origin == LW_TABLE) tell_row(t, &row->from);
  if (of->unit_weight.origin == LW_TABLE) tell_row(t, &row->weight_from);
}

static void back(const telling *t) {
  const lw_interface_row *rows[] = {lw_back_row(t->result), lw_back_membrane(t->result)};
  for (int i = 0; i < 2; i++)
    if (rows[i]) tell_row(t, &rows[i]->from);
  lw_fluid fluid = lw_fluid_of(t->result);
  if (fluid.row) tell_row(t, &fluid.row->fluid_from);
}

static void faces(const telling *t) {
  const lw_origin_note *from[LW_FACES_SOURCES];
  int count = lw_faces_sources(t->result, from);
  for (int i = 0; i < count; i++) tell_row(t, from[i]);
}

static void value(void *context, const lw_echo *echo) {
  tell_unmarked(context, echo->source);
}

static void construction(const telling *t) {
  const lw_plant_row *row = t->result->construction.plant.row;
  if (!t->result->construction.studied) return;
  tell(t, "[INGOLD-1979 29(3)]", LW_MEMORY);
  if (row) tell_row(t, &row->from);
}

static void verdict(const telling *t) {
  const lw_verdict *v = &t->result->verdict;
  for (int i = 0; i < v->limit_count; i++) tell_row(t, &v->limit[i].row->from);
  for (int i = 0; i < v->reasons.count; i++) tell_unmarked(t, v->reasons.reason[i].source);
  for (int i = 0; i < v->reasons.caution_count; i++) tell_row(t, &v->reasons.caution[i]->from);
}

void lw_rests_each(const lw_result *result, lw_rest_each each, void *context) {
  telling t = {result, each, context};
  method(&t);
  checks(&t);
  for (int i = 0; i < LW_SOIL_MAX; i++) soil(&t, &result->given.ground.soil[i]);
  soil(&t, &result->given.ground.footing);
  back(&t);
  faces(&t);
  lw_echo_each(result, value, &t);
  construction(&t);
  verdict(&t);
}
