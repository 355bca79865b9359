/* SPDX-License-Identifier: GPL-3.0-or-later */
/* What ground, blocks, loads and plant are like, and how books compute. */
#include "tables/known.h"
#include "cells.h"

#include <criterion/criterion.h>

#include <math.h>
#include <stdio.h>
#include <string.h>

#define BED \
  "course count=3;block height=200 mm;block depth=300 mm;block length=300 mm;wall embedment=100 mm;" \
  "site behind=bed;method slip=not;"

/* Behind the wall and under it; nobody says whether the ground swells. */
static void look_soil(const lw_tables *tables, int row, lw_text *out) {
  char items[400];
  const char *name = cells_built_in()->soil[row].name;
  snprintf(items, sizeof items,
           BED "storm rain=50 mm;drain outlets=1;method bearing=vesic;soil 1 name=%s;footing soil name=%s",
           name, name);
  cells_wall(tables, items, CELLS_CHECKS | CELLS_VERDICT, out);
  snprintf(items, sizeof items, BED "soil 1 name=%s;footing soil name=%s;water depth=200 mm", name, name);
  cells_wall(tables, items, CELLS_CHECKS | CELLS_TEXT, out);
}

/* The least of the soils behind is a figure of the site. */
static void look_permeability(const lw_tables *tables, int row, lw_text *out) {
  char items[400];
  snprintf(items, sizeof items, BED "wall joints=open;soil 1 name=%s", cells_built_in()->soil[row].name);
  cells_wall(tables, items, CELLS_JSON, out);
}

/* Ground that is said not to swell. */
static void look_paired(const lw_tables *tables, int row, lw_text *out) {
  char items[400];
  snprintf(items, sizeof items, BED "reactive soil=no;footing soil name=%s",
           cells_built_in()->soil[row].name);
  cells_wall(tables, items, CELLS_TEXT, out);
}

/* Soils that have no angle, and compost as deep as this, are refused in either look. */
static void look_likely_soil(const lw_tables *tables, int row, lw_text *out) {
  char items[400];
  const char *name = cells_built_in()->soil[row].name;
  snprintf(items, sizeof items, BED "method bearing=vesic;soil 1 name=%s;footing soil name=%s", name, name);
  cells_wall(tables, items, CELLS_LIKELY, out);
  snprintf(items, sizeof items,
           BED "block depth=600 mm;method bearing=vesic;soil 1 name=clean sand;footing soil name=%s", name);
  cells_wall(tables, items, CELLS_LIKELY, out);
}

/* Every ribbon and heap by the half millimetre and the degree. */
static void look_hand_test(const lw_tables *tables, int row, lw_text *out) {
  char name[LW_ALIASES_MAX];
  (void)row;
  for (int i = 0; i < 160; i++) {
    const lw_soil_row *ribbon, *heap;
    snprintf(name, sizeof name, "ribbon %d.5", i);
    ribbon = lw_tables_soil(tables, name);
    snprintf(name, sizeof name, "heap %d", i);
    heap = i < 60 ? lw_tables_soil(tables, name) : NULL;
    lw_text_addf(out, "%s %s\n", ribbon ? ribbon->name : "", heap ? heap->name : "");
  }
}

static void look_soil_aliases(const lw_tables *tables, int row, lw_text *out) {
  const char *alias = cells_built_in()->soil[row].aliases;
  char name[LW_ALIASES_MAX];
  snprintf(name, sizeof name, "%.*s", (int)strcspn(alias, "|"), alias);
  const lw_soil_row *soil = lw_tables_soil(tables, name);
  lw_text_addf(out, "%s\n", soil ? soil->name : "none");
}

/* Ground that lies against the wall: of what is refused there nothing is worked out. */
static void look_soil_behind(const lw_tables *tables, int row, lw_text *out) {
  char items[400];
  snprintf(items, sizeof items, BED "site behind=ground;footing soil name=clean sand;soil 1 name=%s",
           cells_built_in()->soil[row].name);
  cells_wall(tables, items, CELLS_CHECKS, out);
}

/* It is printed and decides nothing. */
static void look_fluid(const lw_tables *tables, int row, lw_text *out) {
  char items[400];
  snprintf(items, sizeof items, BED "soil 1 name=%s", cells_built_in()->soil[row].name);
  cells_wall(tables, items, CELLS_TEXT, out);
}

static const cells_column of_soils[] = {{"name", look_soil, 0},
                                        {"aliases", look_soil_aliases, 0},
                                        {"use", look_soil, 0},
                                        {"free_draining", look_soil, 0},
                                        {"never_swells", look_soil, 0},
                                        {"clay", look_soil_behind, 10},
                                        {"friction_angle [deg]", look_soil, 0},
                                        {"friction_angle_typical [deg]", look_likely_soil, 1},
                                        {"unit_weight [kN/m3]", look_soil, 0},
                                        {"light_unit_weight [kN/m3]", look_soil, 0},
                                        {"unit_weight_typical [kN/m3]", look_likely_soil, 7},
                                        {"saturated_unit_weight [kN/m3]", look_soil, 0},
                                        {"allowable_bearing [kPa]", look_soil, 0},
                                        {"ribbon_from [mm]", look_hand_test, 0},
                                        {"ribbon_to [mm]", look_hand_test, 0},
                                        {"heap_from [deg]", look_hand_test, 0},
                                        {"heap_to [deg]", look_hand_test, 0},
                                        {"note", NULL, 0},
                                        {"drainable_porosity", look_soil, 0},
                                        {"porosity_source", NULL, 0},
                                        {"porosity_seen", NULL, 0},
                                        {"permeability [m/s]", look_permeability, 0},
                                        {"permeability_source", NULL, 0},
                                        {"permeability_seen", NULL, 0},
                                        {"weight_source", NULL, 0},
                                        {"weight_seen", NULL, 0},
                                        {"bearing_source", NULL, 0},
                                        {"bearing_seen", NULL, 0},
                                        {"code_fluid [kN/m3]", look_fluid, 0},
                                        {"fluid_source", NULL, 0},
                                        {"fluid_seen", NULL, 0},
                                        {"critical_angle [deg]", look_soil, 0},
                                        {"critical_source", NULL, 0},
                                        {"critical_seen", NULL, 0},
                                        {"undrained_strength [kPa]", look_soil, 0},
                                        {"undrained_source", NULL, 0},
                                        {"undrained_seen", NULL, 0},
                                        {"paired_cohesion [kPa]", look_paired, 0},
                                        {"paired_source", NULL, 0},
                                        {"paired_seen", NULL, 0},
                                        {"source", NULL, 0},
                                        {"seen", NULL, 0},
                                        {NULL, NULL, 0}};

Test(cells, every_soil_decides) {
  cells_expect("soils", of_soils);
}

static void look_plant(const lw_tables *tables, int row, lw_text *out) {
  char items[300];
  snprintf(items, sizeof items, BED "plant distance=100 mm;plant=%s", cells_built_in()->plant[row].name);
  cells_wall(tables, items, CELLS_TEXT, out);
}

static void look_plant_aliases(const lw_tables *tables, int row, lw_text *out) {
  const char *alias = cells_built_in()->plant[row].aliases;
  char name[LW_ALIASES_MAX];
  snprintf(name, sizeof name, "%.*s", (int)strcspn(alias, "|"), alias);
  const lw_plant_row *plant = lw_tables_plant(tables, name);
  lw_text_addf(out, "%s\n", plant ? plant->name : "none");
}

static const cells_column of_plant[] = {{"name", look_plant, 0},
                                        {"aliases", look_plant_aliases, 0},
                                        {"mass [kg]", look_plant, 0},
                                        {"force [kN]", look_plant, 0},
                                        {"width [mm]", look_plant, 0},
                                        {"layer [mm]", look_plant, 0},
                                        {"note", NULL, 0},
                                        {"source", NULL, 0},
                                        {"seen", NULL, 0},
                                        {NULL, NULL, 0}};

Test(cells, all_of_plant_decides) {
  cells_expect("plant", of_plant);
}

/* A load by its name, and the walls that take one nobody named. */
static void look_load(const lw_tables *tables, int row, lw_text *out) {
  char items[400];
  const lw_load_row *load = &cells_built_in()->load[row];
  bool strip = load->kind == LW_LOAD_ROW_STRIP, by_height = strcmp(load->unit, "kPa/m") == 0;
  bool open = strip && !(load->width_m > 0.0);
  snprintf(items, sizeof items, BED "load 1 name=%s%s%s%s", load->slug,
           by_height ? ";load 1 height=0.8 m" : "", strip ? ";load 1 near edge=0.1 m" : "",
           open ? ";load 1 far edge=2 m" : "");
  cells_wall(tables, items, CELLS_CHECKS | CELLS_TEXT, out);
  cells_wall(tables, BED, CELLS_CHECKS, out);
  cells_wall(tables, BED "vehicle access=yes", CELLS_CHECKS, out);
  cells_wall(tables, BED "vehicle access=no;course count=6", CELLS_CHECKS, out);
  cells_wall(tables, BED "vehicle access=no;bed use=planted", CELLS_CHECKS, out);
}

static const cells_column of_loads[] = {
    {"slug", look_load, 0},      {"name", NULL, 0},      {"kind", look_load, 0},
    {"value", look_load, 0},     {"unit", look_load, 0}, {"push [kN/m]", look_load, 0},
    {"width [m]", look_load, 0}, {"note", NULL, 0},      {"source", NULL, 0},
    {"seen", NULL, 0},           {NULL, NULL, 0}};

Test(cells, every_load_decides) {
  cells_expect("loads", of_loads);
}

static void look_conventions(const lw_tables *tables, int row, lw_text *out) {
  char items[400];
  snprintf(items, sizeof items, BED "method conventions=%s", cells_built_in()->conventions[row].name);
  cells_wall(tables, items, CELLS_CHECKS | CELLS_TEXT, out);
}

static const cells_column of_conventions[] = {{"name", look_conventions, 0},
                                              {"items", look_conventions, 0},
                                              {"note", NULL, 0},
                                              {"source", NULL, 0},
                                              {"seen", NULL, 0},
                                              {NULL, NULL, 0}};

Test(cells, all_conventions_decide) {
  cells_expect("conventions", of_conventions);
}

/* Rows that stand in for an answer, and the gravel of a remedy. The others are there to be read: a person
 * takes a figure of them onto the sheet. */
static void look_stand_in(const lw_tables *tables, int row, lw_text *out) {
  (void)row;
  cells_wall(tables, BED, CELLS_CHECKS | CELLS_LIKELY, out);
  cells_wall(tables,
             BED "wall joints=open;drain outlets=2;stone width=300 mm;stone filter=cloth;block depth=600 mm",
             CELLS_CHECKS | CELLS_LIKELY, out);
  cells_wall(tables, BED "footing soil name=road base;soil 1 name=crushed rock", CELLS_CHECKS | CELLS_LIKELY,
             out);
  cells_wall(tables, BED "pad thickness=100 mm;pad material=dry sand", CELLS_CHECKS | CELLS_LIKELY, out);
  cells_wall(tables, BED "method pressure=coulomb", CELLS_CHECKS | CELLS_LIKELY, out);
  cells_wall(
      tables,
      BED
      "site behind=ground;face shell thickness=30 mm;course count=2;block depth=400 mm;block length=400 mm;"
      "method pressure=rankine;block unit weight=9 kN/m3;drain outlets=2;wall joints=open;stone filter=cloth;"
      "stone width=300 mm;soil 1 name=clean sand;soil below "
      "top=100 mm;course count=3;footing soil friction angle=38 deg;allowable bearing=150 kPa;ground slope=0 "
      "deg;people on cap=no;vehicle access=no",
      CELLS_TEXT | CELLS_REMEDIES, out);
  cells_wall(tables, "wall kind=section;wall height=0.8 m;base width=0.5 m;top width=0.4 m;site behind=bed",
             CELLS_CHECKS | CELLS_LIKELY, out);
}

static void expect_change(lw_tables *tables, double *figure, const char *name) {
  lw_text before = {0}, after = {0};
  look_stand_in(tables, 0, &before);
  *figure = *figure * 0.45 + 0.1;
  look_stand_in(tables, 0, &after);
  cr_expect(before.length != after.length || memcmp(before.data, after.data, before.length) != 0,
            "nothing comes of %s", name);
  lw_text_free(&before);
  lw_text_free(&after);
}

Test(cells, each_row_that_stands_in_for_an_answer_decides) {
  static lw_tables tables;
  static const lw_known_row assumed[] = {LW_ASSUMED_BASE, LW_ASSUMED_BED_OF_GRAVEL, LW_ASSUMED_BED_OF_SAND,
                                         LW_ASSUMED_JOINT, LW_ASSUMED_CLEAN_JOINT};
  static const lw_known_row materials[] = {LW_MATERIAL_OF_SOLID_BLOCK, LW_MATERIAL_OF_DRY_STONE,
                                           LW_MATERIAL_OF_LOOSE_GRAVEL};
  for (size_t i = 0; i < sizeof assumed / sizeof *assumed; i++) {
    tables = *cells_built_in();
    expect_change(&tables, &tables.interface_[tables.known[assumed[i]]].friction_low,
                  lw_known_slug(assumed[i]));
    tables = *cells_built_in();
    expect_change(&tables, &tables.interface_[tables.known[assumed[i]]].friction_likely,
                  lw_known_slug(assumed[i]));
  }
  for (size_t i = 0; i < sizeof materials / sizeof *materials; i++) {
    tables = *cells_built_in();
    expect_change(&tables, &tables.material[tables.known[materials[i]]].unit_weight_low_kn_per_m3,
                  lw_known_slug(materials[i]));
  }
  for (size_t i = 0; i < 2; i++) {
    tables = *cells_built_in();
    expect_change(&tables, &tables.material[tables.known[materials[i]]].unit_weight_likely_kn_per_m3,
                  "the likely weight of a wall");
  }
}

/* For each row of a back a wall that takes it, in both looks. */
Test(cells, each_row_of_a_back_decides) {
  static const struct {
    lw_known_row row;
    const char *items;
  } backs[] = {
      {LW_ASSUMED_WALL, BED "footing soil name=clean sand"},
      {LW_ASSUMED_SMOOTH_WALL, BED "footing soil name=clean sand;wall back=smooth"},
      {LW_ASSUMED_MEMBRANE, BED "footing soil name=clean sand;wall back=lined"},
      {LW_ASSUMED_WALL_ON_UNNAMED, BED},
      {LW_ASSUMED_WALL_ON_SOFT, BED "footing soil name=soft clay"},
      {LW_ASSUMED_WALL_AT_CLAY,
       BED "site behind=ground;footing soil name=clean sand;soil 1 name=low-plasticity clay"},
  };
  static lw_tables tables;
  for (size_t i = 0; i < sizeof backs / sizeof *backs; i++) {
    lw_text before[2] = {{0}, {0}};
    cells_wall(cells_built_in(), backs[i].items, CELLS_CHECKS, &before[0]);
    cells_wall(cells_built_in(), backs[i].items, CELLS_LIKELY, &before[1]);
    for (int look = 0; look < 2; look++) {
      lw_text after = {0};
      tables = *cells_built_in();
      lw_interface_row *row = &tables.interface_[tables.known[backs[i].row]];
      *(look ? &row->friction_likely : &row->share_of_friction_angle) = 0.2;
      cells_wall(&tables, backs[i].items, look ? CELLS_LIKELY : CELLS_CHECKS, &after);
      cr_expect(after.length != before[look].length ||
                    memcmp(after.data, before[look].data, after.length) != 0,
                "nothing comes of %s", row->name);
      lw_text_free(&after);
      lw_text_free(&before[look]);
    }
  }
}
