/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "pressure_question.h"

#include <math.h>

#include "base/angles.h"
#include "sheet/faults.h"
#include "pressure_ground.h"

/* The items of `lowwall pressure`, held against each other, and the plane that they make. */

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
  SLOPE_RUN,
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
  LOADS_BY,
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
    [SLOPE_RUN] = {NUMBER_ITEM("ground slope run", LW_KIND_LENGTH, 0.0, 1000.0, "m", "3 m",
                               "Level beyond; left out, it never ends. Trial wedges alone know it."),
                   .sheet_name = ""},
    [HEIGHT] = {NUMBER_ITEM("wall height", LW_KIND_LENGTH, 0.01, 100.0, "m", "2 m",
                            "Of the plane, vertical."),
                .sheet_name = "", .needed = true},
    [WEIGHT] = {NUMBER_ITEM("unit weight", LW_KIND_UNIT_WEIGHT, 5.0, 30.0, "kN/m3", "18 kN/m3",
                            "Of the soil."),
                .sheet_name = "soil 1 unit weight", .needed = true},
    [SURCHARGE] = {NUMBER_ITEM("surcharge", LW_KIND_PRESSURE, 0.0, 1000.0, "kPa", "5 kPa",
                               "On the ground, per horizontal area."),
                   .sheet_name = ""},
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
    [LOADS_BY] = {WORD_ITEM("method load pressure", "own|half space|doubled|curves|wedge", "doubled",
                            "How loads at a distance reach the plane."),
                  .sheet_name = ""},
    [PLANT_LOAD] = {NUMBER_ITEM("plant load", LW_KIND_LINE_LOAD, 0.0, 1000.0, "kN/m", "32 kN/m",
                                "Of compaction plant, its weight and force over its contact along the wall."),
                    .sheet_name = ""},
    [BED_WIDTH] = {NUMBER_ITEM("bed width", LW_KIND_LENGTH, 0.01, 1000.0, "m", "0.4 m",
                               "Between two upright faces: published values for narrow beds beside."),
                   .sheet_name = ""},
};

static const lw_formula_sheet sheet = {
    .usage =
        "lowwall pressure [--json | --csv] [--working] [--width MM] [--units metric|us] [-o FILE]\n"
        "                 ITEM=VALUE ...\n"
        "lowwall pressure [--json | --csv] [--working] [--width MM] [--units metric|us] [--tables DIR]\n"
        "                 [-o FILE] SHEET [ITEM=VALUE ...]\n"
        "\n"
        "Earth pressure on a plane, all methods side by side, and against depth; with a sheet on the planes\n"
        "behind its wall, as its own items and their cautious values have it.\n"
        "\n"
        "  --json              everything, as JSON\n"
        "  --csv               the pressure against depth, a row a depth\n"
        "  --working           every step of every method\n"
        "  --width MM          of the paper of a drawing, 90 to 400; 180 fits A4, 95 a phone\n"
        "  --units metric|us   what the page is written in; left out, as most of it is measured. JSON and "
        "CSV\n"
        "                      are SI\n"
        "  --tables DIR        values of your own: each CSV file in DIR replaces the table of its name\n"
        "  -o, --output FILE   write there, the whole of it or nothing; as a drawing where FILE ends in "
        ".svg,\n"
        "                      .pdf or .png\n"
        "  -h, --help          this page\n"
        "\n"
        "Without a sheet the items are those below, and of further soils and loads `soil 2 friction angle`,\n"
        "`soil 1 bottom`, `load 1 kind` and their like, as a sheet has them. Left out, an angle is 0.\n",
    .item = items,
    .count = ITEM_COUNT,
    .more = lw_pressure_ground_has,
};

/* A share is one of the least friction angle behind, as on a sheet. */
static double angle_of(const lw_formula_given *given, pressure_item i) {
  double least = given->value[FRICTION].si;
  for (int k = 1; k < LW_SOIL_MAX; k++) {
    const lw_quantity *friction = &given->more->ground.soil[k].friction;
    if (friction->origin != LW_ABSENT) least = fmin(least, friction->si);
  }
  return given->value[i].kind == LW_KIND_SHARE ? given->value[i].si * least : given->value[i].si;
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
  const lw_case *c = given->more;
  bool layered = c->ground.soil[0].bottom.origin != LW_ABSENT || c->load[0].kind.origin != LW_ABSENT;
  bool more = layered || v[SURCHARGE].si > 0.0 || v[COHESION].si > 0.0 || v[WATER_DEPTH].given ||
              v[SEISMIC].si > 0.0 || fabs(v[SEISMIC_UP].si) > 0.0 || v[RATIO].si > 1.0;
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
      .slope_run_m = v[SLOPE_RUN].given ? v[SLOPE_RUN].si : INFINITY,
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
  lw_pressure_ground_put(given->more, &plane);
  return plane;
}

/* Rankine's thrust lies along the ground in both states; a passive wedge counts its wall friction upwards. */
static lw_plane wedge_plane_of(const lw_pressure_run *run) {
  lw_plane plane = run->plane;
  if (plane.along_ground && run->state == LW_PASSIVE) plane.wall_friction_rad = -plane.wall_friction_rad;
  return plane;
}

/* Each method's own: the back with its friction and batter, and upright behind it as high. */
static lw_diagram_asked planes_of(const lw_formula_given *given, const lw_pressure_run *run) {
  lw_plane back = run->plane;
  back.wall_friction_rad = angle_of(given, WALL_FRICTION);
  lw_diagram_asked asked = lw_diagram_ask(&back);
  asked.loads_by = (lw_load_pressure)given->value[LOADS_BY].word;
  lw_pressure_ground_numbers(given->more, asked.load_number);
  return asked;
}

static void fill(const lw_formula_given *given, lw_pressure_run *run) {
  const lw_formula_value *v = given->value;
  run->plane = plane_of(given, run);
  run->wedge_plane = wedge_plane_of(run);
  run->asked = planes_of(given, run);
  run->beside.plant_given = v[PLANT_LOAD].given;
  run->beside.plant_kn_per_m = v[PLANT_LOAD].si;
  run->beside.bed_width_m = v[BED_WIDTH].si;
  run->beside.wall_friction_rad = angle_of(given, WALL_FRICTION);
  bool wet = run->plane.water_depth_m < run->plane.height_m, told = v[SATURATED].given;
  for (int i = 1; i < run->plane.layer_count; i++)
    told = told && given->more->ground.soil[i].saturated_unit_weight.origin != LW_ABSENT;
  run->moist_below_water = wet && !told;
}

int lw_pressure_question_help(void) {
  return lw_formula_help(&sheet);
}

bool lw_pressure_question_read(const lw_arguments *arguments, const char *units,
                               lw_pressure_question *question) {
  lw_formula_given *given = &question->given;
  lw_pressure_run *run = &question->run;
  lw_formula_begin(&sheet, "pressure", given);
  given->more = &question->more;
  lw_formula_take(arguments, given);
  lw_formula_take_units(units, given);
  choose(given, run);
  bool read_well = given->faults.count == 0;
  hold_words_against_each_other(given, run);
  if (read_well) lw_pressure_ground_hold(given->more, &given->faults);
  if (read_well) hold_numbers_against_each_other(given, run);
  if (given->faults.count > 0) return false;
  fill(given, run);
  return true;
}
