/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/ground.h>

#include <math.h>

#include "base/angles.h"
#include "base/tell.h"
#include "sheet/faults.h"
#include "cli.h"
#include "formula.h"
#include "output.h"

#define DEG(d) ((d)*LW_PI / 180.0)
#define ITEM(n, t, k) .item = {.part = LW_ABOUT_BEARING, .name = (n), .type = (t), .kind = (k)
#define NUMBER_ITEM(n, k, from, to, u, e, m) \
  ITEM(n, LW_ITEM_QUANTITY, k), .low = (from), .high = (to), .unit = (u), .example = (e), .means = (m) \
  }
#define WORD_ITEM(n, list, e, m) \
  ITEM(n, LW_ITEM_CHOICE, LW_KIND_NUMBER), .words = (list), .example = (e), .means = (m) \
  }

typedef enum bearing_item {
  WIDTH,
  DEPTH,
  FRICTION,
  COHESION,
  WEIGHT,
  OVERBURDEN,
  ECCENTRICITY,
  VERTICAL,
  HORIZONTAL,
  N_GAMMA,
  DEPTH_FACTORS,
  INCLINATION_FACTORS,
  ITEM_COUNT
} bearing_item;

static const lw_formula_item items[ITEM_COUNT] = {
    [WIDTH] = {NUMBER_ITEM("width", LW_KIND_LENGTH, 0.01, 100.0, "m", "1.2 m", "Of the strip."),
               .sheet_name = "base width", .needed = true},
    [DEPTH] = {NUMBER_ITEM("depth", LW_KIND_LENGTH, 0.0, 100.0, "m", "0.5 m",
                           "Of its underside below the ground in front."),
               .sheet_name = "wall embedment"},
    [FRICTION] = {NUMBER_ITEM("friction angle", LW_KIND_ANGLE, 0.0, DEG(50), "deg", "30 deg",
                              "Of the soil below."),
                  .sheet_name = "footing soil friction angle", .needed = true},
    [COHESION] = {NUMBER_ITEM("cohesion", LW_KIND_PRESSURE, 0.0, 1000.0, "kPa", "0 kPa",
                              "Of the soil below."),
                  .sheet_name = "footing soil cohesion"},
    [WEIGHT] = {NUMBER_ITEM("unit weight", LW_KIND_UNIT_WEIGHT, 1.0, 30.0, "kN/m3", "18 kN/m3",
                            "Of the soil; its buoyant weight below water."),
                .sheet_name = "footing soil unit weight", .needed = true},
    [OVERBURDEN] = {NUMBER_ITEM("overburden", LW_KIND_PRESSURE, 0.0, 10000.0, "kPa", "9 kPa",
                                "Effective, beside the footing; left out, unit weight times depth."),
                    .sheet_name = ""},
    [ECCENTRICITY] = {NUMBER_ITEM("eccentricity", LW_KIND_LENGTH, -50.0, 50.0, "m", "0.1 m",
                                  "Of the load from the middle."),
                      .sheet_name = ""},
    [VERTICAL] = {NUMBER_ITEM("vertical", LW_KIND_LINE_LOAD, 0.0, 1e6, "kN/m", "40 kN/m", "Load on it."),
                  .sheet_name = ""},
    [HORIZONTAL] = {NUMBER_ITEM("horizontal", LW_KIND_LINE_LOAD, -1e6, 1e6, "kN/m", "10 kN/m", "Load on it."),
                    .sheet_name = ""},
    [N_GAMMA] = {WORD_ITEM("n gamma", "own|meyerhof|hansen|vesic|en1997=en 1997", "own",
                           "Whose Ngamma all authors take."),
                 .sheet_name = "method n gamma"},
    [DEPTH_FACTORS] = {WORD_ITEM("depth factors", "own|none", "none", "By author, or none."),
                       .sheet_name = "method depth factors"},
    [INCLINATION_FACTORS] = {WORD_ITEM("inclination factors", "own|none", "none", "By author, or none."),
                             .sheet_name = "method inclination factors"},
};

static const lw_formula_sheet sheet = {
    .usage = "lowwall bearing [--json] [--units metric|us] ITEM=VALUE ...\n"
             "Ultimate pressure below a strip footing by five authors, side by side, with the working.\n",
    .item = items,
    .count = ITEM_COUNT,
};

enum { FIRST = LW_BEARING_TERZAGHI, LAST = LW_BEARING_EN1997, AUTHORS = LAST - FIRST + 1 };

typedef struct bearing_answer {
  const lw_bearing_routine *routine;
  lw_status status;
  lw_bearing bearing;
  lw_error error;
} bearing_answer;

typedef struct bearing_run {
  lw_units units; /* of what is printed */
  lw_strip strip;
  bearing_answer by[AUTHORS];
} bearing_run;

static lw_strip strip_of(const lw_formula_given *given) {
  const lw_formula_value *v = given->value;
  return (lw_strip){
      .width_m = v[WIDTH].si,
      .eccentricity_m = v[ECCENTRICITY].si,
      .depth_m = v[DEPTH].si,
      .overburden_kpa = v[OVERBURDEN].given ? v[OVERBURDEN].si : v[WEIGHT].si * v[DEPTH].si,
      .friction_rad = v[FRICTION].si,
      .cohesion_kpa = v[COHESION].si,
      .unit_weight_kn_per_m3 = v[WEIGHT].si,
      .vertical_kn_per_m = v[VERTICAL].si,
      .horizontal_kn_per_m = v[HORIZONTAL].si,
      .n_gamma = (lw_n_gamma)v[N_GAMMA].word,
      .depth_factors = (lw_own_or_none)v[DEPTH_FACTORS].word,
      .inclination_factors = (lw_own_or_none)v[INCLINATION_FACTORS].word,
  };
}

static void compute(bearing_run *run, const lw_working *working) {
  for (int i = 0; i < AUTHORS; i++) {
    bearing_answer *a = &run->by[i];
    a->routine = lw_bearing_routine_of((lw_bearing_method)(FIRST + i));
    a->status = a->routine->ultimate(&run->strip, &a->bearing, &a->error, working);
  }
}

static void hold_against_each_other(lw_formula_given *given) {
  const lw_formula_value *v = given->value;
  if (v[WIDTH].given && 2.0 * fabs(v[ECCENTRICITY].si) >= v[WIDTH].si)
    lw_formula_contradict(given, ECCENTRICITY, "less than half the width: beyond, no width bears the load");
  if (fabs(v[HORIZONTAL].si) > 0.0 && !(v[VERTICAL].si > 0.0))
    lw_formula_contradict(given, HORIZONTAL, "a vertical load with it, as in 'vertical=40 kN/m'");
}

/* One row of the table: a label, its unit, and one number of each author. */
typedef struct table_row {
  const char *key, *label, *unit;
  size_t offset;
  int decimals;
} table_row;

#define ROW(k, l, u, field, d) \
  { (k), (l), (u), offsetof(lw_bearing, field), (d) }
static const table_row rows[] = {
    ROW("nc", "Nc", "", nc, 3),
    ROW("nq", "Nq", "", nq, 3),
    ROW("n_gamma", "Ngamma", "", n_gamma, 3),
    ROW("dc", "dc", "", dc, 4),
    ROW("dq", "dq", "", dq, 4),
    ROW("d_gamma", "dgamma", "", d_gamma, 4),
    ROW("ic", "ic", "", ic, 4),
    ROW("iq", "iq", "", iq, 4),
    ROW("i_gamma", "igamma", "", i_gamma, 4),
    ROW("effective_width_m", "B' = B - 2e", "m", effective_width_m, 4),
    ROW("ultimate_kpa", "ultimate", "kPa", ultimate_kpa, 2),
    ROW("net_kpa", "net", "kPa", net_kpa, 2),
};
enum { ROWS = sizeof rows / sizeof rows[0] };

static double field_of(const lw_bearing *bearing, const table_row *row) {
  return *(const double *)(const void *)((const char *)bearing + row->offset);
}

static double applied_kpa(const bearing_run *run, const bearing_answer *a) {
  return run->strip.vertical_kn_per_m / a->bearing.effective_width_m;
}

static void set_load(json_t *object, const bearing_run *run, const bearing_answer *a) {
  bool loaded = run->strip.vertical_kn_per_m > 0.0;
  const char *reason = loaded ? NULL : lw_reason_slug(LW_REASON_NO_DEMAND);
  lw_formula_set(object, "ultimate_kn_per_m", a->bearing.ultimate_kpa * a->bearing.effective_width_m, NULL);
  lw_formula_set(object, "applied_kpa", applied_kpa(run, a), reason);
  lw_formula_set(object, "has", loaded ? a->bearing.ultimate_kpa / applied_kpa(run, a) : 0.0, reason);
}

static void add_answer(json_t *authors, const bearing_run *run, const bearing_answer *a) {
  json_t *object = lw_json_entry(authors);
  lw_json_set_text(object, "slug", a->routine->slug);
  lw_json_set_text(object, "title", a->routine->title);
  lw_json_set_text(object, "source", a->routine->source);
  for (int i = 0; i < ROWS; i++) lw_formula_set(object, rows[i].key, field_of(&a->bearing, &rows[i]), NULL);
  set_load(object, run, a);
}

static json_t *run_json(const lw_formula_given *given, const bearing_run *run, json_t *steps) {
  json_t *out = json_object();
  lw_formula_given_json(given, lw_json_object(out, "given"));
  lw_formula_set(out, "effective_width_m", run->by[0].bearing.effective_width_m, NULL);
  lw_formula_set(out, "overburden_kpa", run->strip.overburden_kpa, NULL);
  lw_json_set_flag(out, "slides", run->by[0].bearing.slides);
  json_t *authors = lw_json_list(out, "authors");
  for (int i = 0; i < AUTHORS; i++) add_answer(authors, run, &run->by[i]);
  lw_json_put(out, "working", steps);
  return out;
}

static void add_row(const bearing_run *run, const table_row *row, lw_text *text) {
  char label[32];
  lw_tell_name unit = lw_tell_unit(run->units, row->unit);
  lw_print(label, sizeof label, "%s%s%s", row->label, unit.text[0] ? ", " : "", unit.text);
  lw_text_addf(text, "  %-18s", label);
  for (int i = 0; i < AUTHORS; i++)
    lw_text_addf(text, " %10.*f", row->decimals,
                 lw_tell_in(run->units, row->unit, field_of(&run->by[i].bearing, row)));
  lw_text_add(text, "\n");
}

static void add_table(const bearing_run *run, lw_text *text) {
  lw_text_addf(text, "Strip footing: width %.4g %s, effective overburden %.4g %s\n\n  %-18s",
               lw_tell_in(run->units, "m", run->strip.width_m), lw_tell_unit(run->units, "m").text,
               lw_tell_in(run->units, "kPa", run->strip.overburden_kpa), lw_tell_unit(run->units, "kPa").text,
               "");
  for (int i = 0; i < AUTHORS; i++) lw_text_addf(text, " %10s", run->by[i].routine->slug);
  lw_text_add(text, "\n");
  for (int i = 0; i < ROWS; i++) add_row(run, &rows[i], text);
  if (!(run->strip.vertical_kn_per_m > 0.0)) return;
  lw_text_addf(text, "  %-18s", "ultimate/applied");
  for (int i = 0; i < AUTHORS; i++)
    lw_text_addf(text, " %10.2f", run->by[i].bearing.ultimate_kpa / applied_kpa(run, &run->by[i]));
  lw_text_addf(text, "\n  applied, V/B': %s\n",
               lw_tell_amount(run->units, "kPa", applied_kpa(run, &run->by[0]), 2).text);
  if (run->by[0].bearing.slides)
    lw_text_add(text, "  It slides before it bears: H is more than V tan phi + B' c.\n");
}

static const bearing_answer *refused(const bearing_run *run) {
  for (int i = 0; i < AUTHORS; i++)
    if (run->by[i].status != LW_OK) return &run->by[i];
  return NULL;
}

static int refuse_no_solution(lw_formula_given *given, const bearing_answer *a) {
  lw_faults_add(&given->faults, LW_FAULT_CONTRADICTION, (lw_cell_place){0, 0}, "", "",
                "other values: %s (%s)", a->error.text, lw_reason_slug(a->error.reason));
  return lw_formula_refuse(given, "bearing");
}

static int print_json(lw_formula_given *given, bearing_run *run) {
  json_t *steps = json_array();
  lw_working working = lw_formula_json_working(steps);
  compute(run, &working);
  if (refused(run) == NULL) return lw_formula_print_json(run_json(given, run, steps));
  json_decref(steps);
  return refuse_no_solution(given, refused(run));
}

static int print_text(lw_formula_given *given, bearing_run *run) {
  lw_text text = {0}, steps = {0};
  lw_working working = lw_formula_text_working(&steps);
  working.units = run->units;
  compute(run, &working);
  if (refused(run) != NULL) {
    lw_text_free(&steps);
    return refuse_no_solution(given, refused(run));
  }
  add_table(run, &text);
  lw_text_add(&text, steps.data != NULL ? steps.data : "");
  text.failed = text.failed || steps.failed;
  lw_text_free(&steps);
  return lw_output_write(NULL, &text, LW_EXIT_DONE);
}

int lw_cli_bearing(int argc, char **argv) {
  lw_formula_given given;
  bearing_run run = {0};
  int ended = lw_formula_read(&sheet, argc, argv, &given);
  if (ended > 0) return ended - 1;
  if (given.faults.count == 0) hold_against_each_other(&given);
  if (given.faults.count > 0) return lw_formula_refuse(&given, "bearing");
  run.strip = strip_of(&given);
  run.units = given.units;
  return given.json ? print_json(&given, &run) : print_text(&given, &run);
}
