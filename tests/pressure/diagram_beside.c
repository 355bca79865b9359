/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/diagram.h>
#include <math.h>

#include "random_plane.h"
#include "support.h"

/* What comes on top of every method is there whether a method has an answer or not, and a number that nobody
 * knows is 0. */

enum { PLANES = 40 / RANDOM_SHARE, CUTS = 4000 };

static lw_diagram made;

static bool near(double a, double b, double within) {
  return fabs(a - b) <= within * fmax(1.0, fabs(b));
}

/* Half of what the water weighs times its depth, squared, whatever the soil; a load by a sum of its own. */
static void expect_on_top(int number) {
  const lw_plane *back = &made.asked.back;
  double deep = fmax(back->height_m - back->water_depth_m, 0.0), sum = 0.0, step = back->height_m / CUTS;
  double water = 0.5 * back->water_unit_weight_kn_per_m3 * deep * deep;
  cr_expect(near(made.water_kn_per_m, water, 1e-9), "plane %d: water %.12g, %.12g", number,
            made.water_kn_per_m, water);
  for (int k = 0; k < back->load_count; k++)
    for (int i = 0; i < CUTS; i++) sum += step * lw_elastic_kpa_on(back, k, made.loads_by, (i + 0.5) * step);
  cr_expect(near(made.loads.push_kn_per_m, sum, 2e-3), "plane %d: loads %.9g, summed %.9g", number,
            made.loads.push_kn_per_m, sum);
}

/* A crack can only add to the water, and only where it may fill. */
static void expect_cracks(int number) {
  for (int i = 0; i < LW_WAY_COUNT; i++) {
    const lw_thrust *t = &made.way[i].thrust;
    bool fills = made.asked.back.crack == LW_CRACK_WET && t->crack_depth_m > 1e-9;
    if (!made.way[i].known) continue;
    cr_expect_leq(made.water_kn_per_m, t->water_kn_per_m + 1e-9, "plane %d, %s", number,
                  lw_way_slug((lw_way)i));
    cr_expect(fills || near(t->water_kn_per_m, made.water_kn_per_m, 1e-9), "plane %d, %s", number,
              lw_way_slug((lw_way)i));
  }
}

/* Every other ground is steeper than one of its layers: there no formula has an answer. */
Test(diagram_beside, water_and_loads_need_no_method) {
  dice d = {1905};
  int silent = 0, wet = 0;
  for (int i = 0; i < PLANES; i++) {
    lw_plane plane = pressure_random_plane(&d);
    for (int k = 0; k < plane.load_count; k++) {
      plane.load[k].near_m += 0.1; /* nearer than that even steps miss its peak */
      plane.load[k].far_m += 0.1;
    }
    if (i % 2) {
      plane.slope_rad = plane.layer[0].friction_rad + RAD(2.0);
      plane.slope_run_m = 2.0;
    }
    lw_diagram_asked asked = lw_diagram_ask(&plane);
    lw_diagram_find(&asked, &made, NULL);
    expect_on_top(i);
    expect_cracks(i);
    silent += !made.way[LW_WAY_COULOMB].known;
    wet += made.water_kn_per_m > 0.0;
  }
  cr_expect_lt(PLANES / 3, silent);
  cr_expect_lt(PLANES / 8, wet);
}

static void expect_nothing_unknown(lw_number n, const char *what, int way) {
  cr_expect(isfinite(n.value) && (n.known || fabs(n.value) <= 0.0), "%s, %s: %g", what,
            lw_way_slug((lw_way)way), n.value);
}

/* Soil lighter than the water, as heavy as it, and a little heavier, wet from the top or from half way; and
 * planes so low that what weighs on them is no number above nothing. */
Test(diagram_beside, soil_that_floats_has_no_figure_that_is_none) {
  static const double HEAVY[] = {5.0, 9.0, 9.81, 9.810001, 12.0};
  for (int i = 0; i < 5 * 3 * 2; i++) {
    lw_plane plane = pressure_plane(30.0);
    plane.layer[0].unit_weight_kn_per_m3 = fmin(HEAVY[i % 5], 9.0);
    if (i % 7 == 0) plane.height_m = 1e-170;
    plane.layer[0].saturated_unit_weight_kn_per_m3 = HEAVY[i % 5];
    plane.water_depth_m = plane.height_m * (i / 5 % 3) / 2.0;
    plane.surcharge_kpa = i / 15 * 2.0;
    lw_diagram_asked asked = lw_diagram_ask(&plane);
    lw_diagram_find(&asked, &made, NULL);
    for (int k = 0; k < LW_WAY_COUNT; k++) {
      const lw_diagram_way *w = &made.way[k];
      expect_nothing_unknown(w->mean_k, "K", k);
      expect_nothing_unknown(w->layer_k[0], "K of the soil", k);
      cr_expect(!w->known || (isfinite(w->level_kn_per_m) && isfinite(w->level_height_m)));
      for (int row = 0; row < made.depth_count; row++) {
        expect_nothing_unknown(made.depth[row].soil_kpa[k], "pressure", k);
        expect_nothing_unknown(made.depth[row].uniform_kpa[k], "of it the load", k);
        expect_nothing_unknown(made.depth[row].down_to_kn_per_m[k], "wedge", k);
      }
    }
  }
}

/* What a figure leaves out, on planes by chance: K of a soil its cohesion, K of the plane an earthquake, and
 * what resists every load at a distance. */
Test(diagram_beside, each_figure_leaves_out_what_it_says) {
  static lw_diagram bare;
  dice d = {1926};
  for (int i = 0; i < PLANES / 2; i++) {
    lw_plane plane = pressure_random_plane(&d), more = plane;
    plane.load_count = 0;
    more.load_count = 1;
    more.load[0] = (lw_plane_load){.near_m = 0.4, .far_m = 0.9, .pressure_kpa = 20.0};
    for (int k = 0; k < more.layer_count; k++) more.layer[k].cohesion_kpa += 3.0;
    lw_diagram_asked asked = lw_diagram_ask(&plane), other = lw_diagram_ask(&more);
    lw_diagram_find(&asked, &bare, NULL);
    lw_diagram_find(&other, &made, NULL);
    for (int k = 0; k < LW_WAY_COUNT; k++)
      for (int layer = 0; layer < plane.layer_count && made.way[k].known && bare.way[k].known; layer++)
        cr_expect(near(made.way[k].layer_k[layer].value, bare.way[k].layer_k[layer].value, 1e-9), "%d, %s", i,
                  lw_way_slug((lw_way)k));
    more = plane;
    more.load_count = 1;
    more.load[0] = other.back.load[0];
    other = lw_diagram_ask(&more);
    lw_diagram_find(&other, &made, NULL);
    for (int k = LW_WAY_PASSIVE_RANKINE; k < LW_WAY_COUNT; k++)
      cr_expect(near(made.way[k].level_kn_per_m, bare.way[k].level_kn_per_m, 1e-9), "%d, %s", i,
                lw_way_slug((lw_way)k));
    more = plane;
    more.seismic = (lw_seismic){0.05, 0.0, 0.6, false};
    other = lw_diagram_ask(&more);
    lw_diagram_find(&other, &made, NULL);
    if (made.way[LW_WAY_COULOMB].known && bare.way[LW_WAY_COULOMB].known)
      cr_expect(near(made.way[LW_WAY_COULOMB].mean_k.value, bare.way[LW_WAY_COULOMB].mean_k.value, 1e-9),
                "%d", i);
  }
}

/* Upright and level annex C is Lancellotta's: docs/theory.md. */
Test(diagram_beside, on_a_plain_wall_annex_c_is_lancellotta_s) {
  for (int i = 1; i <= 10; i++) {
    lw_plane plane = pressure_plane(20.0 + 2.0 * i);
    plane.wall_friction_rad = RAD(20.0 + 2.0 * i) * 0.1 * i;
    lw_diagram_asked asked = lw_diagram_ask(&plane);
    lw_diagram_find(&asked, &made, NULL);
    cr_assert(made.lancellotta_kp[0].known);
    cr_expect(near(made.lancellotta_kp[0].value, made.way[LW_WAY_PASSIVE_ANNEX_C].layer_k[0].value, 1e-9),
              "%.12g, %.12g", made.lancellotta_kp[0].value,
              made.way[LW_WAY_PASSIVE_ANNEX_C].layer_k[0].value);
  }
}

/* Cohesion under a slope: what a load makes of Rankine's pressure is what is there with it less what is there
 * without. */
Test(diagram_beside, on_a_curve_the_load_s_part_is_the_difference) {
  static lw_diagram bare;
  lw_plane plane = pressure_plane(28.0);
  plane.slope_rad = RAD(15.0);
  plane.layer[0].cohesion_kpa = 3.0;
  lw_diagram_asked asked = lw_diagram_ask(&plane);
  lw_diagram_find(&asked, &bare, NULL);
  asked.back.surcharge_kpa = asked.upright.surcharge_kpa = 8.0;
  lw_diagram_find(&asked, &made, NULL);
  int seen = 0;
  for (int i = 0; i < made.depth_count; i++) {
    const lw_diagram_depth *row = &made.depth[i];
    double with = row->soil_kpa[LW_WAY_RANKINE].value;
    lw_number without = lw_diagram_soil_kpa(&bare, LW_WAY_RANKINE, row->depth_m, row->below);
    cr_assert(without.known);
    if (with <= 0.0 || without.value <= 0.0) continue;
    cr_expect_float_eq(row->uniform_kpa[LW_WAY_RANKINE].value, with - without.value, 1e-9, "%g m",
                       row->depth_m);
    seen++;
  }
  cr_expect_lt(3, seen);
}
