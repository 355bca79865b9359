/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "profile.h"

#include <assert.h>
#include <math.h>

#include "base/extremes.h"
#include "base/integral.h"
#include "profile_record.h"

/* A stretch of the plane within one layer, above or below the water: stress and pressure are smooth on it. */
typedef struct stretch {
  double top_m, bottom_m;
  double stress_kpa, gradient; /* vertical effective stress of the soil at its top, and its rise per metre */
  int layer;
  double k;
} stretch;

/* Running sums: force and its moment about the plane's top. Told keeps what the working asks for. */
typedef struct tally {
  double force, moment, load_force, load_moment, crack_m;
  lw_told *told;
} tally;

/* A pressure down a stretch to be integrated: the whole, or what the uniform load makes of it. */
typedef struct curve {
  const lw_plane *plane;
  const lw_law *law;
  const stretch *s;
  bool of_load, moment;
} curve;

int lw_layer_at(const lw_plane *plane, double depth_m) {
  int i = 0;
  while (i < plane->layer_count - 1 && depth_m >= plane->layer[i].bottom_m) i++;
  return i;
}

double lw_layer_weight(const lw_plane *plane, int layer, bool wet) {
  const lw_layer *soil = &plane->layer[layer];
  return wet ? soil->saturated_unit_weight_kn_per_m3 - plane->water_unit_weight_kn_per_m3
             : soil->unit_weight_kn_per_m3;
}

double lw_layer_moved(const lw_plane *plane, int layer, bool wet) {
  const lw_layer *soil = &plane->layer[layer];
  return wet && !plane->seismic.pervious ? soil->saturated_unit_weight_kn_per_m3
                                         : soil->unit_weight_kn_per_m3;
}

double lw_layer_turned(const lw_plane *plane, int layer, bool wet) {
  if (plane->seismic.horizontal <= 0.0) return 0.0;
  double weight = (1.0 - plane->seismic.vertical) * lw_layer_weight(plane, layer, wet);
  return atan2(plane->seismic.horizontal * lw_layer_moved(plane, layer, wet), weight);
}

void lw_thrust_resolve(lw_thrust *thrust) {
  thrust->horizontal_kn_per_m = thrust->total_kn_per_m * cos(thrust->angle_rad);
  thrust->vertical_kn_per_m = thrust->total_kn_per_m * sin(thrust->angle_rad);
}

static double load_stress(const lw_plane *plane, const lw_law *law) {
  return plane->surcharge_kpa * law->surcharge_factor;
}

static bool is_curved(const lw_plane *plane, const lw_law *law, const stretch *s) {
  return law->curved && plane->layer[s->layer].cohesion_kpa > 0.0;
}

static double pressure_under(const lw_plane *plane, const lw_law *law, const stretch *s, double depth_m,
                             double load_kpa) {
  double stress = s->stress_kpa + s->gradient * (depth_m - s->top_m) + load_kpa;
  if (is_curved(plane, law, s)) return law->curved(&plane->layer[s->layer], plane->slope_rad, stress);
  return s->k * stress - law->cut_kpa[s->layer];
}

static double pressure_at(const lw_plane *plane, const lw_law *law, const stretch *s, double depth_m) {
  return pressure_under(plane, law, s, depth_m, load_stress(plane, law));
}

/* What the load adds: soil that would stand by itself without it pushes by the load alone. */
static double load_share(const lw_plane *plane, const lw_law *law, const stretch *s, double depth_m) {
  double alone = pressure_under(plane, law, s, depth_m, 0.0);
  if (alone >= 0.0 && !is_curved(plane, law, s)) return s->k * load_stress(plane, law);
  return lw_larger(pressure_at(plane, law, s, depth_m), 0.0) - lw_larger(alone, 0.0);
}

static double curve_value(double depth_m, const void *context) {
  const curve *c = context;
  double p =
      c->of_load ? load_share(c->plane, c->law, c->s, depth_m) : pressure_at(c->plane, c->law, c->s, depth_m);
  return c->moment ? p * depth_m : p;
}

static double unloaded_pressure(double depth_m, const void *context) {
  const curve *c = context;
  return pressure_under(c->plane, c->law, c->s, depth_m, 0.0);
}

/* Where pressure turns from tension to push inside a stretch: above it the soil stands by itself. */
static double push_starts(const lw_plane *plane, const lw_law *law, const stretch *s, bool loaded) {
  curve c = {plane, law, s, false, false};
  lw_function pressure = loaded ? curve_value : unloaded_pressure;
  double at = s->bottom_m;
  if (pressure(s->top_m, &c) >= 0.0) return s->top_m;
  if (pressure(s->bottom_m, &c) <= 0.0) return s->bottom_m;
  (void)lw_solve_root(pressure, &c, s->top_m, s->bottom_m, 1e-13, &at);
  return at;
}

/* Where push turns to tension: fill that is lighter than water weighs less and less below it. */
static double push_ends(const lw_plane *plane, const lw_law *law, const stretch *s) {
  curve c = {plane, law, s, false, false};
  double at = s->bottom_m;
  if (s->gradient < 0.0 && curve_value(s->bottom_m, &c) < 0.0)
    (void)lw_solve_root(curve_value, &c, s->top_m, s->bottom_m, 1e-13, &at);
  return at;
}

static void add_straight(double top_m, double bottom_m, double p_top, double p_bottom, tally *sum) {
  double run = bottom_m - top_m;
  sum->force += 0.5 * (p_top + p_bottom) * run;
  sum->moment += run * (p_top * (2.0 * top_m + bottom_m) + p_bottom * (top_m + 2.0 * bottom_m)) / 6.0;
}

/* Force and moment of a curve between two depths; by the triangle of a crack its ends and a straight line. */
static void integrate(curve c, double top_m, double bottom_m, double *force, double *moment) {
  tally sum = {0};
  if (is_curved(c.plane, c.law, c.s) && c.plane->crack != LW_CRACK_TRIANGLE) {
    sum.force = lw_gauss_integral(curve_value, &c, top_m, bottom_m);
    c.moment = true;
    sum.moment = lw_gauss_integral(curve_value, &c, top_m, bottom_m);
  } else {
    add_straight(top_m, bottom_m, curve_value(top_m, &c), curve_value(bottom_m, &c), &sum);
  }
  *force += sum.force;
  *moment += sum.moment;
}

/* Top and bottom of a piece that lies in one stretch. */
static void add_points(const lw_plane *plane, const lw_law *law, const stretch *s, bool cracked,
                       lw_thrust *thrust) {
  const double depth[] = {s->top_m, s->bottom_m};
  for (int i = 0; i < 2; i++)
    thrust->profile[thrust->profile_count++] =
        (lw_profile_point){.depth_m = depth[i],
                           .soil_kpa = cracked ? 0.0 : lw_larger(pressure_at(plane, law, s, depth[i]), 0.0),
                           .surcharge_kpa = cracked ? 0.0 : load_share(plane, law, s, depth[i])};
}

/* Of two pairs that follow each other the middle, put on the line between the ends: by the triangle of a
 * crack that line is what is summed. */
static void straighten(lw_profile_point *pair) {
  double share = (pair[1].depth_m - pair[0].depth_m) / (pair[3].depth_m - pair[0].depth_m);
  pair[1].soil_kpa = pair[2].soil_kpa = pair[0].soil_kpa + share * (pair[3].soil_kpa - pair[0].soil_kpa);
}

/* One point of a stretch, for the working. */
static void tell_point(const lw_plane *plane, const lw_law *law, const stretch *s, double depth_m,
                       lw_told *told) {
  double stress = s->stress_kpa + s->gradient * (depth_m - s->top_m) + load_stress(plane, law);
  assert(told->count < LW_TOLD_MAX);
  told->point[told->count++] =
      (lw_told_point){.depth_m = depth_m,
                      .stress_kpa = stress,
                      .soil_kpa = lw_larger(pressure_at(plane, law, s, depth_m), 0.0),
                      .load_kpa = load_share(plane, law, s, depth_m),
                      .layer = s->layer,
                      .wet = s->top_m >= plane->water_depth_m,
                      .begins = depth_m <= s->top_m,
                      .curved = is_curved(plane, law, s),
                      .k = s->k,
                      .cut_kpa = law->cut_kpa[s->layer],
                      .weight_kn_per_m3 = s->gradient};
}

/* The points between two depths, the first left out: a curve has five, for Simpson's rule. */
static void tell_points(const lw_plane *plane, const lw_law *law, const stretch *s, double from_m,
                        double to_m, lw_told *told) {
  bool bends = is_curved(plane, law, s) && plane->crack != LW_CRACK_TRIANGLE;
  int steps = bends ? 4 : 1;
  if (to_m <= from_m) return;
  for (int i = 1; i <= steps; i++)
    tell_point(plane, law, s, i < steps ? from_m + (to_m - from_m) * i / steps : to_m, told);
}

/* A stretch with what it has added to the sums since before; the load's part bends at one depth within. */
static void tell_stretch(const lw_plane *plane, const lw_law *law, const stretch *s, double bend_m,
                         const tally *before, const tally *sum) {
  lw_told *told = sum->told;
  if (told == NULL) return;
  int first = told->count;
  double bend = lw_larger(lw_smaller(bend_m, s->bottom_m), s->top_m), foot = plane->height_m;
  tell_point(plane, law, s, s->top_m, told);
  tell_points(plane, law, s, s->top_m, bend, told);
  tell_points(plane, law, s, bend, s->bottom_m, told);
  lw_told_point *last = &told->point[told->count - 1];
  for (lw_told_point *p = &told->point[first + 1]; p < last; p++)
    p->skipped = p->curved && plane->crack == LW_CRACK_TRIANGLE;
  last->ends = true;
  last->area = sum->force - before->force;
  last->moment = last->area * foot - (sum->moment - before->moment);
  last->load_area = sum->load_force - before->load_force;
  last->load_moment = last->load_area * foot - (sum->load_moment - before->load_moment);
}

/* What the load makes of the part of a stretch that pushes: all of it down to where the soil would push
 * without it, and so it is drawn. */
static void add_load(const lw_plane *plane, const lw_law *law, const stretch *s, lw_thrust *thrust,
                     tally *sum, const tally *before) {
  bool cohesive = plane->layer[s->layer].cohesion_kpa > 0.0 && load_stress(plane, law) > 0.0;
  double from = cohesive ? push_starts(plane, law, s, false) : s->top_m;
  curve load = {plane, law, s, true, false};
  if (from > s->top_m && from < s->bottom_m) {
    stretch upper = *s, lower = *s;
    upper.bottom_m = lower.top_m = from;
    lower.stress_kpa += s->gradient * (from - s->top_m);
    add_points(plane, law, &upper, false, thrust);
    add_points(plane, law, &lower, false, thrust);
    if (is_curved(plane, law, s) && plane->crack == LW_CRACK_TRIANGLE)
      straighten(&thrust->profile[thrust->profile_count - 4]);
  } else {
    add_points(plane, law, s, false, thrust);
  }
  integrate(load, s->top_m, from, &sum->load_force, &sum->load_moment);
  integrate(load, from, s->bottom_m, &sum->load_force, &sum->load_moment);
  tell_stretch(plane, law, s, from, before, sum);
}

/* Soil without cohesion, as in most walls: all of it pushes, and the load's part is even. */
static void add_loose(const lw_plane *plane, const lw_law *law, const stretch *s, lw_thrust *thrust,
                      tally *sum) {
  double load = s->k * load_stress(plane, law), run = s->bottom_m - s->top_m;
  double p_top = pressure_at(plane, law, s, s->top_m), p_bottom = pressure_at(plane, law, s, s->bottom_m);
  tally before = *sum;
  add_straight(s->top_m, s->bottom_m, p_top, p_bottom, sum);
  sum->load_force += load * run;
  sum->load_moment += load * 0.5 * (s->bottom_m * s->bottom_m - s->top_m * s->top_m);
  thrust->profile[thrust->profile_count++] = (lw_profile_point){s->top_m, p_top, load, 0.0};
  thrust->profile[thrust->profile_count++] = (lw_profile_point){s->bottom_m, p_bottom, load, 0.0};
  tell_stretch(plane, law, s, s->top_m, &before, sum);
}

/* A stretch from one of its depths to another. */
static stretch part_of(const stretch *s, double top_m, double bottom_m) {
  stretch part = *s;
  part.top_m = top_m;
  part.bottom_m = bottom_m;
  part.stress_kpa += s->gradient * (top_m - s->top_m);
  return part;
}

/* What does not push. */
static void add_open(const lw_plane *plane, const lw_law *law, stretch open, lw_thrust *thrust, tally *sum) {
  add_points(plane, law, &open, true, thrust);
  tell_stretch(plane, law, &open, open.bottom_m, sum, sum);
}

/* One stretch: cracked part without a push, the rest summed, both noted in the profile. */
static void add_stretch(const lw_plane *plane, const lw_law *law, stretch s, lw_thrust *thrust, tally *sum) {
  bool loose = plane->layer[s.layer].cohesion_kpa <= 0.0 && s.stress_kpa >= 0.0 && s.gradient >= 0.0;
  if (loose) {
    add_loose(plane, law, &s, thrust, sum);
    return;
  }
  double start = push_starts(plane, law, &s, true);
  if (start > s.top_m) {
    add_open(plane, law, part_of(&s, s.top_m, start), thrust, sum);
    sum->crack_m = lw_larger(sum->crack_m, start);
  }
  if (start >= s.bottom_m) return;
  stretch all = s;
  double end = push_ends(plane, law, &s);
  s = part_of(&s, start, end);
  curve whole = {plane, law, &s, false, false};
  tally before = *sum;
  integrate(whole, s.top_m, s.bottom_m, &sum->force, &sum->moment);
  add_load(plane, law, &s, thrust, sum, &before);
  if (end < all.bottom_m) add_open(plane, law, part_of(&all, end, all.bottom_m), thrust, sum);
}

static double next_break(const lw_plane *plane, double depth_m) {
  double next = lw_smaller(plane->height_m, plane->layer[lw_layer_at(plane, depth_m)].bottom_m);
  return plane->water_depth_m > depth_m ? lw_smaller(next, plane->water_depth_m) : next;
}

static void walk_down(const lw_plane *plane, const lw_law *law, lw_thrust *thrust, tally *sum) {
  double stress = 0.0;
  for (double depth = 0.0; depth < plane->height_m;) {
    int i = lw_layer_at(plane, depth);
    bool wet = depth >= plane->water_depth_m;
    double gradient = lw_layer_weight(plane, i, wet);
    stretch s = {depth,  next_break(plane, depth),
                 stress, gradient,
                 i,      wet && law->wet_differs ? law->k_wet[i] : law->k[i]};
    add_stretch(plane, law, s, thrust, sum);
    stress += gradient * (s.bottom_m - depth);
    depth = s.bottom_m;
    thrust->coefficient = s.k;
  }
}

/* Water that stands in the soil from one depth down to the foot. */
static void add_ground_water(const lw_plane *plane, double from_m, tally *water) {
  double weight = plane->water_unit_weight_kn_per_m3, surface = plane->water_depth_m;
  double from = lw_larger(from_m, surface), to = plane->height_m;
  if (from < to) add_straight(from, to, weight * (from - surface), weight * (to - surface), water);
}

/* A crack fills up to the ground, so what stands in it does not depend on the water behind; below its foot
 * only that water is left. */
void lw_thrust_add_water(const lw_plane *plane, lw_thrust *thrust) {
  double weight = plane->water_unit_weight_kn_per_m3;
  double crack = plane->crack == LW_CRACK_WET ? lw_smaller(thrust->crack_depth_m, plane->height_m) : 0.0;
  tally water = {0};
  add_straight(0.0, crack, 0.0, weight * crack, &water);
  add_ground_water(plane, crack, &water);
  thrust->water_kn_per_m = water.force;
  thrust->water_height_m = water.force > 0.0 ? plane->height_m - water.moment / water.force : 0.0;
  for (int i = 0; i + 1 < thrust->profile_count; i += 2) {
    lw_profile_point *pair = &thrust->profile[i];
    double surface = pair[1].depth_m <= crack + 1e-12 ? 0.0 : plane->water_depth_m;
    for (int k = 0; k < 2; k++) pair[k].water_kpa = weight * lw_larger(pair[k].depth_m - surface, 0.0);
  }
}

static void integrate_profile(const lw_plane *plane, const lw_law *law, double angle_rad, lw_told *told,
                              lw_thrust *thrust) {
  lw_thrust made = {0};
  tally sum = {.told = told};
  walk_down(plane, law, &made, &sum);
  made.angle_rad = angle_rad;
  made.total_kn_per_m = sum.force;
  made.height_of_action_m = sum.force > 0.0 ? plane->height_m - sum.moment / sum.force : 0.0;
  made.surcharge_kn_per_m = lw_smaller(sum.load_force, sum.force);
  made.surcharge_height_m = sum.load_force > 0.0 ? plane->height_m - sum.load_moment / sum.load_force : 0.0;
  made.crack_depth_m = sum.crack_m;
  lw_thrust_add_water(plane, &made);
  lw_thrust_resolve(&made);
  *thrust = made;
}

/* The points are kept only for who reads them. */
static void integrate_told(const lw_plane *plane, const lw_law *law, double angle_rad, lw_thrust *thrust) {
  lw_told told;
  told.count = 0;
  integrate_profile(plane, law, angle_rad, &told, thrust);
  lw_profile_record(plane, law, &told, thrust);
}

void lw_profile_integrate(const lw_plane *plane, const lw_law *law, double angle_rad, lw_thrust *thrust) {
  if (law->working != NULL)
    integrate_told(plane, law, angle_rad, thrust);
  else
    integrate_profile(plane, law, angle_rad, NULL, thrust);
}
