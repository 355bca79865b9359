/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <stdlib.h>

#include "base/angles.h"
#include "sheet/faults.h"
#include "cli.h"
#include "output.h"
#include "slip_parts.h"

#define DEG(d) ((d)*LW_PI / 180.0)
#define ITEM(n, t, k) .item = {.part = LW_ABOUT_METHOD, .name = (n), .type = (t), .kind = (k)
#define NUMBER(n, k, from, to, u, e, m) \
  {ITEM(n, LW_ITEM_QUANTITY, k), .low = (from), .high = (to), .unit = (u), .example = (e), .means = (m)}, \
      .sheet_name = "" \
  }
#define NEEDED(n, k, from, to, u, e, m) \
  {ITEM(n, LW_ITEM_QUANTITY, k), .low = (from), .high = (to), .unit = (u), .example = (e), .means = (m)}, \
      .sheet_name = "", .needed = true \
  }
#define SOIL(number, own) \
  [FRICTION + 5 * (number - 1)] = \
      NUMBER("soil " #number " friction angle", LW_KIND_ANGLE, 0.0, DEG(60), "deg", "20 deg", own), \
                            [COHESION + 5 * (number - 1)] = \
                                NUMBER("soil " #number " cohesion", LW_KIND_PRESSURE, 0.0, 1000.0, "kPa", \
                                       "3 kPa", "Left out: none."), \
                            [WEIGHT + 5 * (number - 1)] = \
                                NUMBER("soil " #number " unit weight", LW_KIND_UNIT_WEIGHT, 1.0, 30.0, \
                                       "kN/m3", "20 kN/m3", "Moist."), \
                            [SATURATED + 5 * (number - 1)] = \
                                NUMBER("soil " #number " saturated unit weight", LW_KIND_UNIT_WEIGHT, 1.0, \
                                       30.0, "kN/m3", "21 kN/m3", "Below the water. Left out: the moist."), \
                            [BOTTOM + 5 * (number - 1)] = \
                                NUMBER("soil " #number " bottom", LW_KIND_LENGTH, 0.0, 1000.0, "m", "4 m", \
                                       "Below the crest; the last has none.")

enum { LAYERS = 4 };
typedef enum slip_item {
  SLOPE,
  HEIGHT,
  CENTRE_X,
  CENTRE_Y,
  RADIUS,
  SLICES,
  PORE_RATIO,
  WATER,
  FLOOR,
  DEPTH,
  FRICTION,
  COHESION,
  WEIGHT,
  SATURATED,
  BOTTOM,
  ITEM_COUNT = FRICTION + 5 * LAYERS
} slip_item;

static const lw_formula_item items[ITEM_COUNT] = {
    [SLOPE] = NEEDED("slope", LW_KIND_ANGLE, DEG(1), DEG(90), "deg", "1:2", "Of the ground."),
    [HEIGHT] = NUMBER("height", LW_KIND_LENGTH, 0.1, 1000.0, "m", "10 m", "Of the slope, for a circle."),
    [CENTRE_X] = NUMBER("centre x", LW_KIND_LENGTH, -1000.0, 1000.0, "m", "6 m",
                        "Of the circle, behind the toe. Without a circle the worst is looked for."),
    [CENTRE_Y] = NUMBER("centre y", LW_KIND_LENGTH, -1000.0, 1000.0, "m", "21 m", "Above the toe."),
    [RADIUS] = NUMBER("radius", LW_KIND_LENGTH, 0.1, 1000.0, "m", "24 m", "Of the circle."),
    [SLICES] = NUMBER("slices", LW_KIND_NUMBER, 4.0, 64.0, "", "20", "At least. Left out: 20."),
    [PORE_RATIO] = NUMBER("pore ratio", LW_KIND_NUMBER, 0.0, 1.0, "", "0.25",
                          "Pore pressure over the weight of the soil above, ru."),
    [WATER] = NUMBER("water level", LW_KIND_LENGTH, -1000.0, 1000.0, "m", "2 m",
                     "Above the toe, level; it does not stand above the ground."),
    [FLOOR] = NUMBER("floor", LW_KIND_LENGTH, -1000.0, 1000.0, "m", "-5 m",
                     "Level above the toe below which no circle is looked for."),
    [DEPTH] = NUMBER("depth", LW_KIND_LENGTH, 0.01, 1000.0, "m", "1.5 m",
                     "Upright, of a plane along a long slope, in soil 1."),
    SOIL(1, "Of the top soil."),
    SOIL(2, "Of the next soil down."),
    SOIL(3, "Of the third."),
    SOIL(4, "Of the fourth."),
};

static const lw_formula_sheet sheet = {
    .usage =
        "lowwall slip [--json] [--units metric|us] ITEM=VALUE ...\n"
        "Factor of a plain slope against a slip along a circle, by ordinary slices and by Bishop, with every "
        "slice;\nalong a plane with 'depth'. The toe is the origin, x runs into the slope, y up.\n",
    .item = items,
    .count = ITEM_COUNT,
};

static const lw_formula_value *of_soil(const lw_formula_given *given, int soil, slip_item what) {
  return &given->value[(int)what + 5 * soil];
}

static int layers_of(const lw_formula_given *given) {
  int count = 1;
  for (int i = 1; i < LAYERS; i++)
    for (int k = FRICTION; k <= BOTTOM; k++)
      if (of_soil(given, i, (slip_item)k)->given) count = i + 1;
  return count;
}

/* Each layer has a weight and something that holds it; all but the last a bottom below the one before. */
static void hold_layers(lw_formula_given *given) {
  int count = layers_of(given);
  for (int i = 0; i < count; i++) {
    const lw_formula_value *bottom = of_soil(given, i, BOTTOM);
    bool weighs = of_soil(given, i, WEIGHT)->given;
    bool strong = of_soil(given, i, FRICTION)->given || of_soil(given, i, COHESION)->given;
    size_t missing = (size_t)((!weighs ? (int)WEIGHT : !strong ? (int)FRICTION : (int)BOTTOM) + 5 * i);
    if (!weighs || !strong || (i < count - 1 && !bottom->given))
      lw_faults_add(&given->faults, LW_FAULT_MISSING_ITEM, (lw_cell_place){0, 0}, items[missing].item.name,
                    "", "'%s=%s'", items[missing].item.name, items[missing].item.example);
    if (i == count - 1 && bottom->given)
      lw_formula_contradict(given, (size_t)(BOTTOM + 5 * i), "no bottom: the last soil goes on down");
    if (i > 0 && i < count - 1 && bottom->given && bottom->si <= of_soil(given, i - 1, BOTTOM)->si)
      lw_formula_contradict(given, (size_t)(BOTTOM + 5 * i), "more than the bottom of the soil above");
  }
}

static void hold_against_each_other(lw_formula_given *given) {
  const lw_formula_value *v = given->value;
  int circle = v[CENTRE_X].given + v[CENTRE_Y].given + v[RADIUS].given;
  int first = v[CENTRE_X].given ? CENTRE_X : v[CENTRE_Y].given ? CENTRE_Y : RADIUS;
  hold_layers(given);
  if (!v[HEIGHT].given && !v[DEPTH].given)
    lw_faults_add(&given->faults, LW_FAULT_MISSING_ITEM, (lw_cell_place){0, 0}, "height", "",
                  "'height=10 m' for a circle, or 'depth=1.5 m' for a plane");
  if (circle > 0 && circle < 3)
    lw_formula_contradict(given, (size_t)first, "centre x, centre y and radius, all three or none");
  if (circle > 0 && !v[HEIGHT].given)
    lw_formula_contradict(given, (size_t)first, "a height of the slope with it, as in 'height=10 m'");
  if (v[DEPTH].given && v[SLOPE].si > DEG(89))
    lw_formula_contradict(given, SLOPE, "less than upright: a long slope has ground on it");
}

static lw_slip_soil soil_of(const lw_formula_given *given, int i, double bottom_y_m) {
  const lw_formula_value *wet = of_soil(given, i, SATURATED);
  double moist = of_soil(given, i, WEIGHT)->si;
  return (lw_slip_soil){.friction_rad = of_soil(given, i, FRICTION)->si,
                        .cohesion_kpa = of_soil(given, i, COHESION)->si,
                        .unit_weight_kn_per_m3 = moist,
                        .saturated_unit_weight_kn_per_m3 = wet->given ? fmax(wet->si, moist) : moist,
                        .bottom_y_m = bottom_y_m};
}

static void build(const lw_formula_given *given, lw_slip_ground *g) {
  const lw_formula_value *v = given->value;
  double height = v[HEIGHT].si, run = height / tan(v[SLOPE].si), reach = 4.0 * height;
  int count = layers_of(given);
  double water = v[WATER].given ? v[WATER].si : -INFINITY;
  run = v[SLOPE].si > DEG(89.99) ? 0.0 : run;
  *g = (lw_slip_ground){
      .corner_count = 4,
      .corner = {{-2.0 * reach, 0.0}, {0.0, 0.0}, {run, height}, {run + 2.0 * reach, height}},
      .soil_count = count - 1,
      .layer_x_m = -INFINITY,
      .raised_x_m = INFINITY,
      .water = {0.0, water, 0.0, water, 9.81},
      .floor_y_m = v[FLOOR].given ? v[FLOOR].si : -INFINITY,
      .pore_ratio = v[PORE_RATIO].si,
      .box = {-reach, 0.0, fmin(0.02 * height, 0.5 * run), run + reach, 0.0, 0.0}};
  for (int i = 0; i < count - 1; i++) g->soil[i] = soil_of(given, i, height - of_soil(given, i, BOTTOM)->si);
  g->below = soil_of(given, count - 1, -INFINITY);
}

/* Where a circle leaves the ground, in front or behind; false where it does not. */
static bool end_of(const lw_slip_ground *g, const lw_slip_circle *c, bool entry, double *x_m, double *y_m) {
  bool found = false;
  for (int i = 0; i + 1 < g->corner_count; i++) {
    lw_corner p = g->corner[i], q = g->corner[i + 1];
    double dx = q.x_m - p.x_m, dy = q.y_m - p.y_m, fx = p.x_m - c->centre_x_m, fy = p.y_m - c->centre_y_m;
    double a = dx * dx + dy * dy, b = fx * dx + fy * dy,
           rest = b * b - a * (fx * fx + fy * fy - c->radius_m * c->radius_m);
    if (a <= 0.0 || rest < 0.0) continue;
    for (int sign = -1; sign <= 1; sign += 2) {
      double t = (-b + sign * sqrt(rest)) / a, x = p.x_m + t * dx, y = p.y_m + t * dy;
      if (t < 0.0 || t > 1.0 || y > c->centre_y_m) continue;
      if (found && (entry ? x <= *x_m : x >= *x_m)) continue;
      found = true;
      *x_m = x;
      *y_m = y;
    }
  }
  return found;
}

/* Where an end of the circle meets a corner of the ground to the last digits a slice of no width is left. */
static void leave_out_nothing(lw_slip_slices *list) {
  static const double LEAST_M = 1e-6;
  int kept = 0;
  for (int i = 0; i < list->count; i++)
    if (list->slice[i].width_m > LEAST_M) list->slice[kept++] = list->slice[i];
  list->count = kept;
}

static lw_status go_along_circle(const lw_formula_given *given, lw_slip_run *run) {
  const lw_formula_value *v = given->value;
  int slices = v[SLICES].given ? (int)lround(v[SLICES].si) : 20;
  lw_slip_circle circle = {
      .centre_x_m = v[CENTRE_X].si, .centre_y_m = v[CENTRE_Y].si, .radius_m = v[RADIUS].si};
  run->searched = !v[RADIUS].given;
  build(given, &run->ground);
  if (run->searched) {
    lw_slip found;
    lw_slip_search(&run->ground, LW_SLIP_BISHOP, &found);
    if (found.status != LW_OK) return LW_NO_SOLUTION;
    circle = found.circle;
  } else if (!end_of(&run->ground, &circle, false, &circle.exit_x_m, &circle.exit_y_m) ||
             !end_of(&run->ground, &circle, true, &circle.entry_x_m, &circle.entry_y_m)) {
    return LW_NO_SOLUTION;
  }
  lw_status status = lw_slip_of_circle(&run->ground, &circle, slices, &run->slip, &run->list);
  if (status == LW_OK) leave_out_nothing(&run->list);
  return status;
}

/* Of flow along the slope the pore pressure is γw times the depth below the water times cos²β; a ratio is one
 * of the soil's weight. */
static void go_along_plane(const lw_formula_given *given, lw_slip_run *run) {
  const lw_formula_value *v = given->value;
  lw_slip_soil soil = soil_of(given, 0, -INFINITY);
  double cosine = cos(v[SLOPE].si);
  run->slope_rad = v[SLOPE].si;
  run->depth_m = v[DEPTH].si;
  run->uplift_kpa = v[PORE_RATIO].si * soil.unit_weight_kn_per_m3 * run->depth_m / (cosine * cosine);
  run->ground.below = soil;
  run->plane_factor = lw_slip_infinite(&soil, run->slope_rad, run->depth_m, run->uplift_kpa, NULL);
}

static int refuse_no_circle(lw_formula_given *given, const lw_slip_run *run) {
  lw_faults_add(&given->faults, LW_FAULT_CONTRADICTION, (lw_cell_place){0, 0}, "", "", "%s (%s)",
                run->searched
                    ? "other ground: no circle has a factor"
                    : "another circle: this one leaves the ground, overhangs where it goes in, or drives "
                      "nothing",
                lw_reason_slug(LW_REASON_NO_CIRCLE));
  return lw_formula_refuse(given, "slip");
}

static int work_out(lw_formula_given *given, lw_slip_run *run) {
  lw_text text = {0};
  run->circular = given->value[HEIGHT].given;
  run->plane = given->value[DEPTH].given;
  run->units = given->units;
  if (run->plane) go_along_plane(given, run);
  if (run->circular && go_along_circle(given, run) != LW_OK) return refuse_no_circle(given, run);
  if (given->json) return lw_formula_print_json(lw_slip_write_json(given, run));
  lw_slip_write_text(run, &text);
  return lw_output_write(NULL, &text, LW_EXIT_DONE);
}

int lw_cli_slip(int argc, char **argv) {
  lw_formula_given given;
  int ended = lw_formula_read(&sheet, argc, argv, &given);
  if (ended > 0) return ended - 1;
  if (given.faults.count == 0) hold_against_each_other(&given);
  if (given.faults.count > 0) return lw_formula_refuse(&given, "slip");
  lw_slip_run *run = calloc(1, sizeof *run);
  if (run == NULL) return lw_cli_no_memory();
  int exit_status = work_out(&given, run);
  free(run);
  return exit_status;
}
