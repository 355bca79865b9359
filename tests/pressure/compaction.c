/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/lateral.h>

#include <criterion/criterion.h>
#include <criterion/new/assert.h>
#include <math.h>

#include "base/integral.h"
#include "support.h"

/* Compaction plant against a wall, and at a distance from it. */

static const double PI = 3.14159265358979323846;

static lw_compaction_diagram diagram_of(double line_load, double friction_deg, lw_earth_state state) {
  lw_compaction compaction = {line_load, 18.0, RAD(friction_deg), state};
  lw_compaction_diagram diagram;
  cr_assert_eq(lw_compaction_solve(&compaction, &diagram, NULL, NULL), LW_OK);
  return diagram;
}

/* [LOWWALL hazards]: a plate of 90 kg and 15 kN on 0.5 m, γ 18, φ 35: worked by hand, to the digits kept. */
Test(pressure, compaction_of_a_plate) {
  double p = (90.0 * 9.80665 / 1000.0 + 15.0) / 0.5;
  lw_compaction_diagram d = diagram_of(p, 35.0, LW_ACTIVE);
  lw_lateral wall = lw_compaction_thrust(&d, 0.6, NULL), course = lw_compaction_thrust(&d, 0.2, NULL);
  cr_expect(epsilon_eq(dbl, p, 31.8, 0.05));
  cr_expect(epsilon_eq(dbl, d.greatest_kpa, 19.0, 0.5));
  cr_expect(epsilon_eq(dbl, d.zc_m, 0.29, 0.005));
  cr_expect(epsilon_eq(dbl, d.hc_m, 3.9, 0.05));
  cr_expect(epsilon_eq(dbl, wall.thrust_kn_per_m, 8.7, 0.05));
  cr_expect(epsilon_eq(dbl, course.thrust_kn_per_m, 1.3, 0.05));
}

static double pressure_at(double depth, const void *context) {
  return lw_compaction_kpa(context, depth);
}

static double moment_at(double depth, const void *context) {
  return lw_compaction_kpa(context, depth) * depth;
}

/* The rule on a hundred equal pieces. */
static double pieces(lw_function f, const void *context, double low, double high) {
  double piece = (high - low) / 100.0, total = 0.0;
  for (int i = 0; i < 100; i++)
    total += lw_gauss_integral(f, context, low + i * piece, low + (i + 1) * piece);
  return total;
}

static double sum(lw_function f, const lw_compaction_diagram *d, double height) {
  double at[] = {0.0, fmin(d->zc_m, height), fmin(d->hc_m, height), height}, total = 0.0;
  for (int i = 0; i < 3; i++) {
    if (at[i + 1] > at[i]) total += pieces(f, d, at[i], at[i + 1]);
  }
  return total;
}

Test(pressure, compaction_thrust_is_the_sum_of_its_diagram) {
  for (double height = 0.07; height < 9.0; height *= 1.37) {
    lw_compaction_diagram d = diagram_of(11.7, 33.0, height > 1.0 ? LW_AT_REST : LW_ACTIVE);
    lw_lateral t = lw_compaction_thrust(&d, height, NULL);
    double push = sum(pressure_at, &d, height), moment = push * height - sum(moment_at, &d, height);
    cr_expect(epsilon_eq(dbl, t.thrust_kn_per_m, push, 1e-6 * push), "height %g", height);
    cr_expect(epsilon_eq(dbl, t.thrust_kn_per_m * t.height_m, moment, 1e-6 * moment), "height %g", height);
  }
}

Test(pressure, compaction_diagram_joins_and_grows) {
  lw_compaction_diagram d = diagram_of(11.7, 33.0, LW_ACTIVE), heavier = diagram_of(23.4, 33.0, LW_ACTIVE);
  lw_compaction_diagram stiff = diagram_of(11.7, 33.0, LW_AT_REST);
  double e = 1e-9;
  cr_expect(epsilon_eq(dbl, lw_compaction_kpa(&d, d.zc_m - e), d.greatest_kpa, 1e-6));
  cr_expect(epsilon_eq(dbl, lw_compaction_kpa(&d, d.hc_m + e), d.greatest_kpa, 1e-6));
  cr_expect(epsilon_eq(dbl, heavier.greatest_kpa, d.greatest_kpa * sqrt(2.0), 1e-9));
  /* The greatest pressure does not know the wall; a stiff one has it from further down, and less far. */
  cr_expect(epsilon_eq(dbl, stiff.greatest_kpa, d.greatest_kpa, 1e-12));
  cr_expect(lt(dbl, d.zc_m, stiff.zc_m));
  cr_expect(lt(dbl, stiff.hc_m, d.hc_m));
  for (double z = 0.0; z < 6.0; z += 0.173)
    cr_expect(le(dbl, lw_compaction_kpa(&d, z), lw_compaction_kpa(&heavier, z)), "depth %g", z);
}

Test(pressure, no_plant_is_active_earth) {
  lw_compaction_diagram d = diagram_of(0.0, 31.0, LW_ACTIVE);
  lw_lateral t = lw_compaction_thrust(&d, 0.83, NULL);
  double k;
  cr_assert_eq(lw_rankine_coefficient(LW_ACTIVE, RAD(31.0), 0.0, &k, NULL), LW_OK);
  cr_expect(epsilon_eq(dbl, t.thrust_kn_per_m, k * 18.0 * 0.83 * 0.83 / 2.0, 1e-12));
  cr_expect(epsilon_eq(dbl, t.height_m, 0.83 / 3.0, 1e-12));
}

Test(pressure, compaction_refuses) {
  lw_compaction bad[] = {{10.0, 18.0, 0.0, LW_ACTIVE},
                         {10.0, 0.0, RAD(30.0), LW_ACTIVE},
                         {10.0, 18.0, RAD(30.0), LW_PASSIVE},
                         {10.0, 18.0, RAD(90.0), LW_AT_REST}};
  for (size_t i = 0; i < sizeof bad / sizeof *bad; i++) {
    lw_compaction_diagram d = {.zc_m = 7.0};
    lw_error error = {0};
    cr_expect_eq(lw_compaction_solve(&bad[i], &d, &error, NULL), LW_NO_SOLUTION);
    cr_expect_eq(error.reason, LW_REASON_ANGLE_OUT_OF_RANGE);
    cr_expect(epsilon_eq(dbl, d.zc_m, 7.0, 0.0));
  }
}

/* The point loads of a foot, summed along it and doubled: 3Q/2π x²z/R⁵ each. */
typedef struct foot_at {
  double x, z, half;
} foot_at;

static double point_at(double along, const void *context) {
  const foot_at *f = context;
  return 3.0 / PI * f->x * f->x * f->z / pow(f->x * f->x + along * along + f->z * f->z, 2.5);
}

static double foot_kpa(double z, const void *context) {
  foot_at f = *(const foot_at *)context;
  double half = 0.0;
  f.z = z;
  if (z > 0.0) half = pieces(point_at, &f, 0.0, f.half);
  return 2.0 * half;
}

static double foot_moment(double z, const void *context) {
  return z * foot_kpa(z, context);
}

Test(pressure, foot_is_the_sum_of_its_points) {
  for (double x = 0.3; x < 3.0; x *= 1.7) {
    lw_foot foot = {13.1, 0.46};
    foot_at at = {x, 0.0, 0.23};
    double h = 0.37, push = pieces(foot_kpa, &at, 0.0, h), about_top = pieces(foot_moment, &at, 0.0, h);
    lw_lateral t = lw_foot_thrust(&foot, x, h, NULL);
    cr_expect(epsilon_eq(dbl, t.thrust_kn_per_m, 13.1 * push, 1e-5 * t.thrust_kn_per_m), "x %g", x);
    cr_expect(epsilon_eq(dbl, t.height_m, h - about_top / push, 1e-5), "x %g", x);
  }
}

Test(pressure, endless_foot_is_a_line_load) {
  lw_foot endless = {13.1, INFINITY}, long_one = {13.1, 1e5}, short_one = {13.1, 0.5};
  for (double x = 0.05; x < 5.0; x *= 1.9) {
    lw_lateral t = lw_foot_thrust(&endless, x, 0.4, NULL), near = lw_foot_thrust(&long_one, x, 0.4, NULL);
    lw_elastic_push closed = lw_elastic_line_push(13.1, x, 0.4, LW_ELASTIC_DOUBLED);
    double c2 = x * x + 0.16, line = 2.0 * 13.1 / PI * 0.16 / c2;
    cr_expect(epsilon_eq(dbl, t.thrust_kn_per_m, line, 1e-9));
    cr_expect(epsilon_eq(dbl, t.thrust_kn_per_m, closed.push_kn_per_m, 1e-9));
    cr_expect(epsilon_eq(dbl, t.height_m, closed.height_m, 1e-9));
    cr_expect(epsilon_eq(dbl, near.thrust_kn_per_m, line, 1e-6));
    cr_expect(lt(dbl, lw_foot_thrust(&short_one, x, 0.4, NULL).thrust_kn_per_m, line));
    cr_expect(lt(dbl, lw_foot_thrust(&short_one, 1.9 * x, 0.4, NULL).thrust_kn_per_m,
                 lw_foot_thrust(&short_one, x, 0.4, NULL).thrust_kn_per_m));
  }
}
