/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "diagram.h"

#include <assert.h>
#include <math.h>

#include "base/angles.h"
#include "base/print.h"
#include "base/working.h"
#include "elastic_at_record.h"
#include "elastic_record.h"
#include "methods.h"
#include "profile.h"

/* Every method on its plane. */

const char *lw_way_slug(lw_way way) {
  static const char *const SLUGS[] = {
#define LW_WAY_SLUG(name, slug) slug,
      LW_WAYS(LW_WAY_SLUG)
#undef LW_WAY_SLUG
  };
  assert((size_t)way < sizeof SLUGS / sizeof *SLUGS);
  return SLUGS[way];
}

static const lw_pressure_routine *routine_of(lw_way way) {
  switch (way) {
  case LW_WAY_RANKINE:
  case LW_WAY_PASSIVE_RANKINE: return lw_pressure_routine_of(LW_PRESSURE_RANKINE);
  case LW_WAY_COULOMB:
  case LW_WAY_PASSIVE_COULOMB: return lw_pressure_routine_of(LW_PRESSURE_COULOMB);
  case LW_WAY_WEDGE:
  case LW_WAY_PASSIVE_WEDGE: return lw_pressure_routine_of(LW_PRESSURE_WEDGE);
  case LW_WAY_LOG_SPIRAL:
  case LW_WAY_PASSIVE_LOG_SPIRAL: return lw_passive_routine_of(LW_PASSIVE_LOG_SPIRAL);
  case LW_WAY_AT_REST: return lw_pressure_routine_of(LW_PRESSURE_AT_REST);
  case LW_WAY_ANNEX_C:
  case LW_WAY_PASSIVE_ANNEX_C:
  case LW_WAY_COUNT: break;
  }
  return lw_passive_routine_of(LW_PASSIVE_ANNEX_C);
}

static lw_earth_state state_of(lw_way way) {
  if (way == LW_WAY_AT_REST) return LW_AT_REST;
  return way >= LW_WAY_PASSIVE_RANKINE ? LW_PASSIVE : LW_ACTIVE;
}

static bool is_upright(lw_way way) {
  return way == LW_WAY_RANKINE || way == LW_WAY_PASSIVE_RANKINE || way == LW_WAY_AT_REST;
}

static bool is_wedge(const lw_diagram_way *w) {
  return w->routine == lw_pressure_routine_of(LW_PRESSURE_WEDGE);
}

static lw_load_pressure theory_of(lw_load_pressure by, lw_earth_state state) {
  if (by != LW_LOAD_PRESSURE_OWN) return by;
  return state == LW_AT_REST ? LW_LOAD_PRESSURE_DOUBLED : LW_LOAD_PRESSURE_HALF_SPACE;
}

/* One layer by itself over the whole plane, as the table of a book has it. */
static lw_number layer_k(const lw_diagram_way *w, const lw_plane *plane, int layer) {
  lw_plane alone = *plane;
  lw_thrust thrust;
  alone.layer_count = 1;
  alone.layer[0] = plane->layer[layer];
  alone.layer[0].bottom_m = INFINITY;
  alone.layer[0].cohesion_kpa = 0.0;
  alone.water_depth_m = alone.slope_run_m = INFINITY;
  alone.load_count = 0;
  alone.surcharge_kpa = 0.0;
  alone.seismic = (lw_seismic){0};
  if (w->routine->thrust(w->state, &alone, &thrust, NULL, NULL) != LW_OK) return (lw_number){0.0, false};
  double weight = 0.5 * alone.layer[0].unit_weight_kn_per_m3 * alone.height_m * alone.height_m;
  if (!(weight > 0.0)) return (lw_number){0.0, false}; /* lower than any number */
  return (lw_number){is_wedge(w) ? thrust.total_kn_per_m / weight : thrust.coefficient, true};
}

/* A load per horizontal area on a battered back counts by Coulomb's figure of it. */
static lw_number mean_k(const lw_diagram_way *w, const lw_plane *plane) {
  double theta = plane->batter_rad, beta = plane->slope_rad;
  double share = w->upright ? 1.0 : cos(theta) * cos(beta) / cos(theta - beta);
  double sum =
      lw_stress_down_to(plane, plane->height_m).sum_kn_per_m + share * plane->surcharge_kpa * plane->height_m;
  if (!(sum > 0.0)) return (lw_number){0.0, false}; /* soil that the water carries presses on nothing */
  return (lw_number){(w->thrust.total_kn_per_m - w->thrust.seismic_kn_per_m) / sum, true};
}

static void set_level(lw_diagram_way *w, double force, double moment) {
  w->level_kn_per_m = force;
  w->level_height_m = fabs(force) > 0.0 ? moment / force : 0.0;
}

/* What loads of limited width add to the wedge that carries them. */
static void load_wedge(const lw_plane *plane, lw_diagram_way *w, const lw_working *working) {
  lw_thrust with;
  double level = w->thrust.horizontal_kn_per_m, moment = level * w->thrust.height_of_action_m;
  set_level(w, level, moment);
  if (plane->load_count == 0 || w->state != LW_ACTIVE) return;
  if (w->routine->thrust(w->state, plane, &with, &w->error, working) != LW_OK) return;
  double more = with.horizontal_kn_per_m - level, turns = with.horizontal_kn_per_m * with.height_of_action_m;
  set_level(w, with.horizontal_kn_per_m, turns);
  w->loads.push_kn_per_m = fmax(more, 0.0);
  if (more > 1e-9) w->loads.height_m = fmin(fmax((turns - moment) / more, 0.0), plane->height_m);
}

/* Beside a formula the loads push by elasticity, unless the wedge alone is to carry them. */
static void load_formula(const lw_plane *plane, lw_load_pressure by, lw_diagram_way *w) {
  double level = w->thrust.horizontal_kn_per_m, moment = level * w->thrust.height_of_action_m;
  bool apart = w->state != LW_PASSIVE && by != LW_LOAD_PRESSURE_WEDGE && plane->load_count > 0;
  if (apart) w->loads = lw_elastic_push_on(plane, by);
  set_level(w, level + w->loads.push_kn_per_m, moment + w->loads.push_kn_per_m * w->loads.height_m);
}

/* A back that leans far and is rough is held down and back by what lies on it. */
static bool pushes_level(lw_diagram_way *w) {
  if (fabs(w->thrust.angle_rad) < LW_HALF_PI - 1e-3) return true;
  lw_error_set(&w->error, LW_NO_SOLUTION, LW_REASON_ANGLE_OUT_OF_RANGE,
               "batter and friction of the back turn the thrust past the upright: nothing pushes level");
  return false;
}

static void find_way(lw_diagram *d, lw_way way, const lw_working *working) {
  lw_diagram_way *w = &d->way[way];
  *w = (lw_diagram_way){.routine = routine_of(way), .state = state_of(way), .upright = is_upright(way)};
  const lw_plane *plane = lw_way_plane(d, way);
  lw_plane bare = *plane;
  bare.load_count = 0;
  w->known = w->routine->thrust(w->state, &bare, &w->thrust, &w->error, working) == LW_OK && pushes_level(w);
  for (int i = 0; i < plane->layer_count; i++)
    w->layer_k[i] = w->known ? layer_k(w, plane, i) : (lw_number){0.0, false};
  if (!w->known) return;
  w->mean_k = mean_k(w, plane);
  if (is_wedge(w))
    load_wedge(plane, w, working);
  else
    load_formula(plane, theory_of(d->asked.loads_by, w->state), w);
}

/* For an upright back and level ground two closed forms of the passive value are published besides. */
static void find_published(lw_diagram *d) {
  const lw_plane *back = &d->asked.back;
  bool plain = fabs(back->batter_rad) < 1e-12 && fabs(back->slope_rad) < 1e-12;
  for (int i = 0; i < LW_SOIL_MAX; i++) {
    lw_number *ufc = &d->ufc_kp[i], *low = &d->lancellotta_kp[i];
    *ufc = *low = (lw_number){0.0, false};
    if (!plain || i >= back->layer_count) continue;
    double phi = back->layer[i].friction_rad, delta = back->wall_friction_rad;
    ufc->known = lw_ufc_passive_coefficient(phi, delta, &ufc->value, NULL) == LW_OK;
    low->known = lw_lancellotta_coefficient(phi, delta, &low->value, NULL) == LW_OK;
    if (low->known) low->value /= cos(delta); /* of the whole thrust, as the others are */
  }
}

/* What comes on top of every way: standing water, and loads where the wedge alone does not carry them. */
static void find_beside(lw_diagram *d) {
  const lw_plane *back = &d->asked.back;
  lw_thrust open = {0};
  lw_thrust_add_water(back, &open);
  d->water_kn_per_m = open.water_kn_per_m;
  d->loads = (lw_elastic){0};
  if (d->loads_by != LW_LOAD_PRESSURE_WEDGE) d->loads = lw_elastic_push_on(back, d->loads_by);
}

/* Each load's push on the back, and its pressure at every even step of depth. */
static void record_loads(const lw_diagram *d, const lw_working *working) {
  const lw_plane *back = &d->asked.back;
  if (working == NULL || back->load_count == 0 || d->loads_by == LW_LOAD_PRESSURE_WEDGE) return;
  lw_elastic_record(back, d->loads_by, &d->loads, working);
  for (int i = 0; i < back->load_count; i++) {
    char title[96];
    lw_print(title, sizeof title, "Load at a distance %d of %d, level pressure pe in tenths of the height",
             i + 1, back->load_count);
    lw_working_heading(working, title);
    for (int k = 1; k <= LW_DIAGRAM_STEPS; k++) {
      char symbol[8];
      lw_print(symbol, sizeof symbol, "pe%d", k);
      lw_elastic_at_record(back, i, d->loads_by, back->height_m * k / LW_DIAGRAM_STEPS, symbol, working);
    }
  }
}

lw_diagram_asked lw_diagram_ask(const lw_plane *back) {
  lw_diagram_asked asked = {.back = *back, .upright = *back, .loads_by = LW_LOAD_PRESSURE_OWN};
  asked.back.along_ground = false;
  asked.upright.along_ground = true;
  asked.upright.batter_rad = 0.0;
  asked.upright.wall_friction_rad = back->slope_rad;
  for (int i = 0; i < LW_SITE_LOAD_MAX; i++) asked.load_number[i] = i + 1;
  return asked;
}

/* Planes that no formula may be asked about have no answer at all. */
static void refuse(lw_diagram *d, const lw_error *error) {
  for (int i = 0; i < LW_WAY_COUNT; i++)
    d->way[i] = (lw_diagram_way){.routine = routine_of((lw_way)i),
                                 .state = state_of((lw_way)i),
                                 .upright = is_upright((lw_way)i),
                                 .error = *error};
  for (int i = 0; i < LW_SOIL_MAX; i++) d->ufc_kp[i] = d->lancellotta_kp[i] = (lw_number){0.0, false};
  d->back_differs = d->upright_differs = LW_DIFFER_NOT;
  d->loads = (lw_elastic){0};
  d->water_kn_per_m = 0.0;
  d->depth_count = 0;
}

void lw_diagram_find(const lw_diagram_asked *asked, lw_diagram *diagram, const lw_working *working) {
  lw_error error = {0};
  diagram->asked = *asked;
  diagram->loads_by = theory_of(asked->loads_by, LW_ACTIVE);
  if (lw_plane_hold(&asked->back, &error) != LW_OK || lw_plane_hold(&asked->upright, &error) != LW_OK) {
    refuse(diagram, &error);
    return;
  }
  diagram->back_differs = lw_plane_difference(&asked->back);
  diagram->upright_differs = lw_plane_difference(&asked->upright);
  for (int i = 0; i < LW_WAY_COUNT; i++) find_way(diagram, (lw_way)i, working);
  find_beside(diagram);
  record_loads(diagram, working);
  find_published(diagram);
  lw_diagram_fill_depths(diagram);
}
