/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/diagram.h>
#include <math.h>

#include "../checks/random_wall.h"
#include "random_plane.h"
#include "support.h"

/* All methods side by side and the pressure against depth: what books print, then what must be so on any
 * plane. */

enum { PLANES = 60 / RANDOM_SHARE, FEW = 12 / RANDOM_SHARE };

/* Too big for a stack that has others of its kind. */
static const lw_diagram *diagram_of(const lw_diagram_asked *asked) {
  static lw_diagram made[2];
  static int turn;
  turn = !turn;
  lw_diagram_find(asked, &made[turn], NULL);
  return &made[turn];
}

static double at(const lw_diagram *d, lw_way way, double depth_m, bool below) {
  lw_number kpa = lw_diagram_soil_kpa(d, way, depth_m, below);
  cr_assert(kpa.known, "%s at %g m", lw_way_slug(way), depth_m);
  return kpa.value;
}

/* [DAS-PFE p.342 example 7.7], passive, seen; tolerances of half the last digit that is printed. */
Test(diagram, a_book_s_passive_pressures_in_two_layers) {
  lw_plane plane = pressure_plane(30.0);
  plane.height_m = 3.0;
  plane.water_depth_m = 2.0;
  plane.layer_count = 2;
  plane.layer[0] = pressure_soil(2.0, 15.72, 30.0, 0.0);
  plane.layer[1] = pressure_soil(INFINITY, 18.86, 26.0, 10.0);
  lw_diagram_asked asked = lw_diagram_ask(&plane);
  const lw_diagram *d = diagram_of(&asked);
  cr_expect_float_eq(at(d, LW_WAY_PASSIVE_RANKINE, 2.0, false), 94.32, 0.006);
  cr_expect_float_eq(at(d, LW_WAY_PASSIVE_RANKINE, 2.0, true), 112.53, 0.012);
  cr_expect_float_eq(at(d, LW_WAY_PASSIVE_RANKINE, 3.0, false), 135.7, 0.06);
  cr_expect_float_eq(d->way[LW_WAY_PASSIVE_RANKINE].layer_k[0].value, 3.0, 1e-9);
}

/* [CRAIG-SM example 6.2], active with a load and water, from memory: the book rounds its coefficients. */
Test(diagram, a_book_s_active_pressures_under_a_load) {
  lw_plane plane = pressure_plane(38.0);
  plane.height_m = 9.0;
  plane.water_depth_m = 5.0;
  plane.water_unit_weight_kn_per_m3 = 9.8;
  plane.surcharge_kpa = 50.0;
  plane.layer_count = 2;
  plane.layer[0] = pressure_soil(5.0, 18.0, 38.0, 0.0);
  plane.layer[1] = pressure_soil(INFINITY, 20.0, 28.0, 10.0);
  lw_diagram_asked asked = lw_diagram_ask(&plane);
  const lw_diagram *d = diagram_of(&asked);
  cr_expect_float_eq(at(d, LW_WAY_RANKINE, 0.0, true), 12.0, 0.5);
  cr_expect_float_eq(at(d, LW_WAY_RANKINE, 5.0, false), 33.6, 0.5);
  cr_expect_float_eq(at(d, LW_WAY_RANKINE, 5.0, true), 38.4, 0.5);
  cr_expect_float_eq(at(d, LW_WAY_RANKINE, 9.0, false), 53.1, 0.5);
  const lw_diagram_depth *foot = &d->depth[d->depth_count - 1];
  cr_expect_float_eq(foot->pore_kpa, 39.2, 0.05);
  cr_expect_float_eq(foot->stress_kpa, 50.0 + 5.0 * 18.0 + 4.0 * 20.0, 1e-9);
}

/* [CALTRANS-TS 5-1.04 table 5-2], seen: 300 psf from 3 to 15 ft behind, doubled. */
Test(diagram, a_book_s_strip) {
  static const double FT = 0.3048, PSF = 0.04788025898;
  static const double printed[][2] = {{2.0, 150.1}, {4.0, 171.5}, {10.0, 96.4}};
  lw_plane plane = pressure_plane(30.0);
  plane.height_m = 10.0 * FT;
  plane.load_count = 1;
  plane.load[0] = (lw_plane_load){.near_m = 3.0 * FT, .far_m = 15.0 * FT, .pressure_kpa = 300.0 * PSF};
  for (int i = 0; i < 3; i++)
    cr_expect_float_eq(lw_elastic_kpa_on(&plane, 0, LW_LOAD_PRESSURE_DOUBLED, printed[i][0] * FT) / PSF,
                       printed[i][1], 0.12);
}

static bool is_curve(const lw_diagram *d, lw_way way) {
  const lw_plane *plane = &d->asked.upright;
  bool cohesive = false;
  for (int i = 0; i < plane->layer_count; i++) cohesive = cohesive || plane->layer[i].cohesion_kpa > 0.0;
  bool rankine = way == LW_WAY_RANKINE || way == LW_WAY_PASSIVE_RANKINE;
  return rankine && cohesive && plane->slope_rad > 0.0 && plane->crack != LW_CRACK_TRIANGLE;
}

/* The trapezia between rows. A curve is cut fine instead. */
static double area_of(const lw_diagram *d, lw_way way, bool uniform) {
  enum { CUTS = 200 };
  double area = 0.0;
  for (int i = 0; i + 1 < d->depth_count; i++) {
    const lw_diagram_depth *a = &d->depth[i], *b = &d->depth[i + 1];
    const lw_number *p = uniform ? a->uniform_kpa : a->soil_kpa, *q = uniform ? b->uniform_kpa : b->soil_kpa;
    double run = b->depth_m - a->depth_m;
    if (!p[way].known || !q[way].known || run <= 0.0) continue;
    if (!is_curve(d, way) || uniform) {
      area += 0.5 * (p[way].value + q[way].value) * run;
      continue;
    }
    for (int k = 0; k < CUTS; k++) area += at(d, way, a->depth_m + (k + 0.5) * run / CUTS, true) * run / CUTS;
  }
  return area;
}

/* What a load sends to the plane, summed by a rule of its own. */
static double sum_of_load(const lw_diagram *d, int load) {
  enum { CUTS = 20000 };
  const lw_plane *plane = &d->asked.back;
  double run = plane->height_m / CUTS, sum = 0.0;
  for (int i = 0; i < CUTS; i++) sum += run * lw_elastic_kpa_on(plane, load, d->loads_by, (i + 0.5) * run);
  return sum;
}

static void hold_areas(const lw_diagram *d, int number) {
  for (int i = 0; i < LW_WAY_COUNT; i++) {
    const lw_diagram_way *w = &d->way[i];
    bool wedge = i == LW_WAY_WEDGE || i == LW_WAY_PASSIVE_WEDGE;
    if (!w->known) {
      cr_expect_str_neq(w->error.text, "", "plane %d, %s has no reason", number, lw_way_slug((lw_way)i));
      continue;
    }
    double level = w->thrust.horizontal_kn_per_m, scale = fmax(fabs(level), 1e-3);
    const lw_diagram_depth *foot = &d->depth[d->depth_count - 1];
    double made = wedge ? foot->down_to_kn_per_m[i].value : area_of(d, (lw_way)i, false);
    double within = is_curve(d, (lw_way)i) ? 2e-4 : 1e-9;
    cr_expect_lt(fabs(made - level) / scale, within, "plane %d, %s: area %.12g, thrust %.12g", number,
                 lw_way_slug((lw_way)i), made, level);
    if (wedge || is_curve(d, (lw_way)i)) continue;
    double part = w->thrust.surcharge_kn_per_m * cos(w->thrust.angle_rad);
    cr_expect_lt(fabs(area_of(d, (lw_way)i, true) - part) / scale, 1e-9, "plane %d, %s: load %.12g", number,
                 lw_way_slug((lw_way)i), part);
  }
}

static void hold_rows(const lw_diagram *d, int number) {
  for (int i = 0; i < d->depth_count; i++) {
    const lw_diagram_depth *row = &d->depth[i];
    double sum = 0.0;
    cr_expect_lt(fabs(row->effective_kpa + row->pore_kpa - row->stress_kpa), 1e-9);
    for (int k = 0; k < d->asked.back.load_count; k++) sum += row->load_kpa[k];
    cr_expect_lt(fabs(sum - row->loads_kpa), 1e-9);
    cr_expect(i == 0 || row->depth_m >= d->depth[i - 1].depth_m, "plane %d: rows in order", number);
  }
}

Test(diagram, the_area_is_the_thrust) {
  dice d = {90125};
  int cohesive = 0, layered = 0;
  for (int i = 0; i < PLANES; i++) {
    lw_plane plane = pressure_random_plane(&d);
    lw_diagram_asked asked = lw_diagram_ask(&plane);
    const lw_diagram *made = diagram_of(&asked);
    hold_areas(made, i);
    hold_rows(made, i);
    layered += plane.layer_count > 1;
    cohesive += made->way[LW_WAY_RANKINE].thrust.crack_depth_m > 0.0;
  }
  cr_expect_lt(PLANES / 3, layered);
  cr_expect_lt(PLANES / 20, cohesive);
}

Test(diagram, the_loads_area_is_their_push) {
  dice d = {611};
  for (int i = 0; i < FEW; i++) {
    lw_plane plane = pressure_random_plane(&d);
    lw_diagram_asked asked = lw_diagram_ask(&plane);
    asked.loads_by = (lw_load_pressure)(LW_LOAD_PRESSURE_HALF_SPACE + dice_pick(&d, 3));
    const lw_diagram *made = diagram_of(&asked);
    for (int k = 0; k < plane.load_count && made->way[LW_WAY_COULOMB].known; k++) {
      double push = made->way[LW_WAY_COULOMB].loads.load[k].push_kn_per_m;
      if (plane.load[k].near_m < 0.05) continue; /* so near that even steps miss its peak */
      cr_expect_lt(fabs(sum_of_load(made, k) - push), 1e-3 * push + 1e-6,
                   "plane %d, load %d: %.9g, push %.9g", i, k, sum_of_load(made, k), push);
    }
  }
}

static void expect_same(const lw_diagram *a, const lw_diagram *b, double within, const char *what) {
  for (int i = 0; i < LW_WAY_COUNT; i++) {
    const lw_diagram_way *x = &a->way[i], *y = &b->way[i];
    cr_assert_eq(x->known, y->known, "%s: %s", what, lw_way_slug((lw_way)i));
    if (!x->known) continue;
    double scale = fmax(fabs(x->level_kn_per_m), 1e-3);
    /* A search with other corners to try may end on another side of a kink. */
    bool wedge = i == LW_WAY_WEDGE || i == LW_WAY_PASSIVE_WEDGE;
    double gap = wedge ? fmax(within, 2e-4) : within;
    cr_expect_lt(fabs(x->level_kn_per_m - y->level_kn_per_m) / scale, gap, "%s: %s %.12g, %.12g", what,
                 lw_way_slug((lw_way)i), x->level_kn_per_m, y->level_kn_per_m);
    cr_expect_lt(fabs(x->level_height_m - y->level_height_m), gap * 10.0, "%s: %s", what,
                 lw_way_slug((lw_way)i));
    for (int k = 0; k < a->depth_count && !wedge; k++) {
      double depth = a->depth[k].depth_m;
      if (!a->depth[k].soil_kpa[i].known) continue;
      cr_expect_lt(fabs(a->depth[k].soil_kpa[i].value -
                        lw_diagram_soil_kpa(b, (lw_way)i, depth, a->depth[k].below).value),
                   within * 1e3, "%s: %s at %g m", what, lw_way_slug((lw_way)i), depth);
    }
  }
}

/* Every layer cut in two anywhere: the ground is what it was. */
Test(diagram, a_layer_may_be_cut_anywhere) {
  dice d = {4711};
  for (int i = 0; i < FEW; i++) {
    lw_plane plane = pressure_random_plane(&d), cut = plane;
    double from = 0.0;
    if (plane.layer_count > 3) continue;
    /* The triangle of a crack is a line from end to end of a layer, and another one in each of its parts. */
    plane.crack = cut.crack = (lw_crack)dice_pick(&d, 2);
    cut.layer_count = 0;
    for (int k = 0; k < plane.layer_count; k++) {
      double to = fmin(plane.layer[k].bottom_m, plane.height_m + 1.0);
      cut.layer[cut.layer_count] = plane.layer[k];
      cut.layer[cut.layer_count++].bottom_m = from + dice_between(&d, 0.05, 0.95) * (to - from);
      cut.layer[cut.layer_count++] = plane.layer[k];
      from = to;
    }
    lw_diagram_asked one = lw_diagram_ask(&plane), other = lw_diagram_ask(&cut);
    expect_same(diagram_of(&one), diagram_of(&other), 1e-7, "cut");
  }
}

Test(diagram, loads_of_nothing_change_nothing) {
  dice d = {31};
  for (int i = 0; i < FEW; i++) {
    lw_plane plane = pressure_random_plane(&d), more = plane;
    for (int k = 0; k < 2 && more.load_count < LW_SITE_LOAD_MAX; k++)
      more.load[more.load_count++] = (lw_plane_load){.near_m = 0.3 + k, .far_m = 0.3 + 2.0 * k};
    lw_diagram_asked one = lw_diagram_ask(&plane), other = lw_diagram_ask(&more);
    expect_same(diagram_of(&one), diagram_of(&other), 1e-7, "loads of nothing");
  }
}

/* Strips that lie side by side are one strip, to formula, elasticity and wedge. */
Test(diagram, strips_side_by_side_are_one) {
  dice d = {77};
  for (int i = 0; i < FEW; i++) {
    lw_plane plane = pressure_random_plane(&d);
    double near = dice_between(&d, 0.1, 1.0), middle = near + dice_between(&d, 0.1, 1.0),
           far = middle + dice_between(&d, 0.1, 1.0);
    plane.load_count = 1;
    plane.slope_rad = 0.0; /* on a slope each would stand at the ground of its own near edge */
    plane.load[0] = (lw_plane_load){.near_m = near, .far_m = far, .pressure_kpa = 9.0};
    lw_plane parts = plane;
    parts.load_count = 2;
    parts.load[1] = parts.load[0];
    parts.load[0].far_m = parts.load[1].near_m = middle;
    lw_diagram_asked one = lw_diagram_ask(&plane), other = lw_diagram_ask(&parts);
    const lw_diagram *a = diagram_of(&one), *b = diagram_of(&other);
    expect_same(a, b, 1e-7, "strips");
    for (int k = 0; k < a->depth_count; k++)
      if (a->depth_count == b->depth_count)
        cr_expect_lt(fabs(a->depth[k].loads_kpa - b->depth[k].loads_kpa), 1e-9);
  }
}

/* One soil, a plain plane: formula and wedge are one number, and each K is the formula's own function. */
Test(diagram, on_a_plain_plane_wedge_and_coulomb_agree) {
  lw_plane plane = pressure_plane(33.0);
  plane.wall_friction_rad = RAD(14.0);
  plane.batter_rad = RAD(6.0);
  plane.slope_rad = RAD(11.0);
  plane.surcharge_kpa = 4.0;
  lw_diagram_asked asked = lw_diagram_ask(&plane);
  const lw_diagram *d = diagram_of(&asked);
  lw_wall_angles angles = {RAD(33.0), RAD(14.0), RAD(6.0), RAD(11.0)};
  double k;
  cr_assert_eq(lw_coulomb_coefficient(LW_ACTIVE, &angles, &k, NULL), LW_OK);
  cr_expect_eq(d->back_differs, LW_DIFFER_NOT);
  cr_expect_float_eq(d->way[LW_WAY_COULOMB].layer_k[0].value, k, 1e-12);
  cr_expect_float_eq(d->way[LW_WAY_COULOMB].mean_k.value, k, 1e-9);
  cr_expect_float_eq(d->way[LW_WAY_WEDGE].layer_k[0].value, k, 1e-6);
  cr_expect_float_eq(d->way[LW_WAY_WEDGE].mean_k.value, k, 1e-6);
  cr_expect(!d->ufc_kp[0].known, "the fit is for upright backs and level ground");
}

/* Active, at rest, passive: in this order whatever the method, on an upright smooth plane. */
Test(diagram, states_stand_in_their_order) {
  dice d = {5};
  for (int i = 0; i < FEW; i++) {
    lw_plane plane = pressure_random_plane(&d);
    plane.slope_rad = plane.batter_rad = plane.wall_friction_rad = 0.0;
    lw_diagram_asked asked = lw_diagram_ask(&plane);
    const lw_diagram *made = diagram_of(&asked);
    double rest = made->way[LW_WAY_AT_REST].thrust.horizontal_kn_per_m;
    for (int k = 0; k < LW_WAY_COUNT; k++) {
      double level = made->way[k].thrust.horizontal_kn_per_m;
      cr_assert(made->way[k].known, "plane %d, %s", i, lw_way_slug((lw_way)k));
      if (k < LW_WAY_AT_REST) cr_expect_leq(level, rest * (1.0 + 1e-9), "%s", lw_way_slug((lw_way)k));
      if (k > LW_WAY_AT_REST) cr_expect_lt(rest, level, "%s", lw_way_slug((lw_way)k));
    }
  }
}

/* In an earthquake curves have no answer and say so; steeper ground than a layer's friction likewise. */
Test(diagram, a_method_without_an_answer_says_why) {
  lw_plane plane = pressure_plane(30.0);
  plane.seismic = (lw_seismic){0.1, 0.0, 0.6, false};
  lw_diagram_asked asked = lw_diagram_ask(&plane);
  const lw_diagram *d = diagram_of(&asked);
  cr_expect(!d->way[LW_WAY_LOG_SPIRAL].known && d->way[LW_WAY_LOG_SPIRAL].error.reason == LW_REASON_NO_WEDGE);
  cr_expect(d->way[LW_WAY_COULOMB].known && d->way[LW_WAY_AT_REST].known);
  plane.seismic = (lw_seismic){0};
  plane.slope_rad = RAD(34.0);
  asked = lw_diagram_ask(&plane);
  d = diagram_of(&asked);
  cr_expect_eq(d->way[LW_WAY_RANKINE].error.reason, LW_REASON_STEEPER_THAN_FRICTION);
  cr_expect_eq(d->way[LW_WAY_COULOMB].error.reason, LW_REASON_STEEPER_THAN_FRICTION);
}

/* An upright plane that begins higher, behind a wall that leans back: one row above the back's top. */
Test(diagram, the_upright_plane_may_begin_higher) {
  lw_plane plane = pressure_plane(30.0);
  lw_diagram_asked asked = lw_diagram_ask(&plane);
  asked.upright.height_m = plane.height_m + 0.25;
  const lw_diagram *d = diagram_of(&asked);
  cr_expect_float_eq(d->depth[0].depth_m, -0.25, 1e-12);
  cr_expect(d->depth[0].soil_kpa[LW_WAY_RANKINE].known && !d->depth[0].soil_kpa[LW_WAY_COULOMB].known);
  double area = area_of(d, LW_WAY_RANKINE, false), level = d->way[LW_WAY_RANKINE].thrust.horizontal_kn_per_m;
  cr_expect_lt(fabs(area / level - 1.0), 1e-9, "%.12g, thrust %.12g", area, level);
}

/* A slip of the pen in a caller's plane: no answer, no row, and nothing read past a list. */
Test(diagram, a_plane_that_is_none_has_no_rows) {
  const double wild[] = {NAN, INFINITY, -1.0, 0.0};
  for (int i = 0; i < 8; i++) {
    lw_plane plane = pressure_plane(30.0);
    if (i < 4) plane.height_m = wild[i];
    if (i == 4) plane.layer_count = LW_SOIL_MAX + 1;
    if (i == 5) plane.load_count = LW_SITE_LOAD_MAX + 1;
    if (i == 6) plane.layer[0].friction_rad = NAN;
    if (i == 7) plane.layer[0].unit_weight_kn_per_m3 = 0.0;
    lw_diagram_asked asked = lw_diagram_ask(&plane);
    const lw_diagram *d = diagram_of(&asked);
    cr_expect_eq(d->depth_count, 0, "plane %d", i);
    for (int k = 0; k < LW_WAY_COUNT; k++)
      cr_expect(!d->way[k].known && d->way[k].error.text[0] != '\0', "plane %d", i);
  }
}
