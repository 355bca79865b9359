/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "base/solve.h"
#include "base/working.h"
#include "construction_parts.h"

#include <math.h>

#include "base/bound.h"

/* How near plant may come to the newest course. */

static const double FARTHEST_M = 100.0; /* beyond it no plant is told to keep off */
static const double NEAREST_M = 1e-3;   /* nearer is touching */
static const double SITE_STEP_M = 0.05; /* what can be kept on site with a tape and a line of paint */

static lw_foot foot_of(const lw_plant *plant) {
  return (lw_foot){.line_load_kn_per_m = plant->line_load_kn_per_m, .length_m = plant->width_m};
}

lw_lateral lw_construction_push(const lw_construction_course *course, const lw_plant *plant,
                                double distance_m) {
  lw_foot foot = foot_of(plant);
  double h = course->height_m, touching = course->push.thrust_kn_per_m;
  if (distance_m < NEAREST_M) return course->push;
  lw_lateral far = lw_foot_thrust(&foot, distance_m, h, NULL);
  double push = course->earth.thrust_kn_per_m + far.thrust_kn_per_m;
  double moment = course->earth.thrust_kn_per_m * course->earth.height_m + far.thrust_kn_per_m * far.height_m;
  push = fmin(push, touching);
  moment = fmin(moment, touching * course->push.height_m);
  return (lw_lateral){push, moment / push};
}

/* What the plant may add to a course's layer of earth before the course has less than it needs. */
typedef struct allowance {
  double height_m, push_kn_per_m, moment_knm_per_m;
  int push_of, moment_of; /* the courses that leave so little */
} allowance;

enum { ALLOWANCES = 2 }; /* all courses are alike, but for one that is filled to part of its height */

typedef struct search {
  const char *name; /* of the plant */
  lw_foot foot;
  allowance allowed;
  bool moment;
} search;

static double spare(double distance_m, const void *context) {
  const search *s = context;
  lw_lateral push = lw_foot_thrust(&s->foot, distance_m, s->allowed.height_m, NULL);
  if (s->moment) return s->allowed.moment_knm_per_m - push.thrust_kn_per_m * push.height_m;
  return s->allowed.push_kn_per_m - push.thrust_kn_per_m;
}

static double needed(const lw_factor_row *row) {
  lw_number needs = lw_factor_value(row, LW_UNUSUAL);
  return needs.known ? fmax(needs.value, 1.0) : 1.0;
}

static int gather(const lw_construction_site *site, const lw_construction *construction,
                  allowance allowed[ALLOWANCES]) {
  int count = 0;
  for (int i = 0; i < construction->course_count; i++) {
    const lw_construction_course *course = &construction->course[i];
    lw_construction_hold hold = lw_construction_hold_of(site, i, i, NULL);
    if (course->height_m <= 0.0) continue;
    double push = hold.friction_kn_per_m / needed(site->sliding) - course->earth.thrust_kn_per_m;
    double moment = hold.moment_knm_per_m / needed(site->overturning) -
                    course->earth.thrust_kn_per_m * course->earth.height_m;
    int at = 0;
    while (at < count && fabs(allowed[at].height_m - course->height_m) > 1e-9) at++;
    if (at >= ALLOWANCES) at = ALLOWANCES - 1;
    if (at == count) allowed[count++] = (allowance){course->height_m, push, moment, i, i};
    allowed[at].height_m = fmax(allowed[at].height_m, course->height_m);
    if (push < allowed[at].push_kn_per_m) allowed[at].push_of = i;
    if (moment < allowed[at].moment_knm_per_m) allowed[at].moment_of = i;
    allowed[at].push_kn_per_m = fmin(allowed[at].push_kn_per_m, push);
    allowed[at].moment_knm_per_m = fmin(allowed[at].moment_knm_per_m, moment);
  }
  return count;
}

/* The distance from which on there is enough to spare; below 0: there is none. */
static double distance_for(const search *s) {
  double distance = -1.0;
  if (spare(FARTHEST_M, s) <= 0.0) return -1.0;
  if (spare(NEAREST_M, s) >= 0.0) return NEAREST_M;
  (void)lw_solve_root(spare, s, NEAREST_M, FARTHEST_M, 1e-9, &distance);
  return distance;
}

static bool touching_holds(const lw_construction_site *site, const lw_construction *construction,
                           const lw_plant *plant) {
  for (int i = 0; i < construction->course_count; i++) {
    lw_construction_course course;
    if (lw_construction_fill(site, plant, i, &course, NULL) != LW_OK) return false;
    lw_construction_checks checks =
        lw_construction_check(site, i, lw_construction_hold_of(site, i, i, NULL), course.push, NULL);
    if (checks.sliding.holds != LW_HOLDS || checks.tilting.holds != LW_HOLDS) return false;
  }
  return true;
}

/* The distances of the table are kept whatever the sum says, even by plant that may touch; a hand rammer is
 * no machine. */
static double least_of(const lw_construction_site *site, const lw_plant *plant) {
  const lw_section *section = &site->wall->section;
  if (plant->mass_kg < lw_known_value(site->tables, LW_THRESHOLD_HAND_MASS)) return 0.0;
  double least = lw_known_value(site->tables, LW_THRESHOLD_COMPACTOR_DISTANCE);
  bool heavy = plant->mass_kg > lw_known_value(site->tables, LW_THRESHOLD_MACHINE_MASS);
  if (heavy) least = fmax(least, lw_known_value(site->tables, LW_THRESHOLD_MACHINE_DISTANCE));
  if (plant->force_kn <= 0.0) return least;
  double heights = lw_known_value(site->tables, LW_THRESHOLD_COMPACTOR_HEIGHTS);
  return fmax(least, heights * (section->height_m - section->embedment_m));
}

static void set(const lw_construction_site *site, const lw_plant *plant, lw_stand_off *stand_off,
                double distance_m) {
  double keep = fmax(distance_m, least_of(site, plant));
  stand_off->distance_m = lw_known(distance_m);
  stand_off->keep_m = lw_known(ceil(keep / SITE_STEP_M - 1e-6) * SITE_STEP_M + 0.0);
}

/* What is left to the plant on the course that decides, and what its foot pushes at the distance. */
static void write(const lw_construction_site *site, const lw_construction *construction, const search *s,
                  double distance_m, const lw_working *working) {
  int i = s->moment ? s->allowed.moment_of : s->allowed.push_of;
  const lw_construction_course *course = &construction->course[i];
  char title[120];
  lw_print(title, sizeof title, "Course %d decides how near the %s may come, by its %s", i + 1, s->name,
           s->moment ? "tilting" : "sliding");
  lw_working_heading(working, title);
  lw_construction_hold hold = lw_construction_hold_of(site, i, i, working);
  lw_lateral foot = lw_foot_thrust(&s->foot, distance_m, s->allowed.height_m, working);
  double earth = course->earth.thrust_kn_per_m;
  const lw_bound bound[] = {{"Ka", course->diagram.coefficient, ""},
                            {"gamma", course->unit_weight_kn_per_m3, "kN/m3"},
                            {"hf", course->height_m, "m"},
                            {"Fr", hold.friction_kn_per_m, "kN/m"},
                            {"Mk", hold.moment_knm_per_m, "kN m/m"},
                            {"nd", needed(s->moment ? site->overturning : site->sliding), ""},
                            {"Pe", earth, "kN/m"},
                            {"Pf", foot.thrust_kn_per_m, "kN/m"},
                            {"zf", foot.height_m, "m"}};
  const lw_step steps[] = {{"Pe", "Ka gamma hf^2/2", NULL, earth, "kN/m", ""},
                           {"Pa", "Fr/nd - Pe", NULL, s->allowed.push_kn_per_m, "kN/m", ""},
                           {"Ma", "Mk/nd - Pe hf/3", NULL, s->allowed.moment_knm_per_m, "kN m/m", ""},
                           {"Mf", "Pf zf", NULL, foot.thrust_kn_per_m * foot.height_m, "kN m/m", ""}};
  lw_working_bound(working, &steps[0], bound, 9);
  if (!s->moment) lw_working_bound(working, &steps[1], bound, 9);
  for (int k = 2; s->moment && k < 4; k++) lw_working_bound(working, &steps[k], bound, 9);
}

void lw_construction_stand_off(const lw_construction_site *site, const lw_construction *construction,
                               const lw_plant *plant, lw_stand_off *stand_off, const lw_working *working) {
  allowance allowed[ALLOWANCES];
  double farthest = 0.0;
  search decides = {.name = NULL};
  *stand_off = (lw_stand_off){.reason = LW_REASON_NONE};
  if (touching_holds(site, construction, plant)) {
    set(site, plant, stand_off, 0.0);
    return;
  }
  int count = gather(site, construction, allowed);
  for (int i = 0; i < 2 * count; i++) {
    search s = {.name = plant->name[0] ? plant->name : "plant",
                .foot = foot_of(plant),
                .allowed = allowed[i / 2],
                .moment = i % 2 == 1};
    double distance = distance_for(&s);
    if (distance < 0.0) {
      stand_off->reason = LW_REASON_NO_STAND_OFF;
      return;
    }
    if (distance > farthest) decides = s;
    farthest = fmax(farthest, distance);
  }
  set(site, plant, stand_off, farthest);
  if (working != NULL && farthest > NEAREST_M) write(site, construction, &decides, farthest, working);
}
