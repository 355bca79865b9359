/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The cost of the parts of one check, each as a multiple of Coulomb's closed formula. */
#include <lowwall/lowwall.h>

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

enum { ROUNDS = 7 };

typedef struct bench {
  lw_tables *tables;
  lw_case given;
  lw_result *result;
  lw_result *scratch;
  lw_plane plane;
  double sink; /* so that no call is optimised away */
} bench;

typedef void (*work)(bench *b, int turn);

static double seconds(void) {
  struct timespec now;
  timespec_get(&now, TIME_UTC);
  return (double)now.tv_sec + 1e-9 * (double)now.tv_nsec;
}

/* A height of its own each turn: no answer can be kept from the turn before. */
static void vary(bench *b, int turn) {
  b->plane.height_m = 0.6 + 1e-6 * turn;
}

static void coulomb(bench *b, int turn) {
  lw_thrust thrust;
  vary(b, turn);
  if (lw_coulomb_thrust(LW_ACTIVE, &b->plane, &thrust, NULL, NULL) == LW_OK) b->sink += thrust.total_kn_per_m;
}

static void rankine(bench *b, int turn) {
  lw_thrust thrust;
  vary(b, turn);
  if (lw_rankine_thrust(LW_ACTIVE, &b->plane, &thrust, NULL, NULL) == LW_OK) b->sink += thrust.total_kn_per_m;
}

static void wedge(bench *b, int turn) {
  lw_wedge found;
  vary(b, turn);
  if (lw_wedge_thrust(LW_ACTIVE, &b->plane, &found, NULL, NULL) == LW_OK) b->sink += found.thrust_kn_per_m;
}

static void whole(bench *b, int turn) {
  b->given.block_depth.si = 0.5 + 1e-7 * turn;
  if (lw_run(&b->given, b->tables, b->result, NULL) == LW_OK) b->sink += b->result->verdict.exit_status;
}

static void seismic(bench *b, int turn) {
  double k;
  lw_wall_angles angles = {0.5, 0.2, 0.0, 0.05 + 1e-9 * turn};
  if (lw_mononobe_okabe_coefficient(LW_ACTIVE, &angles, 0.1, &k, NULL) == LW_OK) b->sink += k;
}

static void strip(bench *b, int turn) {
  lw_elastic_strip load = {.pressure_kpa = 10.0, .near_m = 0.5 + 1e-7 * turn, .far_m = 1.5};
  b->sink += lw_elastic_strip_kpa(&load, 0.4, LW_ELASTIC_HALF_SPACE);
}

static void water(bench *b, int turn) {
  whole(b, turn);
  lw_water_find(b->result, b->scratch);
}

static void formats(bench *b, int turn) {
  whole(b, turn);
  lw_formats_compare(&b->result->wall, b->tables, &b->result->formats, &b->scratch->situations);
}

static void remedies(bench *b, int turn) {
  whole(b, turn);
  lw_remedies_find(b->result, b->scratch);
}

/* The fastest of several rounds: what the machine does when nothing else runs on it. */
static double microseconds(bench *b, work f, int turns) {
  double best = INFINITY;
  for (int round = 0; round < ROUNDS; round++) {
    double start = seconds();
    for (int turn = 0; turn < turns; turn++) f(b, turn);
    best = fmin(best, seconds() - start);
  }
  return best / turns * 1e6;
}

/* The same wall with one more thing on its sheet. */
static double changed(bench *b, const char *item) {
  lw_case plain = b->given;
  lw_faults *faults = calloc(1, sizeof *faults);
  b->given.settled = false;
  bool ready = faults && lw_sheet_override(item, 1, &b->given, faults) == LW_OK &&
               lw_case_settle(b->tables, &b->given, faults) == LW_OK;
  double time = ready ? microseconds(b, whole, 200) : NAN;
  b->given = plain;
  free(faults);
  return time;
}

static bool prepare(bench *b) {
  lw_text sheet = {0};
  lw_faults *faults = calloc(1, sizeof *faults);
  b->tables = malloc(sizeof *b->tables);
  b->result = malloc(sizeof *b->result);
  b->scratch = malloc(sizeof *b->scratch);
  bool ready = faults && b->tables && b->result && b->scratch &&
               lw_tables_read(NULL, b->tables, NULL) == LW_OK && lw_sheet_start("ground", &sheet) == LW_OK &&
               lw_sheet_read(sheet.data, sheet.length, &b->given, faults) == LW_OK &&
               lw_case_settle(b->tables, &b->given, faults) == LW_OK &&
               lw_run(&b->given, b->tables, b->result, NULL) == LW_OK;
  if (ready) {
    b->plane = b->result->situations.situation[0].base.back.plane;
    b->plane.along_ground = false;
    b->plane.wall_friction_rad = 0.2;
  }
  lw_text_free(&sheet);
  free(faults);
  return ready;
}

int main(void) {
  static const struct {
    const char *name;
    work f;
    int turns;
  } ROWS[] = {
      {"Coulomb's formula", coulomb, 200000},
      {"Rankine's formula", rankine, 200000},
      {"numerical wedge", wedge, 20000},
      {"one wall, every check and case", whole, 500},
      {"Mononobe-Okabe's coefficient", seismic, 200000},
      {"pressure of a strip by elasticity", strip, 200000},
      {"the water level of every check", water, 20},
      {"every set of factors on file", formats, 20},
      {"remedies and questions of one wall", remedies, 5},
  };
  static const struct {
    const char *name, *item;
  } CHANGES[] = {
      {"... with an earthquake", "seismic horizontal=0.1"},
      {"... with a storm", "storm rain=50 mm"},
      {"... with a trench in front", "trench depth=100 mm"},
      {"... without a search for slips", "method slip=not"},
  };
  static bench b;
  if (!prepare(&b)) return 1;
  double unit = 0.0;
  for (size_t i = 0; i < sizeof ROWS / sizeof ROWS[0]; i++) {
    double time = microseconds(&b, ROWS[i].f, ROWS[i].turns);
    if (i == 0) unit = time;
    printf("  %-36s %10.2f us  %9.1f times Coulomb\n", ROWS[i].name, time, time / unit);
  }
  for (size_t i = 0; i < sizeof CHANGES / sizeof CHANGES[0]; i++) {
    double time = changed(&b, CHANGES[i].item);
    if (isfinite(time))
      printf("  %-36s %10.2f us  %9.1f times Coulomb\n", CHANGES[i].name, time, time / unit);
  }
  free(b.tables);
  free(b.result);
  free(b.scratch);
  return isfinite(b.sink) ? 0 : 1;
}
