/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <stdio.h>
#include <string.h>

#include "../sheet/support.h"

static const report_wall walls[] = {
    {"bed", "bed", {NULL}},
    {"ground", "ground", {NULL}},
    {"section", "section", {NULL}},
    {"no block depth", NULL, {"wall height=0.8 m"}},
    {"refused clay", "ground", {"soil 1 name=high-plasticity clay", "stone width=0 m"}},
    {"water behind", "ground", {"water depth=300 mm", "front water depth=500 mm", "wall joints=sealed"}},
    {"pad", "ground", {"pad width=900 mm", "pad thickness=150 mm"}},
    {"dry cap on many courses",
     NULL,
     {"course count=12", "block height=150 mm", "block depth=900 mm", "cap height=60 mm", "cap depth=400 mm",
      "cap overhang=40 mm", "mark=C12", "setback=10 mm", "load 1 kind=strip", "load 1 pressure=8 kPa",
      "load 1 near edge=0.4 m", "load 1 far edge=1.2 m"}},
    {"blocks that taper", "ground", {"block length=400 mm", "block tail length=240 mm"}},
    {"bonded cap",
     "ground",
     {"cap height=60 mm", "cap depth=500 mm", "cap fixing=bonded", "wall height=660 mm"}},
    {"would tip", NULL, {"wall height=1.5 m", "block height=150 mm", "block depth=200 mm"}},
    {"nothing pushes",
     NULL,
     {"site behind=bed", "wall height=400 mm", "wall embedment=200 mm", "block depth=300 mm",
      "soil below top=600 mm", "load 1 kind=none", "people on cap=no", "drain outlets=2"}},
    {"at rest", "section", {"method pressure=at rest"}},
    {"coulomb and theory",
     "section",
     {"method pressure=coulomb", "wall friction=18 deg", "method bearing=vesic"}},
    {"another format", "ground", {"method format=navfac-dm7", "method passive=0.5"}},
    {"partial factors", "ground", {"method format=en1997-da1", "method passive=0.5"}},
    {"layers",
     "section",
     {"soil 1 bottom=0.5 m", "soil 2 friction angle=24 deg", "soil 2 cohesion=3 kPa",
      "soil 2 unit weight=19 kN/m3", "ground slope=10 deg", "ground slope run=0.6 m"}},
    {"nothing governs",
     NULL,
     {"site behind=bed", "wall height=400 mm", "wall embedment=200 mm", "block depth=300 mm",
      "soil below top=600 mm", "load 1 kind=none", "people on cap=no", "drain outlets=2",
      "method format=irc"}},
    {"loads apart",
     NULL,
     {"wall height=0.8 m", "block depth=0.6 m", "load 1 kind=line", "load 1 force=2 kN/m",
      "load 1 distance=0.5 m", "load 2 kind=point", "load 2 force=3 kN", "load 2 distance=0.8 m",
      "load 3 kind=cap", "load 3 force=0.4 kN/m", "method base cohesion=0.5", "method base friction=0.67",
      "method n gamma value=19.7", "method coefficient=0.4"}},
    {"plant that comes near",
     "bed",
     {"plant=small plate compactor", "plant distance=0.2 m", "bed width=0.2 m", "wall friction=15 deg"}},
    {"a joint that nothing helps", "bed", {"joint friction=0.01", "soil below top=0.2 m"}},
    {"an earthquake",
     "section",
     {"method pressure=coulomb", "wall friction=9 deg", "seismic horizontal=0.07", "seismic vertical=0.03",
      "front water depth=500 mm", "method passive=0.3", "method passive by=annex c"}},
    {"a storm and a trench", "bed", {"storm rain=50 mm", "trench depth=700 mm", "trench distance=900 mm"}},
    {"loads by name",
     NULL,
     {"wall height=0.8 m", "block depth=0.6 m", "load 1 name=pallet", "load 1 near edge=0.3 m",
      "load 2 kind=strip", "load 2 pressure=40 kPa", "load 2 near edge=0.9 m", "load 2 far edge=1.5 m",
      "load 2 below ground=0.4 m", "load 3 name=seat", "load 4 name=tank", "load 4 height=0.9 m",
      "load 4 far edge=2 m"}},
    {"a tier", "ground", {"other wall distance=0.9 m", "other wall height=0.5 m", "other wall side=above"}},
    {"a bed on a slope", "bed", {"front slope=1:6", "ground slope=1:20"}},
    {"ordinary slices",
     "ground",
     {"method slip=ordinary", "other wall side=below", "other wall distance=0.2 m"}},
    {"hollow blocks by a factor on every wedge",
     "ground",
     {"face shell thickness=30 mm", "method format=em-1110-2-2502", "method slip=not",
      "key strength=0.5 kN/m", "joint friction=0.05"}},
    {"an earthquake on clay",
     "ground",
     {"method format=en1997-da1", "footing soil friction angle=0 deg", "footing soil cohesion=40 kPa",
      "seismic horizontal=0.1", "seismic vertical=0.05", "water depth=400 mm", "method slip=not"}},
    {"fence at the back",
     "bed",
     {"site back=fence", "fence height=1.8 m", "fence place=behind", "fence distance=0.7 m",
      "post section=100 mm"}},
    {"planted only",
     NULL,
     {"wall height=0.6 m", "wall embedment=0.2 m", "block depth=0.31 m", "site behind=bed", "bed use=planted",
      "vehicle access=no"}},
    {"fence on the wall",
     "bed",
     {"site back=fence", "fence height=1.2 m", "fence place=on the wall", "ground slope=5 deg"}},
    {"a known place", "ground", {"place=new-south-wales", "vehicle access=yes"}},
};

enum { WALLS = sizeof walls / sizeof *walls };

const report_wall *report_test_wall(size_t index) {
  return index < WALLS ? &walls[index] : NULL;
}

static void no_faults(const report_wall *wall, const lw_faults *faults) {
  lw_text text = {0};
  lw_faults_print(faults, &text);
  cr_assert(faults->count == 0, "%s: %s", wall->name, text.data);
  lw_text_free(&text);
}

static lw_case case_of(const report_wall *wall) {
  lw_case c = {0};
  lw_faults faults = {0};
  lw_text sheet = {0};
  if (wall->starter != NULL) {
    cr_assert(eq(int, lw_sheet_start(wall->starter, &sheet), LW_OK));
    lw_sheet_read(sheet.data, sheet.length, &c, &faults);
    lw_text_free(&sheet);
  }
  for (int i = 0; wall->change[i] != NULL; i++) lw_sheet_override(wall->change[i], i + 1, &c, &faults);
  lw_case_complete(sheet_test_tables(), &c, &faults);
  no_faults(wall, &faults);
  return c;
}

const lw_result *report_test_result(const report_wall *wall) {
  static lw_result result, scratch;
  lw_case c = case_of(wall);
  lw_error error = {0};
  cr_assert(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, &result, &error) == LW_OK, "%s: %s",
            wall->name, error.text);
  lw_remedies_find(&result, &scratch);
  lw_water_find(&result, &scratch);
  lw_factor_sets_compare(&result.wall, sheet_test_tables(), &result.factor_sets, &scratch.situations);
  return &result;
}

const lw_result *report_test_named(const char *name) {
  for (size_t i = 0; i < WALLS; i++) {
    if (strcmp(walls[i].name, name) == 0) return report_test_result(&walls[i]);
  }
  cr_assert(false, "no wall is called %s", name);
  return NULL;
}

json_t *report_test_json(const lw_result *result) {
  lw_text text = {0};
  json_error_t error;
  cr_assert(eq(int, lw_report_json(result, 2, &text), LW_OK));
  json_t *root = json_loadb(text.data, text.length, JSON_REJECT_DUPLICATES, &error);
  cr_assert(root != NULL, "line %d: %s", error.line, error.text);
  lw_text_free(&text);
  return root;
}

static void walk_object(const json_t *value, const char *path, report_visit visit, void *context) {
  for (void *at = json_object_iter((json_t *)(size_t)value); at != NULL;
       at = json_object_iter_next((json_t *)(size_t)value, at)) {
    char below[256];
    snprintf(below, sizeof below, "%s%s%s", path, path[0] != '\0' ? "." : "", json_object_iter_key(at));
    report_test_walk(json_object_iter_value(at), value, below, visit, context);
  }
}

void report_test_walk(const json_t *value, const json_t *parent, const char *path, report_visit visit,
                      void *context) {
  visit(context, parent, path, value);
  if (json_is_object(value)) walk_object(value, path, visit, context);
  if (!json_is_array(value)) return;
  char below[256];
  snprintf(below, sizeof below, "%s[]", path);
  for (size_t i = 0; i < json_array_size(value); i++) {
    report_test_walk(json_array_get(value, i), value, below, visit, context);
  }
}
