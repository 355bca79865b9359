/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "diagram.h"

#include <math.h>

#include "profile.h"

/* The pressure of one way at one depth, read off its thrust's own profile. */

static const lw_number UNKNOWN = {0.0, false};

const lw_plane *lw_way_plane(const lw_diagram *diagram, lw_way way) {
  return diagram->way[way].upright ? &diagram->asked.upright : &diagram->asked.back;
}

double lw_way_above(const lw_diagram *diagram, lw_way way) {
  return lw_way_plane(diagram, way)->height_m - diagram->asked.back.height_m;
}

lw_stress_down lw_stress_down_to(const lw_plane *plane, double depth_m) {
  lw_stress_down at = {0.0, 0.0};
  for (double depth = 0.0; depth < depth_m;) {
    int i = lw_layer_at(plane, depth);
    bool wet = depth >= plane->water_depth_m;
    double next = fmin(depth_m, plane->layer[i].bottom_m), run;
    if (!wet) next = fmin(next, plane->water_depth_m);
    run = next - depth;
    double more = lw_layer_weight(plane, i, wet) * run;
    at.sum_kn_per_m += (at.kpa + 0.5 * more) * run;
    at.kpa += more;
    depth = next;
  }
  return at;
}

/* The stretch of the profile that holds a depth: at a boundary the upper one, or the lower. */
static const lw_profile_point *stretch_at(const lw_thrust *thrust, double depth_m, bool below) {
  static const double SAME_M = 1e-9;
  const lw_profile_point *found = NULL;
  for (int i = 0; i + 1 < thrust->profile_count; i += 2) {
    const lw_profile_point *pair = &thrust->profile[i];
    bool holds = depth_m >= pair[0].depth_m - SAME_M && depth_m <= pair[1].depth_m + SAME_M;
    bool empty = pair[1].depth_m - pair[0].depth_m <= SAME_M;
    if (!holds || empty) continue;
    if (found == NULL || below) found = pair;
    if (!below) break;
  }
  return found;
}

static double between(double top, double bottom, double share) {
  return top + share * (bottom - top);
}

/* Cohesion under a slope by Rankine: the profile has the ends of a curve, the formula what lies between. */
static bool is_curved(const lw_diagram *diagram, lw_way way, int layer) {
  const lw_plane *plane = lw_way_plane(diagram, way);
  bool rankine = diagram->way[way].routine == lw_pressure_routine_of(LW_PRESSURE_RANKINE);
  return rankine && fabs(plane->slope_rad) > 1e-12 && plane->layer[layer].cohesion_kpa > 0.0 &&
         plane->crack != LW_CRACK_TRIANGLE;
}

static double on_curve(const lw_plane *plane, lw_earth_state state, int layer, double stress_kpa) {
  double kpa = 0.0;
  if (lw_rankine_pressure(state, &plane->layer[layer], plane->slope_rad, fmax(stress_kpa, 0.0), &kpa, NULL) !=
      LW_OK)
    return 0.0;
  return fmax(kpa, 0.0);
}

lw_way_pressure lw_way_pressure_at(const lw_diagram *diagram, lw_way way, double depth_m, bool below) {
  const lw_diagram_way *w = &diagram->way[way];
  const lw_plane *plane = lw_way_plane(diagram, way);
  const lw_profile_point *pair = w->known ? stretch_at(&w->thrust, depth_m, below) : NULL;
  if (pair == NULL) return (lw_way_pressure){UNKNOWN, UNKNOWN};
  double run = pair[1].depth_m - pair[0].depth_m, share = (depth_m - pair[0].depth_m) / run;
  double soil = between(pair[0].soil_kpa, pair[1].soil_kpa, share);
  double uniform = between(pair[0].surcharge_kpa, pair[1].surcharge_kpa, share);
  int layer = lw_layer_at(plane, 0.5 * (pair[0].depth_m + pair[1].depth_m));
  bool pushes = pair[0].soil_kpa > 0.0 || pair[1].soil_kpa > 0.0;
  if (pushes && is_curved(diagram, way, layer)) {
    double weight = lw_stress_down_to(plane, depth_m).kpa;
    soil = on_curve(plane, w->state, layer, weight + plane->surcharge_kpa);
    uniform = soil - on_curve(plane, w->state, layer, weight);
  }
  double level = cos(w->thrust.angle_rad);
  return (lw_way_pressure){{soil * level, true}, {uniform * level, true}};
}

lw_number lw_diagram_soil_kpa(const lw_diagram *diagram, lw_way way, double depth_m, bool below) {
  return lw_way_pressure_at(diagram, way, depth_m + lw_way_above(diagram, way), below).soil_kpa;
}
