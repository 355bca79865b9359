/* SPDX-License-Identifier: GPL-3.0-or-later */
/* What laws, standards and this project ask: sets of factors, limits, conditions, distances, cautions. */
#include "tables/shape.h"
#include "cells.h"

#include <criterion/criterion.h>

#include <math.h>
#include <stdio.h>
#include <string.h>

#define LOW "course count=3;block height=200 mm;block depth=300 mm;block length=300 mm;wall embedment=100 mm;"
#define GROUND LOW "site behind=ground;"

#define DRY \
  "soil 1 name=clean sand;drain outlets=2;stone width=300 mm;ground drains=yes;load 1 kind=none;people on " \
  "cap=no;"

/* With ground counted in front, in a quake and a dig; people who lean; clay that does not drain; a footing by
 * theory. A slip is searched only where it is asked for. */
static void look_format(const lw_tables *tables, int row, lw_text *out) {
  static const char *const walls[] = {
      GROUND "method passive=0.5;method bearing=vesic;seismic horizontal=0.1;"
             "footing soil friction angle=30 deg;soil 1 cohesion=1 kPa;soil 1 friction angle=30 deg;"
             "trench depth=0.1 m;water depth=500 mm;front water depth=500 mm",
      GROUND "method pressure=rankine;soil below top=0.7 m;course count=7;seismic horizontal=0.05;fence "
             "height=1.2 m",
      GROUND DRY
      "block depth=700 mm;method pressure=at rest;footing soil friction angle=0 deg;footing soil cohesion=20 "
      "kPa;"
      "base adhesion=20 kPa;method passive=0.5;method bearing=en1997;pad thickness=100 mm;pad width=900 mm",
      GROUND DRY "block depth=700 mm;method pressure=at rest;seismic horizontal=0.02",
      GROUND DRY "method bearing=en1997;block depth=600 mm;footing soil friction angle=40 deg;footing soil "
                 "cohesion=10 kPa;"
                 "seismic horizontal=0.05;pad thickness=100 mm;pad width=900 mm;seismic horizontal=0.02",
      "wall kind=section;wall height=800 mm;wall embedment=200 mm;base width=900 mm;heel length=400 mm;"
      "slab thickness=200 mm;top width=300 mm;method pressure=rankine;"
      "method bearing=vesic;footing soil "
      "friction angle=30 deg;"
      "site behind=ground;soil 1 friction angle=32 deg;load 1 name=push-on-cap;seismic horizontal=0.05"};
  static const char slips[] = GROUND "pad thickness=150 mm;pad width=600 mm;pad material=crushed rock;"
                                     "seismic horizontal=0.05;drain outlets=1;stone width=300 mm";
  const lw_factor_row *asked = &cells_built_in()->factor[row];
  bool slip = strstr(asked->quantity, "slip") != NULL;
  for (size_t i = 0; i < (slip ? 1 : sizeof walls / sizeof *walls); i++) {
    char items[500];
    snprintf(items, sizeof items, "%s;method slip=%s;method format=%s", slip ? slips : walls[i],
             slip ? "bishop" : "not", asked->factor_set);
    cells_wall(tables, items, CELLS_CHECKS, out);
  }
}

static const cells_column of_formats[] = {{"format", NULL, 0},       {"quantity", look_format, 0},
                                          {"title", NULL, 0},        {"usual", look_format, 0},
                                          {"usual_seen", NULL, 0},   {"unusual", look_format, 0},
                                          {"unusual_seen", NULL, 0}, {"extreme", look_format, 0},
                                          {"extreme_seen", NULL, 0}, {"clause", NULL, 0},
                                          {"note", NULL, 0},         {"source", NULL, 0},
                                          {"seen", NULL, 0},         {NULL, NULL, 0}};

Test(cells, every_factor_decides) {
  cells_expect("formats", of_formats);
}

static const char clear_of_all[] =
    "wall embedment=0 mm;soil below top=0 mm;method slip=not;site behind=bed;site back=wall;level "
    "difference=0 mm;boundary distance=60 m;building distance=60 m;"
    "other wall distance=60 m;other wall height=300 mm;other wall side=below;public way distance=60 m;"
    "service distance=60 m;waterbody distance=600 m;pool barrier distance=60 m;fence height=0 m;"
    "site above=nobody;vehicle access=no;water held behind=no;mapped land=no;heritage=no;strong "
    "earthquakes=no;"
    "shaken ground=no;water sent next door=no;reactive soil=no;works=new;ground slope=0 deg;front slope=0 "
    "deg;"
    "soil 1 name=clean sand;footing soil name=clean sand;drain outlets=2;stone width=300 mm;stone "
    "filter=cloth;people on "
    "cap=no;"
    "load 1 kind=none;ground drains=yes;";

/* A wall of a share of the row's height, and what stands around it. */
static void look_at(const lw_tables *tables, const lw_limit_row *row, double share, const char *around,
                    lw_text *out) {
  char items[2400];
  double height = fmax(row->height_m * share, 0.2);
  snprintf(items, sizeof items,
           "%s;wall kind=section;base width=600 mm;top width=600 mm;place=%s;wall height=%.4f m;%s",
           clear_of_all, row->place, height, around);
  cells_wall(tables, items, CELLS_VERDICT, out);
}

/* A place that lies within the row's own. */
static void look_within(const lw_tables *tables, int row, lw_text *out) {
  const lw_tables *whole = cells_built_in();
  for (int i = 0; i < whole->limit_count; i++) {
    lw_limit_row inner = whole->limit[i];
    bool within = lw_tables_listed(inner.within, whole->limit[row].place);
    if (!within) continue;
    inner.height_m = whole->limit[row].height_m;
    look_at(tables, &inner, 0.8, "site above=nobody", out);
    return;
  }
}

static void look_limit(const lw_tables *tables, int row, lw_text *out) {
  static const char near[] =
      "boundary distance=0.3 m;building distance=0.3 m;other wall distance=0.3 m;"
      "other wall height=0.3 m;service distance=0.3 m;waterbody distance=3 m;"
      "public way distance=0.5 m;load 1 kind=strip;load 1 pressure=9 kPa;"
      "load 1 near edge=0.3 m;load 1 far edge=2 m;fence height=1.2 m;site above=public",
                    told[] =
                        "heritage=yes;mapped land=yes;ground slope=10 deg;water held behind=yes;"
                        "strong earthquakes=yes;reactive soil=yes;water sent next door=yes;site above=public;"
                        "vehicle access=yes;cut depth=0.1 m;fill depth=3 m;site behind=ground";
  const lw_limit_row *limit = &cells_built_in()->limit[row];
  look_at(tables, limit, 0.9, "site above=nobody", out);
  look_at(tables, limit, 1.0, "site above=public", out);
  look_at(tables, limit, 1.3, "wall embedment=0.2 m;soil below top=0.1 m;site above=public", out);
  look_at(tables, limit, 0.8, near, out);
  look_at(tables, limit, 1.2, near, out);
  look_at(tables, limit, 0.6, told, out);
  look_at(tables, limit, 1.5, told, out);
  look_at(tables, limit, 0.9, "cut depth=3 m;fill depth=3 m;fence height=0.3 m;site above=household", out);
  look_within(tables, row, out);
}

/* A mark is idle where another mark of its row says the same already: `clears_within`, `regime`, `all_read`,
 * `superseded`, `confidence` and `not_a_wall_height` together say whether a row may clear a wall, and one no
 * is enough; `with_engineer` where an engineer is asked for anyway; `no_surcharge`, `fence_counts` and the
 * marks of tiers where the row is about something else. */
static const cells_column of_limits[] = {{"id", NULL, 0},
                                         {"place", look_limit, 0},
                                         {"aliases", NULL, 0},
                                         {"within", look_limit, 0},
                                         {"clears_within", look_limit, 96},
                                         {"country", NULL, 0},
                                         {"region", NULL, 0},
                                         {"instrument", NULL, 0},
                                         {"trigger", look_limit, 1},
                                         {"height [m]", look_limit, 0},
                                         {"comparison", look_limit, 6},
                                         {"measured", look_limit, 2},
                                         {"datum", NULL, 0},
                                         {"conditions", NULL, 0},
                                         {"min_boundary [m]", look_limit, 0},
                                         {"min_boundary_per_height", look_limit, 0},
                                         {"min_building [m]", look_limit, 1},
                                         {"min_building_per_height", look_limit, 0},
                                         {"min_other_wall [m]", look_limit, 1},
                                         {"min_other_wall_per_height", look_limit, 0},
                                         {"min_service [m]", look_limit, 0},
                                         {"min_waterbody [m]", look_limit, 0},
                                         {"min_public_way [m]", look_limit, 0},
                                         {"surcharge_zone [m]", look_limit, 0},
                                         {"surcharge_zone_per_height", look_limit, 0},
                                         {"no_surcharge", look_limit, 18},
                                         {"fence_counts", look_limit, 4},
                                         {"not_a_wall_height", look_limit, 63},
                                         {"cut_only", look_limit, 0},
                                         {"tiers_add", look_limit, 8},
                                         {"upper_shorter", look_limit, 13},
                                         {"tier_spacing [m]", look_limit, 0},
                                         {"tier_spacing_per_height", look_limit, 1},
                                         {"street_within [m]", look_limit, 0},
                                         {"boundary_within [m]", look_limit, 0},
                                         {"regime", look_limit, 53},
                                         {"only_if", look_limit, 0},
                                         {"any_height_if", look_limit, 0},
                                         {"with_engineer", look_limit, 19},
                                         {"all_read", look_limit, 58},
                                         {"superseded", look_limit, 61},
                                         {"as_of", NULL, 0},
                                         {"read", NULL, 0},
                                         {"status", NULL, 0},
                                         {"confidence", look_limit, 49},
                                         {"source", NULL, 0},
                                         {"seen", NULL, 0},
                                         {NULL, NULL, 0}};

Test(cells, every_limit_decides) {
  cells_expect("limits", of_limits);
}

/* A wall that much is the matter with, and one that is not. */
static const char troubled[] = GROUND
    "method slip=not;building distance=0.3 m;vehicle access=yes;water held behind=yes;boundary distance=0.2 "
    "m;"
    "other wall distance=0.5 m;other wall height=0.5 m;other wall side=above;ground slope=12 deg;"
    "public way distance=0.2 m;service distance=0.05 m;mapped land=yes;reactive soil=yes;fence height=1.5 m;"
    "site above=public;works=moved;heritage=yes;shaken ground=yes;water sent next door=yes;"
    "strong earthquakes=yes;waterbody distance=1 m;pool barrier distance=0.1 m;drain outlets=0;"
    "soil 1 name=high-plasticity clay;load 1 kind=strip;load 1 pressure=12 kPa;load 1 near edge=0.1 m;"
    "load 1 far edge=2 m";
static const char tidy[] =
    LOW "site behind=bed;site back=fence;method slip=not;drain outlets=2;stone width=300 mm;stone "
        "filter=cloth;ground drains=yes;"
        "soil 1 name=clean sand;footing soil name=clean sand;pool barrier distance=1 m";
static const char high[] = GROUND
    "method slip=not;course count=7;building distance=1.7 m;boundary distance=1.7 m;other wall distance=2.6 "
    "m;"
    "other wall height=1.1 m;other wall side=above;public way distance=4 m;waterbody distance=45 m;"
    "service distance=1.3 m;site above=public;pool barrier distance=1.2 m;vehicle access=no;fill depth=2 m;"
    "load 1 kind=strip;load 1 pressure=9 kPa;"
    "load 1 near edge=2.4 m;load 1 far edge=4 m";

/* What lies near, by itself: a list of reasons has an end. */
static const char beside[] =
    "site back=ground;building distance=0.3 m;boundary distance=0.3 m;public way distance=0.3 m;"
    "fence height=1.5 m;fence place=on the wall;drain outlets=0;wall joints=sealed;ground drains=no";
static const char officer[] =
    "rain water to=street;easement=under;protected trees=yes;flood land=yes;bushfire land=yes;coast land=yes;"
    "neighbour consent=no;boundary distance=0.3 m;sight lines=yes;other works=pool;built by=owner";
static const char fence_behind[] = "fence height=1.5 m;fence place=behind;fence distance=0.5 m";
static const char *const few_cues[] = {"site above=nobody",
                                       "cap height=50 mm;cap depth=280 mm",
                                       "course count=6;wall embedment=700 mm;wall height=500 mm",
                                       "works=moved",
                                       "building distance=0.3 m",
                                       "drain outlets=0;ground drains=no",
                                       "front slope=1:5"};

static void look_clear(const lw_tables *tables, const char *changes, lw_text *out) {
  char items[2400];
  snprintf(items, sizeof items, LOW "%s;%s", clear_of_all, changes);
  cells_wall(tables, items, CELLS_VERDICT, out);
}

static void look_law(const lw_tables *tables, int row, lw_text *out) {
  (void)row;
  cells_wall(tables, troubled, CELLS_VERDICT, out);
  cells_wall(tables, tidy, CELLS_VERDICT, out);
  cells_wall(tables, high, CELLS_VERDICT, out);
  look_clear(tables, beside, out);
  look_clear(tables, fence_behind, out);
  look_clear(tables, officer, out);
  look_clear(tables, "rain water to=soakaway", out);
  look_clear(tables, "wall embedment=100 mm;building distance=0.05 m", out);
}

/* Cautions come up by what a wall has: one thing at a time, for there is room for ten. */
static void look_hazard(const lw_tables *tables, int row, lw_text *out) {
  (void)row;
  for (size_t i = 0; i < sizeof few_cues / sizeof *few_cues; i++) look_clear(tables, few_cues[i], out);
  look_law(tables, row, out);
}

static const cells_column of_conditions[] = {
    {"slug", look_law, 0}, {"sentence", look_law, 0}, {"who", look_law, 0}, {"basis", NULL, 0},
    {"note", NULL, 0},     {"source", look_law, 0},   {"seen", NULL, 0},    {NULL, NULL, 0}};

Test(cells, every_condition_decides) {
  cells_expect("conditions", of_conditions);
}

/* Beside the walls, the cautions that quote a distance. */
static void look_clearance(const lw_tables *tables, int row, lw_text *out) {
  look_law(tables, row, out);
  for (int i = 0; i < tables->hazard_count; i++) lw_text_addf(out, "%s\n", tables->hazard[i].number);
}

static const cells_column of_clearances[] = {{"slug", look_clearance, 0},
                                             {"name", NULL, 0},
                                             {"at_least [m]", look_clearance, 0},
                                             {"per_height", look_clearance, 0},
                                             {"height_of", look_clearance, 0},
                                             {"note", NULL, 0},
                                             {"source", NULL, 0},
                                             {"seen", NULL, 0},
                                             {NULL, NULL, 0}};

Test(cells, every_distance_decides) {
  cells_expect("clearances", of_clearances);
}

/* No item tells of trees or frost (D15, D16, B20, B21); the others come with every wall, and stand behind
 * those that share their cue. */
static const cells_column of_hazards[] = {
    {"id", NULL, 0},      {"phase", NULL, 0},       {"hazard", NULL, 0},
    {"caution", NULL, 0}, {"number", NULL, 0},      {"severity", look_hazard, 12},
    {"names", NULL, 0},   {"when", look_hazard, 0}, {"source", NULL, 0},
    {"seen", NULL, 0},    {NULL, NULL, 0}};

Test(cells, every_caution_can_come_up) {
  cells_expect("hazards", of_hazards);
}
