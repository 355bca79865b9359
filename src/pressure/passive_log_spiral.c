/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/passive.h>

#include <math.h>

/* A body above a logarithmic spiral through the foot. Whatever the soil does along the spiral, its reaction
 * passes through the pole, so moments about the pole give the thrust. Axes at the foot, x into the soil, y
 * up; the wall is one unit high and the soil weighs one. [TERZAGHI-1943 spiral] */

static const double HALF_PI = 1.57079632679489661923;
enum { TURNS = 24, CHORDS = 24 };

/* How far the spiral may turn about its pole, to either side. */
static const double LEAST_TURN = -1.2, MOST_TURN = 2.6;

typedef struct spiral {
  double growth;   /* of the radius: tan φ, towards the ground when passive */
  double sign;     /* 1 active, -1 passive */
  lw_corner top;   /* of the back */
  lw_corner third; /* where the thrust acts */
  lw_corner push;  /* unit vector of the wall's push on the soil */
  double slope_rad;
  double turn_rad; /* of the spiral, from foot to ground */
} spiral;

static lw_corner towards(double angle_rad) {
  return (lw_corner){cos(angle_rad), sin(angle_rad)};
}

static double cross(lw_corner a, lw_corner b) {
  return a.x_m * b.y_m - a.y_m * b.x_m;
}

static lw_corner less(lw_corner a, lw_corner b) {
  return (lw_corner){a.x_m - b.x_m, a.y_m - b.y_m};
}

/* Moment of a triangle's area about the pole, one corner of which is the pole. */
static double triangle_moment(lw_corner a, lw_corner b) {
  return 0.5 * cross(a, b) * (a.x_m + b.x_m) / 3.0;
}

/* The same of the sector between the spiral and the pole: 1/3 of the integral of r³ cos α. */
static double sector_moment(const spiral *s, double radius, double from_rad) {
  double rate = 3.0 * s->growth, to = from_rad + s->turn_rad;
  double at_end = exp(rate * s->turn_rad) * (rate * cos(to) + sin(to));
  double at_foot = rate * cos(from_rad) + sin(from_rad);
  return radius * radius * radius / 3.0 * (at_end - at_foot) / (1.0 + rate * rate);
}

/* The spiral leaves the foot into the soil, and reaches the ground from below, for the first time. */
static bool within_soil(const spiral *s, double from_rad) {
  double quarter = s->turn_rad > 0.0 ? HALF_PI : -HALF_PI, slant = atan(s->growth);
  lw_corner at_foot = towards(from_rad + quarter - slant);
  lw_corner at_end = towards(from_rad + s->turn_rad + quarter - slant), ground = towards(s->slope_rad);
  return cross(at_foot, s->top) > 0.0 && cross(ground, at_end) > 0.0;
}

/* Thrust for a chord at this angle from foot to ground; NAN where the body or the balance does not exist. */
static double thrust_along(const spiral *s, double chord_rad) {
  lw_corner ground = {-sin(s->slope_rad), cos(s->slope_rad)}, chord = towards(chord_rad);
  double rises = chord.x_m * ground.x_m + chord.y_m * ground.y_m;
  if (rises <= 1e-9) return NAN;
  double length = (s->top.x_m * ground.x_m + s->top.y_m * ground.y_m) / rises;
  double grown = exp(s->growth * s->turn_rad);
  lw_corner v = {grown * cos(s->turn_rad) - 1.0, grown * sin(s->turn_rad)};
  double radius = length / hypot(v.x_m, v.y_m), from = chord_rad - atan2(v.y_m, v.x_m);
  if (!within_soil(s, from)) return NAN;
  lw_corner foot = {radius * cos(from), radius * sin(from)}; /* seen from the pole */
  lw_corner pole = {-foot.x_m, -foot.y_m};
  lw_corner end = less((lw_corner){length * chord.x_m, length * chord.y_m}, pole);
  lw_corner top = less(s->top, pole);
  double weight = sector_moment(s, radius, from) + triangle_moment(end, top) + triangle_moment(top, foot);
  double arm = cross(less(s->third, pole), s->push);
  double thrust = weight / arm;
  return thrust > 0.0 && arm * s->turn_rad > 0.0 ? thrust : NAN;
}

static double along_chord(double chord_rad, const void *context) {
  const spiral *s = context;
  return -s->sign * thrust_along(s, chord_rad);
}

/* The worst chord for one turn of the spiral. */
static double for_turn(double turn_rad, const void *context) {
  spiral s = *(const spiral *)context;
  lw_minimum least;
  s.turn_rad = turn_rad;
  double high = HALF_PI - atan(s.top.x_m) - 1e-6, low = s.slope_rad + 1e-3;
  if (fabs(turn_rad) < 1e-3 || !(low < high)) return NAN;
  return lw_solve_minimum(along_chord, &s, low, high, CHORDS, &least) == LW_OK ? least.value : NAN;
}

lw_status lw_log_spiral_coefficient(lw_earth_state state, const lw_wall_angles *angles, double *k,
                                    lw_error *error) {
  double plane_k = NAN, sign = state == LW_PASSIVE ? -1.0 : 1.0;
  lw_error why = {0};
  lw_status plane = lw_coulomb_coefficient(state, angles, &plane_k, &why);
  if (plane != LW_OK && why.reason != LW_REASON_NO_WEDGE)
    return lw_error_set(error, plane, why.reason, "%s", why.text);
  double lean = angles->batter_rad + sign * angles->wall_friction_rad, tilt = tan(angles->batter_rad);
  spiral s = {.growth = -sign * tan(angles->friction_rad),
              .sign = sign,
              .top = {-tilt, 1.0},
              .third = {-tilt / 3.0, 1.0 / 3.0},
              .push = towards(lean),
              .slope_rad = angles->slope_rad};
  lw_minimum least;
  bool found = lw_solve_minimum(for_turn, &s, LEAST_TURN, MOST_TURN, TURNS, &least) == LW_OK;
  if (!found && plane != LW_OK)
    return lw_error_set(error, plane, why.reason, "no spiral and no plane resists at these angles");
  double curved = found ? -sign * least.value * 2.0 : plane_k;
  bool straight = plane == LW_OK && (sign > 0.0 ? plane_k >= curved : plane_k <= curved);
  *k = straight ? plane_k : curved;
  return LW_OK;
}
