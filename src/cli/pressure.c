/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/pressure.h>

#include <math.h>

#include "base/angles.h"
#include "sheet/faults.h"
#include "cli.h"
#include "formula.h"
#include "pressure_run.h"

#define DEG(d) ((d)*LW_PI / 180.0)
#define ITEM(n, t, k) .item = {.part = LW_ABOUT_PRESSURE, .name = (n), .type = (t), .kind = (k)
#define NUMBER_ITEM(n, k, from, to, u, e, m) \
  ITEM(n, LW_ITEM_QUANTITY, k), .low = (from), .high = (to), .unit = (u), .example = (e), .means = (m) \
  }
#define WORD_ITEM(n, list, e, m) \
  ITEM(n, LW_ITEM_CHOICE, LW_KIND_NUMBER), .words = (list), .example = (e), .means = (m) \
  }

typedef enum pressure_item {
  METHOD,
  STATE,
  FRICTION,
  WALL_FRICTION,
  BATTER,
  SLOPE,
  HEIGHT,
  WEIGHT,
  SURCHARGE,
  COHESION,
  WATER_DEPTH,
  SATURATED,
  WATER_WEIGHT,
  CRACK,
  PASSIVE_BY,
  SEISMIC,
  SEISMIC_UP,
  SEISMIC_HEIGHT,
  RATIO,
  RATIO_RULE,
  PLANT_LOAD,
  BED_WIDTH,
  ITEM_COUNT
} pressure_item;

static const lw_formula_item items[ITEM_COUNT] = {
    [METHOD] = {WORD_ITEM("method", "coulomb|rankine|wedge|at rest", "rankine", "How the thrust is found."),
                .sheet_name = "method pressure"},
    [STATE] = {WORD_ITEM("state", "active|passive|at rest", "active", "Which way the soil yields."),
               .sheet_name = ""},
    [FRICTION] = {NUMBER_ITEM("friction angle", LW_KIND_ANGLE, 0.0, DEG(75), "deg", "30 deg", "Of the soil."),
                  .sheet_name = "soil 1 friction angle", .needed = true},
    [WALL_FRICTION] = {NUMBER_ITEM("wall friction", LW_KIND_ANGLE_OR_SHARE, DEG(-60), DEG(60), "deg",
                                   "20 deg", "An angle, or a share of the friction angle."),
                       .sheet_name = ""},
    [BATTER] = {NUMBER_ITEM("back batter", LW_KIND_ANGLE, DEG(-60), DEG(60), "deg", "10 deg",
                            "Of the back from the vertical, positive when soil lies on it."),
                .sheet_name = ""},
    [SLOPE] = {NUMBER_ITEM("ground slope", LW_KIND_ANGLE, DEG(-60), DEG(60), "deg", "1:4",
                           "Positive rising away from the wall."),
               .sheet_name = ""},
    [HEIGHT] = {NUMBER_ITEM("wall height", LW_KIND_LENGTH, 0.01, 100.0, "m", "2 m",
                            "Of the plane, vertical."),
                .sheet_name = "", .needed = true},
    [WEIGHT] = {NUMBER_ITEM("unit weight", LW_KIND_UNIT_WEIGHT, 5.0, 30.0, "kN/m3", "18 kN/m3",
                            "Of the soil."),
                .sheet_name = "soil 1 unit weight", .needed = true},
    [SURCHARGE] = {NUMBER_ITEM("surcharge", LW_KIND_PRESSURE, 0.0, 1000.0, "kPa", "5 kPa",
                               "On the ground, per horizontal area."),
                   .sheet_name = "load 1 pressure"},
    [COHESION] = {NUMBER_ITEM("cohesion", LW_KIND_PRESSURE, 0.0, 1000.0, "kPa", "5 kPa", "Of the soil."),
                  .sheet_name = "soil 1 cohesion"},
    [WATER_DEPTH] = {NUMBER_ITEM("water depth", LW_KIND_LENGTH, 0.0, 100.0, "m", "1 m",
                                 "Of standing water below the plane's top; left out, there is none."),
                     .sheet_name = ""},
    [SATURATED] = {NUMBER_ITEM("saturated unit weight", LW_KIND_UNIT_WEIGHT, 9.0, 30.0, "kN/m3", "20 kN/m3",
                               "Of the soil below the water."),
                   .sheet_name = "soil 1 saturated unit weight"},
    [WATER_WEIGHT] = {NUMBER_ITEM("water unit weight", LW_KIND_UNIT_WEIGHT, 9.0, 11.0, "kN/m3", "9.81 kN/m3",
                                  "Left out, 9.81 kN/m3."),
                      .sheet_name = ""},
    [CRACK] = {WORD_ITEM("method crack", "dry|wet|triangle", "wet",
                         "Crack in cohesive soil: dry, filled with water, or a straight line below it."),
               .sheet_name = ""},
    [PASSIVE_BY] = {WORD_ITEM("method passive by", "own|log spiral|annex c", "log spiral",
                              "Passive along a curve, in place of the method's own."),
                    .sheet_name = ""},
    [SEISMIC] = {NUMBER_ITEM("seismic horizontal", LW_KIND_NUMBER, 0.0, 1.0, "", "0.1",
                             "Horizontal earthquake coefficient."),
                 .sheet_name = ""},
    [SEISMIC_UP] = {NUMBER_ITEM("seismic vertical", LW_KIND_NUMBER, -0.9, 0.9, "", "0.05",
                                "Vertical earthquake coefficient, positive upwards."),
                    .sheet_name = ""},
    [SEISMIC_HEIGHT] = {NUMBER_ITEM("method seismic height", LW_KIND_SHARE, 0.0, 1.0, "", "50 %",
                                    "Where what it adds acts, a share of the height; left out, 0.6."),
                        .sheet_name = ""},
    [RATIO] = {NUMBER_ITEM("overconsolidation", LW_KIND_NUMBER, 1.0, 100.0, "", "2",
                           "The greatest weight that ever lay on it over today's, at rest."),
               .sheet_name = "soil 1 overconsolidation"},
    [RATIO_RULE] = {WORD_ITEM("method overconsolidation", "mayne-kulhawy=mayne kulhawy|en1997=en 1997",
                              "en1997", "Power of that ratio: sine of the friction angle, or a half."),
                    .sheet_name = ""},
    [PLANT_LOAD] = {NUMBER_ITEM("plant load", LW_KIND_LINE_LOAD, 0.0, 1000.0, "kN/m", "32 kN/m",
                                "Of compaction plant, its weight and force over its contact along the wall."),
                    .sheet_name = ""},
    [BED_WIDTH] = {NUMBER_ITEM("bed width", LW_KIND_LENGTH, 0.01, 1000.0, "m", "0.4 m",
                               "Between two upright faces: published values for narrow beds beside."),
                   .sheet_name = ""},
};

static const lw_formula_sheet sheet = {
    .usage = "lowwall pressure [--json] ITEM=VALUE ...\n"
             "Coefficient and thrust of one soil on one plane, with the working. Left out, an angle is 0.\n",
    .item = items,
    .count = ITEM_COUNT,
};

static double angle_of(const lw_formula_given *given, pressure_item i) {
  bool share = given->value[i].kind == LW_KIND_SHARE;
  return share ? given->value[i].si * given->value[FRICTION].si : given->value[i].si;
}

static bool is_vertical_method(lw_pressure_method method) {
  return method == LW_PRESSURE_RANKINE || method == LW_PRESSURE_AT_REST;
}

static void choose(const lw_formula_given *given, lw_pressure_run *run) {
  run->state = (lw_earth_state)given->value[STATE].word;
  run->method = (lw_pressure_method)given->value[METHOD].word;
  if (run->state == LW_AT_REST) run->method = LW_PRESSURE_AT_REST;
  if (run->method == LW_PRESSURE_AT_REST) run->state = LW_AT_REST;
  run->routine = lw_passive_routine_of((lw_passive_by)given->value[PASSIVE_BY].word);
  run->curved = run->routine != NULL;
  if (run->curved) run->method = LW_PRESSURE_COULOMB;
  if (!run->curved) run->routine = lw_pressure_routine_of(run->method);
  lw_item_word(&items[STATE].item, (int)run->state, run->state_word, sizeof run->state_word);
}

static void hold_words_against_each_other(lw_formula_given *given, const lw_pressure_run *run) {
  const lw_formula_value *v = given->value;
  bool yields = v[STATE].given && v[STATE].word != LW_AT_REST;
  if (yields && v[METHOD].given && v[METHOD].word == LW_PRESSURE_AT_REST)
    lw_formula_contradict(given, STATE, "'state=at rest', or another method");
  if (run->curved && run->state != LW_PASSIVE)
    lw_formula_contradict(given, PASSIVE_BY, "'state=passive', or the method's own");
  if (run->curved && (v[SEISMIC].si > 0.0 || fabs(v[SEISMIC_UP].si) > 0.0))
    lw_formula_contradict(given, PASSIVE_BY, "the method's own: curves are not computed in an earthquake");
  if (v[RATIO].given && run->method != LW_PRESSURE_AT_REST)
    lw_formula_contradict(given, RATIO, "'state=at rest': it raises the pressure of ground that stays put");
  if (!is_vertical_method(run->method)) return;
  if (fabs(v[WALL_FRICTION].si) > 0.0)
    lw_formula_contradict(given, WALL_FRICTION,
                          "0: Rankine and at rest act along the ground; Coulomb takes a wall friction");
  if (fabs(v[BATTER].si) > 0.0)
    lw_formula_contradict(given, BATTER,
                          "0: Rankine and at rest act on a vertical plane; Coulomb takes a battered back");
}

/* Plant and narrow beds are told of the plain case only: that of their published forms. */
static void hold_beside_against(lw_formula_given *given, const lw_pressure_run *run, pressure_item item) {
  static const char *const plain =
      "none, or dry level soil without cohesion, load or earthquake on an upright plane, active or at rest";
  const lw_formula_value *v = given->value;
  bool turned = fabs(v[BATTER].si) > 0.0 || fabs(v[SLOPE].si) > 0.0;
  bool more = v[SURCHARGE].si > 0.0 || v[COHESION].si > 0.0 || v[WATER_DEPTH].given || v[SEISMIC].si > 0.0 ||
              fabs(v[SEISMIC_UP].si) > 0.0 || v[RATIO].si > 1.0;
  if (!v[item].given) return;
  if (turned || more || run->state == LW_PASSIVE || v[FRICTION].si <= 0.0)
    lw_formula_contradict(given, item, plain);
}

static void hold_numbers_against_each_other(lw_formula_given *given, const lw_pressure_run *run) {
  const lw_formula_value *v = given->value;
  bool both_ways = is_vertical_method(run->method);
  double steep = run->state == LW_PASSIVE ? -v[SLOPE].si : v[SLOPE].si;
  if ((both_ways ? fabs(v[SLOPE].si) : steep) > v[FRICTION].si + 1e-12)
    lw_formula_contradict(given, SLOPE, "at most the friction angle: steeper ground does not stand");
  if (v[SATURATED].given && v[SATURATED].si < v[WEIGHT].si)
    lw_formula_contradict(given, SATURATED, "at least the unit weight of the moist soil");
  hold_beside_against(given, run, PLANT_LOAD);
  hold_beside_against(given, run, BED_WIDTH);
  if (v[COHESION].si > 0.0 && run->method == LW_PRESSURE_AT_REST)
    lw_formula_contradict(given, COHESION, "0: at rest is given for soil without cohesion");
}

static lw_plane plane_of(const lw_formula_given *given, const lw_pressure_run *run) {
  const lw_formula_value *v = given->value;
  bool along = is_vertical_method(run->method);
  lw_plane plane = {
      .height_m = v[HEIGHT].si,
      .batter_rad = v[BATTER].si,
      .wall_friction_rad = along ? v[SLOPE].si : angle_of(given, WALL_FRICTION),
      .slope_rad = v[SLOPE].si,
      .slope_run_m = INFINITY,
      .surcharge_kpa = v[SURCHARGE].si,
      .layer_count = 1,
      .water_depth_m = v[WATER_DEPTH].given ? v[WATER_DEPTH].si : INFINITY,
      .water_unit_weight_kn_per_m3 = v[WATER_WEIGHT].given ? v[WATER_WEIGHT].si : 9.81,
      .crack = (lw_crack)v[CRACK].word,
      .along_ground = along,
      .overconsolidation = (lw_overconsolidation)v[RATIO_RULE].word,
      .seismic = {v[SEISMIC].si, v[SEISMIC_UP].si, v[SEISMIC_HEIGHT].given ? v[SEISMIC_HEIGHT].si : 0.6,
                  false},
  };
  plane.layer[0] = (lw_layer){
      .bottom_m = INFINITY,
      .friction_rad = v[FRICTION].si,
      .cohesion_kpa = v[COHESION].si,
      .unit_weight_kn_per_m3 = v[WEIGHT].si,
      .saturated_unit_weight_kn_per_m3 = v[SATURATED].given ? v[SATURATED].si : v[WEIGHT].si,
      .overconsolidation = v[RATIO].given ? v[RATIO].si : 1.0,
  };
  return plane;
}

/* Rankine's thrust lies along the ground in both states; a passive wedge counts its wall friction upwards. */
static lw_plane wedge_plane_of(const lw_pressure_run *run) {
  lw_plane plane = run->plane;
  if (plane.along_ground && run->state == LW_PASSIVE) plane.wall_friction_rad = -plane.wall_friction_rad;
  return plane;
}

/* What a formula's coefficient would be with the wedge's thrust: only where weight and load alone push. */
static double wedge_coefficient(const lw_pressure_run *run) {
  const lw_plane *p = &run->plane;
  if (!lw_plane_is_plain(p) || p->water_depth_m < p->height_m) return NAN;
  double load = p->surcharge_kpa * cos(p->batter_rad) * cos(p->slope_rad) / cos(p->batter_rad - p->slope_rad);
  return (run->thrust.total_kn_per_m - run->thrust.seismic_kn_per_m) /
         (0.5 * p->layer[0].unit_weight_kn_per_m3 * p->height_m * p->height_m + load * p->height_m);
}

/* What Rankine has for the same height of soil, who takes neither friction nor batter of a back. */
static void find_rankine(lw_pressure_run *run) {
  lw_plane plane = run->plane;
  if (is_vertical_method(run->method) || run->curved) return;
  plane.along_ground = true;
  plane.batter_rad = 0.0;
  plane.wall_friction_rad = plane.slope_rad;
  run->rankine_known = lw_rankine_thrust(run->state, &plane, &run->rankine, NULL, NULL) == LW_OK;
}

static lw_status compute(lw_pressure_run *run, const lw_working *working) {
  lw_status status = run->routine->thrust(run->state, &run->plane, &run->thrust, &run->error, working);
  if (status != LW_OK) return status;
  const lw_working *second = run->method == LW_PRESSURE_WEDGE ? NULL : working;
  status = lw_trial_wedge_thrust(run->state, &run->wedge_plane, &run->wedge, &run->wedge_error, second);
  run->wedge_known = status == LW_OK;
  double formula = run->thrust.total_kn_per_m, gap = fabs(formula - run->wedge.thrust_kn_per_m);
  run->faulty = lw_pressure_must_agree(run) && !(gap <= 1e-6 * fmax(formula, 1e-3));
  if (run->method == LW_PRESSURE_WEDGE) run->thrust.coefficient = wedge_coefficient(run);
  find_rankine(run);
  lw_pressure_beside_find(run->state, &run->plane, &run->beside, working);
  return LW_OK;
}

static int print_json(const lw_formula_given *given, const lw_pressure_run *run, json_t *steps) {
  const lw_pressure_routine *routine = run->routine;
  json_t *out = json_object();
  lw_json_set_text(out, "method", routine->slug);
  lw_json_set_text(out, "title", routine->title);
  lw_json_set_text(out, "state", run->state_word);
  lw_json_set_text(out, "source", lw_pressure_run_source(run));
  lw_formula_given_json(given, lw_json_object(out, "given"));
  lw_pressure_run_json(run, out);
  lw_json_put(out, "working", steps);
  return lw_formula_print_json(out);
}

static int refuse_no_solution(lw_formula_given *given, const lw_pressure_run *run) {
  lw_faults_add(&given->faults, LW_FAULT_CONTRADICTION, (lw_cell_place){0, 0}, "", "",
                "other values: %s (%s)", run->error.text, lw_reason_slug(run->error.reason));
  return lw_formula_refuse(given, "pressure");
}

static int answer_json(lw_formula_given *given, lw_pressure_run *run) {
  json_t *steps = json_array();
  lw_working working = lw_formula_json_working(steps);
  if (compute(run, &working) == LW_OK) return print_json(given, run, steps);
  json_decref(steps);
  return refuse_no_solution(given, run);
}

static int answer_text(lw_formula_given *given, lw_pressure_run *run) {
  lw_text steps = {0}, text = {0};
  lw_working working = lw_formula_text_working(&steps);
  if (compute(run, &working) != LW_OK) {
    lw_text_free(&steps);
    return refuse_no_solution(given, run);
  }
  lw_pressure_run_text(run, &text);
  lw_text_add(&text, "\nWorking\n");
  lw_text_add(&text, steps.data != NULL ? steps.data : "");
  text.failed = text.failed || steps.failed;
  lw_text_free(&steps);
  return lw_formula_print(&text);
}

int lw_cli_pressure(int argc, char **argv) {
  lw_formula_given given;
  lw_pressure_run run = {0};
  lw_formula_next next = lw_formula_read(&sheet, argc, argv, &given);
  if (next == LW_FORMULA_HELPED) return 0;
  choose(&given, &run);
  bool read_well = given.faults.count == 0;
  hold_words_against_each_other(&given, &run);
  if (read_well) hold_numbers_against_each_other(&given, &run);
  if (given.faults.count > 0) return lw_formula_refuse(&given, "pressure");
  run.plane = plane_of(&given, &run);
  run.wedge_plane = wedge_plane_of(&run);
  run.beside.plant_given = given.value[PLANT_LOAD].given;
  run.beside.plant_kn_per_m = given.value[PLANT_LOAD].si;
  run.beside.bed_width_m = given.value[BED_WIDTH].si;
  run.beside.wall_friction_rad = angle_of(&given, WALL_FRICTION);
  run.moist_below_water = run.plane.water_depth_m < run.plane.height_m && !given.value[SATURATED].given;
  return given.json ? answer_json(&given, &run) : answer_text(&given, &run);
}
