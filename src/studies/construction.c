/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "construction.h"

#include "base/tell.h"
#include "base/working.h"
#include "construction_parts.h"

#include <math.h>

#include "base/bound.h"

/* The wall while it is built, with compaction plant behind the newest course. */

static const double GRAVITY = 9.80665;

static void from_row(const lw_plant_row *row, lw_plant *plant) {
  plant->row = row;
  lw_print(plant->name, sizeof plant->name, "%s", row->name);
  plant->mass_kg = row->mass_kg;
  plant->force_kn = row->force_kn;
  plant->width_m = row->width_m;
  plant->layer_m = row->layer_m;
}

static double line_load(const lw_plant *plant, const lw_working *working) {
  double force = plant->mass_kg * GRAVITY / 1000.0 + plant->force_kn;
  double load = force / plant->width_m;
  const lw_bound bound[] = {
      {"mp", plant->mass_kg, "kg"}, {"Fp", plant->force_kn, "kN"}, {"wp", plant->width_m, "m"}};
  bool weighed = lw_tell_units(working) == LW_UNITS_US; /* a pound of mass weighs a pound */
  const lw_step step = {"pl", weighed ? "(mp + Fp)/wp" : "(mp x 9.80665/1000 + Fp)/wp", NULL, load, "kN/m",
                        ""};
  lw_working_bound(working, &step, bound, 3);
  return load;
}

static void sum_up(lw_plant *plant) {
  plant->line_load_kn_per_m = line_load(plant, NULL);
}

/* Numbers without a name are the sheet's own plant; what they leave out is the usual plate's. */
static void plant_build(const lw_told_plant *told, const lw_tables *tables, lw_plant *plant) {
  bool numbers = told->mass_kg.known || told->force_kn.known || told->width_m.known;
  *plant = (lw_plant){.named = told->row || numbers};
  from_row(told->row ? told->row : lw_known_plant(tables, LW_PLANT_OF_USUAL), plant);
  if (numbers && !told->row) plant->name[0] = '\0';
  if (told->mass_kg.known) plant->mass_kg = told->mass_kg.value;
  if (told->force_kn.known) plant->force_kn = told->force_kn.value;
  if (told->width_m.known) plant->width_m = told->width_m.value;
  sum_up(plant);
}

static void hand_build(const lw_tables *tables, lw_plant *plant) {
  *plant = (lw_plant){.named = false};
  from_row(lw_known_plant(tables, LW_PLANT_OF_HAND_RAMMER), plant);
  sum_up(plant);
}

static double thickest(const lw_plant *plant, double course_m) {
  return plant->layer_m > 0.0 ? fmin(plant->layer_m, course_m) : course_m;
}

/* A course is filled in equal layers, none thicker than the plant compacts. */
static void plan_layers(const lw_section *section, lw_number layer_m, lw_construction *construction) {
  double course = section->part[0].top_m - section->part[0].bottom_m;
  double most = construction->layer_most_m = thickest(&construction->plant, course);
  construction->hand_layer_most_m = thickest(&construction->hand, course);
  construction->layers = (int)ceil(course / most - 1e-9);
  construction->layer_m = course / construction->layers;
  construction->layer_given = layer_m.known;
  if (!construction->layer_given) return;
  construction->layer_m = layer_m.value;
  construction->layer_too_thick = construction->layer_m > most + 1e-9;
}

static const lw_check *graver_of(const lw_construction_checks *checks) {
  return lw_check_graver(&checks->tilting, &checks->sliding) ? &checks->tilting : &checks->sliding;
}

static const lw_check *newest(const lw_construction_course *course) {
  return lw_check_graver(&course->tilting, &course->sliding) ? &course->tilting : &course->sliding;
}

static bool lay_courses(const lw_construction_site *site, lw_construction *construction) {
  construction->course_count = site->wall->section.course_count;
  for (int i = 0; i < construction->course_count; i++) {
    lw_construction_course *course = &construction->course[i];
    if (lw_construction_fill(site, &construction->plant, i, course, NULL) != LW_OK) return false;
    lw_construction_checks checks =
        lw_construction_check(site, i, lw_construction_hold_of(site, i, i, NULL), course->push, NULL);
    course->sliding = checks.sliding;
    course->tilting = checks.tilting;
    lw_construction_lower(site, construction, i, course);
    if (lw_check_graver(newest(course), newest(&construction->course[construction->worst])))
      construction->worst = i;
  }
  return true;
}

/* What compaction would leave on the whole wall if nothing ever gave way, and the earth alone once it has. */
static void add_whole(const lw_construction_site *site, lw_construction *construction) {
  const lw_construction_course *top = &construction->course[construction->course_count - 1];
  double height = site->wall->section.height_m - site->wall->site.soil_below_top_m;
  construction->whole = lw_compaction_thrust(&top->diagram, height, NULL);
  double push = top->diagram.coefficient * top->unit_weight_kn_per_m3 * height * height / 2.0;
  construction->yielded = (lw_lateral){push, height / 3.0};
}

static bool gravest_at(const lw_construction_site *site, const lw_construction *construction,
                       const lw_plant *plant, double distance_m, lw_check *check) {
  bool any = false;
  for (int i = 0; i < construction->course_count; i++) {
    lw_construction_course course;
    if (lw_construction_fill(site, plant, i, &course, NULL) != LW_OK || course.height_m <= 0.0) continue;
    lw_lateral push = lw_construction_push(&course, plant, distance_m);
    lw_construction_checks checks =
        lw_construction_check(site, i, lw_construction_hold_of(site, i, i, NULL), push, NULL);
    const lw_check *graver = graver_of(&checks);
    if (!any || lw_check_graver(graver, check)) *check = *graver;
    any = true;
  }
  return any;
}

bool lw_construction_at(const lw_wall *wall, const lw_tables *tables, const lw_construction *construction,
                        const lw_plant *plant, double distance_m, lw_check *check) {
  lw_construction_site site;
  lw_construction_site_make(wall, tables, &site);
  return construction->studied && gravest_at(&site, construction, plant, distance_m, check);
}

static lw_reason why_not(const lw_wall *wall) {
  if (wall->section.kind != LW_WALL_COURSES) return LW_REASON_NO_COURSES;
  if (!wall->section.known) return LW_REASON_NO_DEPTH;
  if (wall->site.backfill_refused) return LW_REASON_REFUSED_BACKFILL;
  return LW_REASON_NONE;
}

void lw_construction_run(const lw_wall *wall, const lw_tables *tables, lw_construction *construction) {
  lw_construction_site site;
  *construction = (lw_construction){.reason = why_not(wall)};
  plant_build(&wall->plant, tables, &construction->plant);
  hand_build(tables, &construction->hand);
  if (construction->reason != LW_REASON_NONE) return;
  lw_construction_site_make(wall, tables, &site);
  plan_layers(&wall->section, wall->plant.layer_m, construction);
  construction->studied = lay_courses(&site, construction);
  if (!construction->studied) {
    construction->reason = LW_REASON_ANGLE_OUT_OF_RANGE;
    return;
  }
  add_whole(&site, construction);
  lw_construction_stand_off(&site, construction, &construction->plant, &construction->stand_off, NULL);
  lw_construction_stand_off(&site, construction, &construction->hand, &construction->hand_stand_off, NULL);
  construction->distance_m = wall->plant.distance_m;
  if (!construction->distance_m.known) return;
  construction->moves = gravest_at(&site, construction, &construction->plant, construction->distance_m.value,
                                   &construction->at_distance) &&
                        construction->at_distance.holds == LW_FALLS_SHORT;
}

/* What compaction would leave if nothing gave way, beside the earth alone. */
static void write_whole(const lw_construction_site *site, const lw_construction *construction,
                        const lw_working *working) {
  const lw_construction_course *top = &construction->course[construction->course_count - 1];
  double height = site->wall->section.height_m - site->wall->site.soil_below_top_m;
  const lw_bound bound[] = {{"Ka", top->diagram.coefficient, ""},
                            {"gamma", top->unit_weight_kn_per_m3, "kN/m3"},
                            {"hf", height, "m"}};
  const lw_step yielded = {"Pe", "Ka gamma hf^2/2", NULL, construction->yielded.thrust_kn_per_m, "kN/m", ""};
  lw_working_heading(working, "On the whole wall, if nothing gave way, beside the earth that has yielded");
  (void)lw_compaction_thrust(&top->diagram, height, working);
  lw_working_bound(working, &yielded, bound, 3);
}

void lw_construction_write(const lw_wall *wall, const lw_tables *tables, const lw_construction *construction,
                           const lw_working *working) {
  int worst = construction->worst;
  char title[80];
  lw_construction_site site;
  lw_construction_course course;
  lw_stand_off stand_off;
  if (!construction->studied || working == NULL) return;
  lw_construction_site_make(wall, tables, &site);
  (void)line_load(&construction->plant, working);
  lw_print(title, sizeof title, "Course %d, the plant touching", worst + 1);
  lw_working_heading(working, title);
  if (lw_construction_fill(&site, &construction->plant, worst, &course, working) != LW_OK) return;
  (void)lw_construction_check(&site, worst, lw_construction_hold_of(&site, worst, worst, working),
                              course.push, working);
  lw_construction_stand_off(&site, construction, &construction->plant, &stand_off, working);
  lw_construction_stand_off(&site, construction, &construction->hand, &stand_off, working);
  write_whole(&site, construction, working);
}
