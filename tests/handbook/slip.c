/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/ground.h>
#include <math.h>
#include <string.h>

#include "rows.h"

/* Published slips: searched circles, the sums of a book's circle, slips along a plane. */

static lw_slip_soil soil_of(const case_row *row) {
  double weight = case_number(row, "gamma", 18.0);
  return (lw_slip_soil){.friction_rad = case_number(row, "phi", 0.0),
                        .cohesion_kpa = case_number(row, "c", 0.0),
                        .unit_weight_kn_per_m3 = weight,
                        .saturated_unit_weight_kn_per_m3 = weight,
                        .bottom_y_m = -INFINITY};
}

/* "20/25|30/25 m": x and y of each corner, or a range. */
static int read_corners(const case_row *row, const char *key, lw_corner *corner, int room) {
  char list[CASE_CELL_MAX];
  int count = 0;
  cr_assert(case_word(row, key, list, sizeof list), "%s: no %s", row->id, key);
  for (const char *at = list;; at++) {
    double number[2];
    for (int i = 0; i < 2; i++) {
      size_t length = strcspn(at, "/| ");
      cr_assert(lw_number_read(at, length, &number[i]), "%s: %s", row->id, key);
      at += length + (i < 1 ? 1 : 0);
    }
    cr_assert_lt(count, room);
    corner[count++] = (lw_corner){number[0], number[1]};
    if (*at != '|') return count;
  }
}

static case_outcome run_search(const case_row *row, double *value) {
  lw_corner exits, entries;
  lw_slip slip;
  lw_slip_ground ground = {.below = soil_of(row),
                           .floor_y_m = case_number(row, "floor", -INFINITY),
                           .raised_x_m = INFINITY,
                           .water = {.front_y_m = -INFINITY, .rear_y_m = -INFINITY}};
  ground.corner_count = read_corners(row, "ground", ground.corner, LW_SLIP_GROUND_MAX);
  cr_assert_eq(read_corners(row, "exits", &exits, 1), 1);
  cr_assert_eq(read_corners(row, "entries", &entries, 1), 1);
  ground.box = (lw_slip_box){exits.x_m, exits.y_m, entries.x_m, entries.y_m, 0.0, 0.0};
  lw_slip_search(&ground, LW_SLIP_BISHOP, &slip);
  if (slip.status != LW_OK) return CASE_NO_SOLUTION;
  double height = ground.corner[ground.corner_count - 1].y_m - ground.corner[0].y_m;
  if (strcmp(row->quantity, "bishop") == 0)
    *value = slip.bishop;
  else if (strcmp(row->quantity, "stability_number") == 0)
    *value = slip.bishop * ground.below.unit_weight_kn_per_m3 * height / ground.below.cohesion_kpa;
  else
    return CASE_UNSUPPORTED;
  return CASE_VALUE;
}

/* One slice that has the sums of the book's. */
static case_outcome run_sums(const case_row *row, double *value) {
  double arc = case_number(row, "arc", NAN), gb = case_number(row, "gb", NAN);
  double driving, normal;
  if (isnan(gb)) {
    driving = case_number(row, "weight", NAN) * case_number(row, "arm", NAN) / case_number(row, "R", NAN);
    normal = 0.0;
  } else {
    driving = gb * case_number(row, "hsin", NAN);
    normal = gb * case_number(row, "hcos", NAN);
  }
  double weight = hypot(driving, normal);
  lw_slip_slices list = {.count = 1};
  lw_slip slip;
  list.slice[0] = (lw_slip_slice){.weight_kn_per_m = weight,
                                  .sine = driving / weight,
                                  .cosine = normal / weight,
                                  .length_m = arc,
                                  .width_m = arc,
                                  .pore_kpa = case_number(row, "ul", 0.0) / arc,
                                  .tan_friction = tan(case_number(row, "phi", NAN)),
                                  .cohesion_kpa = case_number(row, "cohesion", NAN)};
  if (lw_slip_of_slices(&list, NULL, 0.0, LW_SLIP_ORDINARY, &slip, NULL) != LW_OK) return CASE_NO_SOLUTION;
  *value = slip.ordinary;
  return CASE_VALUE;
}

/* A given circle through ground that is level in front and behind. */
static case_outcome run_circle(const case_row *row, double *value) {
  lw_slip slip;
  lw_slip_ground ground = {.below = soil_of(row),
                           .floor_y_m = -INFINITY,
                           .raised_x_m = INFINITY,
                           .water = {.front_y_m = -INFINITY, .rear_y_m = -INFINITY},
                           .pore_ratio = case_number(row, "ru", 0.0)};
  ground.corner_count = read_corners(row, "ground", ground.corner, LW_SLIP_GROUND_MAX);
  lw_slip_circle c = {.centre_x_m = case_number(row, "xc", NAN),
                      .centre_y_m = case_number(row, "yc", NAN),
                      .radius_m = case_number(row, "R", NAN)};
  c.exit_y_m = ground.corner[0].y_m;
  c.entry_y_m = ground.corner[ground.corner_count - 1].y_m;
  double down = c.centre_y_m - c.exit_y_m, up = c.centre_y_m - c.entry_y_m, r = c.radius_m;
  c.exit_x_m = c.centre_x_m - sqrt(r * r - down * down);
  c.entry_x_m = c.centre_x_m + sqrt(r * r - up * up);
  if (lw_slip_of_circle(&ground, &c, 64, &slip, NULL) != LW_OK) return CASE_NO_SOLUTION;
  *value = strcmp(row->quantity, "bishop") == 0 ? slip.bishop : slip.ordinary;
  return CASE_VALUE;
}

/* A book's own slices: weight, slope in degrees, length of each. */
static case_outcome run_slices(const case_row *row, double *value) {
  char list[CASE_CELL_MAX];
  lw_slip_slices slices = {.count = 0};
  lw_slip slip;
  cr_assert(case_word(row, "slices", list, sizeof list), "%s: no slices", row->id);
  for (const char *at = list; *at != '\0';) {
    double number[3];
    for (int i = 0; i < 3; i++) {
      size_t length = strcspn(at, "/| ");
      cr_assert(lw_number_read(at, length, &number[i]), "%s: slices", row->id);
      at += length;
      if (i < 2) at++;
    }
    double alpha = number[1] / 57.29577951308232;
    slices.slice[slices.count++] = (lw_slip_slice){.weight_kn_per_m = number[0],
                                                   .sine = sin(alpha),
                                                   .cosine = cos(alpha),
                                                   .length_m = number[2],
                                                   .width_m = number[2] * cos(alpha),
                                                   .tan_friction = tan(case_number(row, "phi", NAN)),
                                                   .cohesion_kpa = case_number(row, "c", NAN)};
    at += *at == '|' ? 1 : 0;
    if (*at == ' ') break;
  }
  if (lw_slip_of_slices(&slices, NULL, 0.0, LW_SLIP_ORDINARY, &slip, NULL) != LW_OK) return CASE_NO_SOLUTION;
  *value = slip.ordinary;
  return CASE_VALUE;
}

static case_outcome run_infinite(const case_row *row, double *value) {
  lw_slip_soil soil = soil_of(row);
  double depth = case_number(row, "z", NAN);
  *value = lw_slip_infinite(&soil, case_number(row, "slope", NAN), depth,
                            case_number(row, "m", 0.0) * 9.81 * depth, NULL);
  return CASE_VALUE;
}

static case_outcome run_free_face(const case_row *row, double *value) {
  lw_slip_soil soil = soil_of(row);
  lw_status status =
      lw_free_face_height(&soil, case_number(row, "face", NAN), case_number(row, "FS", NAN), value, NULL);
  return status == LW_OK ? CASE_VALUE : CASE_NO_SOLUTION;
}

case_outcome case_slip(const case_row *row, double *value) {
  static const struct {
    const char *method;
    case_run run;
  } methods[] = {{"search", run_search},     {"sums", run_sums},
                 {"infinite", run_infinite}, {"culmann_height", run_free_face},
                 {"circle", run_circle},     {"slices", run_slices}};
  for (size_t i = 0; i < sizeof methods / sizeof methods[0]; i++)
    if (case_is(row, "method", methods[i].method)) return methods[i].run(row, value);
  return CASE_UNSUPPORTED;
}

Test(handbook, slip) {
  cr_assert_eq(case_hold_all("tests/handbook/slip.csv", case_slip), 24);
}
