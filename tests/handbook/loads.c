/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/lateral.h>
#include <math.h>
#include <string.h>

#include "base/integral.h"
#include "rows.h"

/* Published pressures and pushes of loads at a distance. One row keeps one system of units, and the formulas
 * do not care which; all published values are of a face that cannot yield. */

static bool asks(const case_row *row, const char *quantity) {
  return strcmp(row->quantity, quantity) == 0;
}

static lw_plane plane_of(const case_row *row, lw_plane_load load) {
  lw_plane plane = {.height_m = case_number(row, "H", NAN), .slope_run_m = INFINITY, .load_count = 1};
  plane.load[0] = load;
  return plane;
}

static case_outcome part_of(const case_row *row, lw_elastic_push push, double *value) {
  if (asks(row, "thrust"))
    *value = push.push_kn_per_m;
  else if (asks(row, "thrust_height"))
    *value = push.height_m;
  else
    return CASE_UNSUPPORTED;
  return CASE_VALUE;
}

static lw_elastic_strip strip_of(const case_row *row) {
  return (lw_elastic_strip){.pressure_kpa = case_number(row, "q", NAN),
                            .near_m = case_number(row, "x1", NAN),
                            .far_m = case_number(row, "x2", NAN)};
}

static case_outcome run_closed_strip(const case_row *row, double *value) {
  lw_elastic_strip strip = strip_of(row);
  return part_of(row, lw_elastic_strip_push(&strip, case_number(row, "H", NAN), LW_ELASTIC_DOUBLED), value);
}

/* Integrated: a plane that leans by a hair has no closed form. */
static case_outcome run_strip(const case_row *row, double *value) {
  lw_elastic_strip strip = strip_of(row);
  if (asks(row, "pressure")) {
    *value = lw_elastic_strip_kpa(&strip, case_number(row, "z", NAN), LW_ELASTIC_DOUBLED);
    return CASE_VALUE;
  }
  lw_plane plane = plane_of(
      row, (lw_plane_load){.near_m = strip.near_m, .far_m = strip.far_m, .pressure_kpa = strip.pressure_kpa});
  plane.batter_rad = 1e-9;
  lw_elastic elastic = lw_elastic_push_on(&plane, LW_LOAD_PRESSURE_DOUBLED);
  return part_of(row, elastic.load[0], value);
}

static case_outcome run_line(const case_row *row, double *value) {
  double q = case_number(row, "Q", NAN), x = case_number(row, "x", NAN), z = case_number(row, "z", NAN);
  *value = lw_elastic_line_kpa(q, x, z, LW_ELASTIC_DOUBLED);
  return asks(row, "pressure") ? CASE_VALUE : CASE_UNSUPPORTED;
}

static case_outcome run_curve_line(const case_row *row, double *value) {
  double h = case_number(row, "H", NAN), x = h * case_number(row, "m", NAN);
  double z = h * case_number(row, "n", NAN);
  *value = lw_elastic_curve_line_kpa(case_number(row, "Q", NAN), x, z, h);
  return asks(row, "pressure") ? CASE_VALUE : CASE_UNSUPPORTED;
}

/* Straight in front of the load a metre run feels the curve's own value: the table's resultant. */
static double curve_at(double depth_m, const void *context) {
  const double *at = context; /* force, distance, height, 1 for the moment */
  lw_elastic_place straight = {.distance_m = at[1]};
  double p = lw_elastic_curve_point_kpa(at[0], &straight, depth_m, at[2]);
  return at[3] > 0.0 ? p * depth_m : p;
}

/* The curves have a corner, and are steep near the load: many pieces. */
static double sum_over(double height_m, const double at[4]) {
  double total = 0.0, piece = height_m / 200.0;
  for (int i = 0; i < 200; i++) total += lw_gauss_integral(curve_at, at, i * piece, (i + 1) * piece);
  return total;
}

static case_outcome run_curve_point(const case_row *row, double *value) {
  double h = case_number(row, "H", NAN), x = h * case_number(row, "m", NAN);
  double at[4] = {case_number(row, "Q", NAN), x, h, 0.0}, force, moment;
  if (asks(row, "pressure")) {
    lw_elastic_place place = {.distance_m = x, .along_m = x * tan(case_number(row, "angle", 0.0))};
    *value = lw_elastic_curve_point_kpa(at[0], &place, h * case_number(row, "n", NAN), h);
    return CASE_VALUE;
  }
  force = sum_over(h, at);
  at[3] = 1.0;
  moment = sum_over(h, at);
  return part_of(row, (lw_elastic_push){force, h - moment / force}, value);
}

/* "16000:6:0|16000:6:66.8 lb,ft,deg": force, distance, angle along the wall. */
static case_outcome run_wheels(const case_row *row, double *value) {
  char list[CASE_CELL_MAX];
  double h = case_number(row, "H", NAN), z = h * case_number(row, "n", NAN);
  cr_assert(case_word(row, "wheels", list, sizeof list));
  *value = 0.0;
  for (const char *at = list;; at++) {
    double number[3];
    for (int i = 0; i < 3; i++) {
      size_t length = strcspn(at, ":| ");
      cr_assert(lw_number_read(at, length, &number[i]), "%s: wheels", row->id);
      at += length + (i < 2 ? 1 : 0);
    }
    lw_elastic_place place = {.distance_m = number[1]};
    place.along_m = number[1] * tan(number[2] * 3.14159265358979323846 / 180.0);
    *value += lw_elastic_curve_point_kpa(number[0], &place, z, h);
    if (*at != '|') break;
  }
  return asks(row, "pressure") ? CASE_VALUE : CASE_UNSUPPORTED;
}

case_outcome case_loads(const case_row *row, double *value) {
  static const struct {
    const char *method;
    case_run run;
  } methods[] = {{"jarquio", run_closed_strip},       {"strip_boussinesq", run_strip},
                 {"line_boussinesq", run_line},       {"line_terzaghi", run_curve_line},
                 {"point_terzaghi", run_curve_point}, {"point_sum", run_wheels}};
  for (size_t i = 0; i < sizeof methods / sizeof methods[0]; i++)
    if (case_is(row, "method", methods[i].method)) return methods[i].run(row, value);
  return CASE_UNSUPPORTED;
}

Test(handbook, loads) {
  cr_assert_eq(case_hold_all("tests/handbook/loads.csv", case_loads), 38);
}
