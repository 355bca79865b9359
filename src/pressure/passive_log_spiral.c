/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/pressure.h>

#include <math.h>

#include "base/angles.h"
#include "base/bound.h"
#include "base/solve.h"
#include "base/working.h"
#include "coulomb.h"

/* A body above a logarithmic spiral through the foot. Whatever the soil does along the spiral, its reaction
 * passes through the pole, so moments about the pole give the thrust. Axes at the foot, x into the soil, y
 * up; the wall is one unit high and the soil weighs one. [TERZAGHI-1943 spiral] */

enum { TURNS = 24, CHORDS = 24, FINE = 8 };

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
  const lw_wall_angles *angles;
  const lw_working *working; /* while it is searched for: NULL */
} spiral;

/* One body of soil above a spiral, with its balance of moments. */
typedef struct body {
  double chord_rad, chord, growth; /* from foot to ground; by how much the radius grows over it */
  double radius, from_rad;         /* to the foot, and its direction, from the pole */
  lw_corner foot, end, top;        /* from the pole */
  double sector, triangles, arm, thrust;
} body;

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
  double quarter = s->turn_rad > 0.0 ? LW_HALF_PI : -LW_HALF_PI, slant = atan(s->growth);
  lw_corner at_foot = towards(from_rad + quarter - slant);
  lw_corner at_end = towards(from_rad + s->turn_rad + quarter - slant), ground = towards(s->slope_rad);
  return cross(at_foot, s->top) > 0.0 && cross(ground, at_end) > 0.0;
}

static void write(const spiral *s, const body *b);

/* Thrust for a chord at this angle from foot to ground; NAN where the body or the balance does not exist. */
static double thrust_along(const spiral *s, double chord_rad) {
  body b = {.chord_rad = chord_rad, .growth = exp(s->growth * s->turn_rad)};
  lw_corner ground = {-sin(s->slope_rad), cos(s->slope_rad)}, chord = towards(chord_rad);
  double rises = chord.x_m * ground.x_m + chord.y_m * ground.y_m;
  b.chord = (s->top.x_m * ground.x_m + s->top.y_m * ground.y_m) / rises;
  lw_corner v = {b.growth * cos(s->turn_rad) - 1.0, b.growth * sin(s->turn_rad)};
  b.radius = b.chord / hypot(v.x_m, v.y_m);
  b.from_rad = chord_rad - atan2(v.y_m, v.x_m);
  if (!within_soil(s, b.from_rad)) return NAN;
  b.foot = (lw_corner){b.radius * cos(b.from_rad), b.radius * sin(b.from_rad)};
  lw_corner pole = {-b.foot.x_m, -b.foot.y_m};
  b.end = less((lw_corner){b.chord * chord.x_m, b.chord * chord.y_m}, pole);
  b.top = less(s->top, pole);
  b.sector = sector_moment(s, b.radius, b.from_rad);
  b.triangles = triangle_moment(b.end, b.top) + triangle_moment(b.top, b.foot);
  b.arm = cross(less(s->third, pole), s->push);
  b.thrust = (b.sector + b.triangles) / b.arm;
  if (s->working != NULL) write(s, &b);
  return b.thrust > 0.0 && b.arm * s->turn_rad > 0.0 ? b.thrust : NAN;
}

static double along_chord(double chord_rad, const void *context) {
  const spiral *s = context;
  return -s->sign * thrust_along(s, chord_rad);
}

/* The worst chord for one turn of the spiral. */
static lw_status chord_for(const spiral *s, lw_minimum *least) {
  double high = LW_HALF_PI - atan(s->top.x_m) - 1e-6, low = s->slope_rad + 1e-3;
  if (fabs(s->turn_rad) < 1e-3 || !(low < high)) return LW_NO_SOLUTION;
  return lw_solve_minimum(along_chord, s, low, high, CHORDS, least);
}

static double for_turn(double turn_rad, const void *context) {
  spiral s = *(const spiral *)context;
  lw_minimum least;
  s.turn_rad = turn_rad;
  return chord_for(&s, &least) == LW_OK ? least.value : NAN;
}

/* The worst spiral once more, for whoever reads how it was worked out. */
static void write_worst(const spiral *worst, double turn_rad, const lw_working *working) {
  spiral s = *worst;
  lw_minimum least;
  s.turn_rad = turn_rad;
  if (working == NULL) return;
  (void)chord_for(&s, &least);
  s.working = working;
  (void)thrust_along(&s, least.x);
}

static void write_plane(lw_earth_state state, const lw_wall_angles *angles, double k,
                        const lw_working *working) {
  lw_working_heading(working, state == LW_PASSIVE ? "no spiral resists less than a plane"
                                                  : "no spiral pushes more than a plane");
  lw_coulomb_write(state, angles, k, working);
}

lw_status lw_log_spiral_coefficient(lw_earth_state state, const lw_wall_angles *angles, double *k,
                                    lw_error *error, const lw_working *working) {
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
              .slope_rad = angles->slope_rad,
              .angles = angles};
  lw_minimum least;
  bool found = lw_solve_minimum(for_turn, &s, LEAST_TURN, MOST_TURN, TURNS, &least) == LW_OK;
  if (!found && plane != LW_OK)
    return lw_error_set(error, plane, why.reason, "no spiral and no plane resists at these angles");
  double curved = found ? -sign * least.value * 2.0 : plane_k;
  bool straight = plane == LW_OK && (sign > 0.0 ? plane_k >= curved : plane_k <= curved);
  *k = straight ? plane_k : curved;
  if (straight)
    write_plane(state, angles, plane_k, working);
  else
    write_worst(&s, least.x, working);
  return LW_OK;
}

/* Lengths are shares of the wall's height, and the soil weighs one: the moments are plain numbers. */
static void write(const spiral *s, const body *b) {
  const lw_wall_angles *a = s->angles;
  bool passive = s->sign < 0.0;
  const lw_bound bound[] = {{"phi", a->friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"d", a->wall_friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"b", a->slope_rad * LW_DEG_PER_RAD, "deg"},
                            {"t", a->batter_rad * LW_DEG_PER_RAD, "deg"},
                            {"w", s->turn_rad * LW_DEG_PER_RAD, "deg"},
                            {"ch", b->chord_rad * LW_DEG_PER_RAD, "deg"},
                            {"rg", b->growth, ""},
                            {"lc", b->chord, ""},
                            {"r0", b->radius, ""},
                            {"a0", b->from_rad * LW_DEG_PER_RAD, "deg"},
                            {"xf", b->foot.x_m, ""},
                            {"yf", b->foot.y_m, ""},
                            {"xe", b->end.x_m, ""},
                            {"ye", b->end.y_m, ""},
                            {"xt", b->top.x_m, ""},
                            {"yt", b->top.y_m, ""},
                            {"Ms", b->sector, ""},
                            {"Mt", b->triangles, ""},
                            {"ar", b->arm, ""}};
  static const char SOURCE[] = "[TERZAGHI-1943 spiral]";
  const lw_step steps[] = {
      {"rg", passive ? "exp(pi w/180 tan phi)" : "exp(-pi w/180 tan phi)", NULL, b->growth, "", SOURCE},
      {"lc", "cos(b - t)/(cos t sin(ch - b))", NULL, b->chord, "", ""},
      {"r0", "lc/sqrt(rg^2 - 2 rg cos w + 1)", NULL, b->radius, "", ""},
      {"a0", s->turn_rad > 0.0 ? "ch - acos((rg cos w - 1) r0/lc)" : "ch + acos((rg cos w - 1) r0/lc)", NULL,
       b->from_rad * LW_DEG_PER_RAD, "deg", ""},
      {"xf", "r0 cos a0", NULL, b->foot.x_m, "", ""},
      {"yf", "r0 sin a0", NULL, b->foot.y_m, "", ""},
      {"xe", "xf + lc cos ch", NULL, b->end.x_m, "", ""},
      {"ye", "yf + lc sin ch", NULL, b->end.y_m, "", ""},
      {"xt", "xf - tan t", NULL, b->top.x_m, "", ""},
      {"yt", "yf + 1", NULL, b->top.y_m, "", ""},
      {"Ms",
       passive ? "r0^3/3 [rg^3 (3 tan phi cos(a0 + w) + sin(a0 + w)) - 3 tan phi cos a0 - sin a0]/"
                 "(1 + 9 tan^2 phi)"
               : "r0^3/3 [rg^3 (sin(a0 + w) - 3 tan phi cos(a0 + w)) + 3 tan phi cos a0 - sin a0]/"
                 "(1 + 9 tan^2 phi)",
       NULL, b->sector, "", SOURCE},
      {"Mt", "(xe yt - ye xt)(xe + xt)/6 + (xt yf - yt xf)(xt + xf)/6", NULL, b->triangles, "", ""},
      {"ar",
       passive ? "(xf - tan t/3) sin(t - d) - (yf + 1/3) cos(t - d)"
               : "(xf - tan t/3) sin(t + d) - (yf + 1/3) cos(t + d)",
       NULL, b->arm, "", ""},
      {passive ? "Kp" : "Ka", "2 (Ms + Mt)/ar", NULL, 2.0 * b->thrust, "", SOURCE}};
  lw_working_heading(s->working, passive ? "of the spirals the one that resists least, shares of the height"
                                         : "of the spirals the one that pushes most, shares of the height");
  for (size_t i = 0; i < sizeof steps / sizeof steps[0]; i++)
    lw_working_bound_finely(s->working, &steps[i], bound, sizeof bound / sizeof bound[0]);
}
