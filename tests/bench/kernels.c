/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The cost of each check, as a multiple of Coulomb's closed formula. First what is called directly, then one
 * wall, slips not searched, with one more thing on its sheet: there the second figure is what that adds. */
#include <lowwall/lowwall.h>

#include "checks/bearing.h"
#include "checks/compression.h"
#include "checks/overturning.h"
#include "checks/sliding.h"
#include "load_cases/situations.h"
#include "pressure/trial_wedge_scale.h"
#include "studies/fence_push.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

enum { ROUNDS = 5 };

typedef struct bench {
  lw_tables *tables;
  lw_case given;
  lw_result *result;
  lw_result *scratch;
  lw_factor_set_family factor_set;
  lw_plane plane;
  lw_trial_wedge wedge;
  lw_slip_ground ground;
  lw_strip strip;
  double sink; /* so that no call is optimised away */
} bench;

typedef void (*work)(bench *b, int turn);

/* Of the processor, so that others on the machine count little. */
static double seconds(void) {
  return (double)clock() / CLOCKS_PER_SEC;
}

/* A height of its own each turn: no answer can be kept from the turn before. */
static void vary(bench *b, int turn) {
  b->plane.height_m = 0.6 + 1e-6 * turn;
}

typedef lw_status (*formula)(lw_earth_state state, const lw_plane *plane, lw_thrust *thrust, lw_error *error,
                             const lw_working *working);

static void thrust_by(formula by, bench *b, int turn) {
  lw_thrust thrust;
  vary(b, turn);
  if (by(LW_ACTIVE, &b->plane, &thrust, NULL, NULL) == LW_OK) b->sink += thrust.total_kn_per_m;
}

static void coulomb(bench *b, int turn) {
  thrust_by(lw_coulomb_thrust, b, turn);
}
static void rankine(bench *b, int turn) {
  thrust_by(lw_rankine_thrust, b, turn);
}
static void at_rest(bench *b, int turn) {
  thrust_by(lw_at_rest_thrust, b, turn);
}

static void wedge(bench *b, int turn) {
  lw_trial_wedge found;
  vary(b, turn);
  if (lw_trial_wedge_thrust(LW_ACTIVE, &b->plane, &found, NULL, NULL) == LW_OK)
    b->sink += found.thrust_kn_per_m;
}

static void scaled(bench *b, int turn) {
  lw_trial_wedge found = {0};
  lw_plane from = b->plane;
  vary(b, turn);
  if (lw_trial_wedge_scale(&from, &b->wedge, &b->plane, &found)) b->sink += found.thrust_kn_per_m;
}

static const lw_situation *drained(const bench *b) {
  return &b->result->situations.situation[0];
}

/* The four checks of the base, its forces gathered already. */
static lw_check_context context_of(const bench *b, const lw_place *base) {
  return (lw_check_context){.wall = &b->result->wall,
                            .factor_set = &b->factor_set.set[0],
                            .load_case = &drained(b)->load_case,
                            .place = base};
}

static void sliding(bench *b, int turn) {
  (void)turn;
  const lw_place base = {LW_AT_BASE, 0, {&b->result->wall.section, 0.0}};
  lw_check_context c = context_of(b, &base);
  b->sink += lw_check_sliding(&c, &drained(b)->base, NULL).has.value;
}

static void overturning(bench *b, int turn) {
  (void)turn;
  const lw_place base = {LW_AT_BASE, 0, {&b->result->wall.section, 0.0}};
  lw_check_context c = context_of(b, &base);
  b->sink += lw_check_overturning(&c, &drained(b)->base, NULL).has.value;
}

static void compression(bench *b, int turn) {
  (void)turn;
  const lw_place base = {LW_AT_BASE, 0, {&b->result->wall.section, 0.0}};
  lw_check_context c = context_of(b, &base);
  b->sink += lw_check_compression(&c, &drained(b)->base, NULL).has.value;
}

static void bearing(bench *b, int turn) {
  (void)turn;
  const lw_place base = {LW_AT_BASE, 0, {&b->result->wall.section, 0.0}};
  lw_check_context c = context_of(b, &base);
  b->sink += lw_check_bearing(&c, &drained(b)->base, NULL).has.value;
}

/* One joint from its plane to its balance, formula and wedge. */
static void joint(bench *b, int turn) {
  lw_free_body body;
  lw_situation_joint(&b->result->wall, drained(b), 1 + turn % drained(b)->joint_count, &body);
  b->sink += body.thrust.total_kn_per_m;
}

typedef lw_status (*author)(const lw_strip *strip, lw_bearing *bearing, lw_error *error,
                            const lw_working *working);

static void bearing_by(author by, bench *b, int turn) {
  lw_bearing found = {0};
  lw_strip strip = b->strip;
  strip.friction_rad += 1e-9 * turn;
  if (by(&strip, &found, NULL, NULL) == LW_OK) b->sink += found.ultimate_kpa;
}

static void terzaghi(bench *b, int turn) {
  bearing_by(lw_bearing_terzaghi, b, turn);
}
static void vesic(bench *b, int turn) {
  bearing_by(lw_bearing_vesic, b, turn);
}
static void en1997(bench *b, int turn) {
  bearing_by(lw_bearing_en1997, b, turn);
}

static const lw_wall_angles ANGLES = {0.5, 0.2, 0.0, 0.05};

static void seismic(bench *b, int turn) {
  double k;
  lw_wall_angles angles = ANGLES;
  angles.slope_rad += 1e-9 * turn;
  if (lw_mononobe_okabe_coefficient(LW_ACTIVE, &angles, 0.1, &k, NULL) == LW_OK) b->sink += k;
}

static void annex_c(bench *b, int turn) {
  lw_annex_c found = {0};
  lw_wall_angles angles = ANGLES;
  angles.slope_rad += 1e-9 * turn;
  if (lw_annex_c_coefficients(LW_PASSIVE, &angles, &found, NULL, NULL) == LW_OK) b->sink += 1.0;
}

static void log_spiral(bench *b, int turn) {
  double k;
  lw_wall_angles angles = ANGLES;
  angles.slope_rad += 1e-9 * turn;
  if (lw_log_spiral_coefficient(LW_PASSIVE, &angles, &k, NULL, NULL) == LW_OK) b->sink += k;
}

static void strip(bench *b, int turn) {
  lw_elastic_strip load = {.pressure_kpa = 10.0, .near_m = 0.5 + 1e-7 * turn, .far_m = 1.5};
  b->sink += lw_elastic_strip_push(&load, 0.9, LW_ELASTIC_HALF_SPACE).push_kn_per_m;
}

static void slices(bench *b, int turn) {
  lw_slip slip = {0}, best = drained(b)->slip;
  lw_slip_slices *list = &(lw_slip_slices){0};
  best.circle.radius_m += 1e-9 * turn;
  if (lw_slip_of_circle(&b->ground, &best.circle, 30, &slip, list) == LW_OK) b->sink += slip.bishop;
}

static void search_by(lw_slip_method method, bench *b, int turn) {
  lw_slip slip = {0};
  (void)turn;
  lw_slip_search(&b->ground, method, &slip);
  b->sink += slip.bishop;
}

static void bishop(bench *b, int turn) {
  search_by(LW_SLIP_BISHOP, b, turn);
}
static void ordinary(bench *b, int turn) {
  search_by(LW_SLIP_ORDINARY, b, turn);
}

static void compaction(bench *b, int turn) {
  lw_compaction_diagram diagram;
  lw_compaction plant = {20.0 + 1e-6 * turn, 19.0, 0.55, LW_ACTIVE};
  if (lw_compaction_solve(&plant, &diagram, NULL, NULL) == LW_OK)
    b->sink += lw_compaction_thrust(&diagram, 0.9, NULL).thrust_kn_per_m;
}

static void plant_apart(bench *b, int turn) {
  lw_foot foot = {20.0 + 1e-6 * turn, 0.5};
  b->sink += lw_foot_thrust(&foot, 0.4, 0.9, NULL).thrust_kn_per_m;
}

static void arching(bench *b, int turn) {
  lw_lateral push;
  lw_slot slot = {.width_m = 0.4 + 1e-8 * turn, .unit_weight_kn_per_m3 = 18.0, .wall_friction_rad = 0.35};
  if (lw_slot_thrust(&slot, 0.33, 0.9, &push, NULL, NULL) == LW_OK) b->sink += push.thrust_kn_per_m;
}

static void fence(bench *b, int turn) {
  lw_fence_push push;
  lw_fence_bed bed = {0.4 + 1e-8 * turn, 0.5, 18.0, 20.0, 9.81, 2.5, INFINITY, 0.6};
  lw_fence_soil_push(&bed, &push, NULL);
  b->sink += bed.height_m;
}

static void situations(bench *b, int turn) {
  (void)turn;
  lw_situations_run(&b->result->wall, b->tables, LW_DETAIL_EVERYTHING, &b->scratch->situations);
  b->sink += b->scratch->situations.count;
}

static void whole(bench *b, int turn) {
  b->given.courses.block_depth.si = 0.5 + 1e-7 * turn;
  if (lw_run(&b->given, b->tables, LW_DETAIL_EVERYTHING, b->result, NULL) == LW_OK)
    b->sink += b->result->verdict.exit_status;
}

static void row(bench *b, int turn) {
  b->given.courses.block_depth.si = 0.5 + 1e-7 * turn;
  if (lw_run(&b->given, b->tables, LW_DETAIL_VERDICT, b->scratch, NULL) == LW_OK)
    b->sink += b->scratch->verdict.exit_status;
}

static void water(bench *b, int turn) {
  (void)turn;
  lw_water_find(b->result, b->scratch);
}

static void formats(bench *b, int turn) {
  (void)turn;
  lw_factor_sets_compare(&b->result->wall, b->tables, &b->result->factor_sets, &b->scratch->situations);
}

static void remedies(bench *b, int turn) {
  (void)turn;
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

/* The same wall without a search for slips and with other things on its sheet, "item=value;item=value". */
static double changed(bench *b, const char *more) {
  char items[200];
  bool searched = strncmp(more, "method slip", 11) == 0;
  lw_print(items, sizeof items, "%s%s", searched ? "" : "method slip=not;", more);
  lw_case plain = b->given;
  lw_faults *faults = calloc(1, sizeof *faults);
  bool ready = faults != NULL;
  b->given.complete = false;
  for (const char *at = items; ready && *at != '\0'; at += strcspn(at, ";"), at += *at == ';' ? 1 : 0) {
    char item[96];
    lw_print(item, sizeof item, "%.*s", (int)strcspn(at, ";"), at);
    ready = lw_sheet_override(item, 1, &b->given, faults) == LW_OK;
  }
  ready = ready && lw_case_complete(b->tables, &b->given, faults) == LW_OK;
  double time = ready ? microseconds(b, whole, 40) : NAN;
  b->given = plain;
  free(faults);
  return time;
}

static bool read_wall(bench *b, lw_faults *faults) {
  lw_text sheet = {0};
  bool ready = lw_tables_read(NULL, b->tables, NULL) == LW_OK && lw_sheet_start("ground", &sheet) == LW_OK &&
               lw_sheet_read(sheet.data, sheet.length, &b->given, faults) == LW_OK &&
               lw_case_complete(b->tables, &b->given, faults) == LW_OK &&
               lw_run(&b->given, b->tables, LW_DETAIL_EVERYTHING, b->result, NULL) == LW_OK;
  lw_text_free(&sheet);
  return ready;
}

static bool prepare(bench *b) {
  lw_faults *faults = calloc(1, sizeof *faults);
  b->tables = malloc(sizeof *b->tables);
  b->result = malloc(sizeof *b->result);
  b->scratch = malloc(sizeof *b->scratch);
  bool ready = faults && b->tables && b->result && b->scratch && read_wall(b, faults);
  free(faults);
  if (!ready) return false;
  lw_factor_set_read(b->tables, "lowwall", &b->factor_set);
  b->plane = drained(b)->base.back.plane;
  b->plane.along_ground = false;
  b->plane.wall_friction_rad = 0.2;
  lw_situation_slip_ground(&b->result->wall, b->tables, drained(b), &b->ground);
  b->strip =
      lw_bearing_strip(&b->result->wall, &drained(b)->load_case.ground, &drained(b)->base, LW_AT_BASE, NULL);
  vary(b, 1);
  return lw_trial_wedge_thrust(LW_ACTIVE, &b->plane, &b->wedge, NULL, NULL) == LW_OK &&
         drained(b)->joint_count > 0;
}

static const struct {
  const char *name;
  work f;
  int turns;
} PARTS[] = {
    {"Coulomb's formula", coulomb, 100000},
    {"Rankine's formula", rankine, 100000},
    {"at rest", at_rest, 100000},
    {"numerical wedge, searched", wedge, 5000},
    {"numerical wedge, scaled from another", scaled, 100000},
    {"sliding", sliding, 100000},
    {"overturning", overturning, 100000},
    {"share in compression", compression, 100000},
    {"bearing, presumptive", bearing, 100000},
    {"bearing by Terzaghi", terzaghi, 100000},
    {"bearing by Vesic", vesic, 100000},
    {"bearing by EN 1997-1", en1997, 100000},
    {"one joint: formula, wedge, balance", joint, 5000},
    {"strip load, integrated over the back", strip, 20000},
    {"earthquake, Mononobe and Okabe", seismic, 100000},
    {"passive, annex C", annex_c, 100000},
    {"passive, log-spiral", log_spiral, 2000},
    {"slip, one circle of 30 slices", slices, 5000},
    {"slip, searched, Bishop", bishop, 10},
    {"slip, searched, ordinary slices", ordinary, 10},
    {"compaction, Ingold's diagram", compaction, 100000},
    {"plant at a distance", plant_apart, 20000},
    {"arching between two faces", arching, 2000},
    {"fence as the back: soil's push", fence, 100000},
    {"all situations of one wall", situations, 40},
    {"one wall as a row of a schedule", row, 40},
    {"one wall, every check and case", whole, 40},
    {"the water level of every check", water, 4},
    {"every set of factors on file", formats, 4},
    {"remedies and questions of one wall", remedies, 2},
};

static const struct {
  const char *name, *items;
} CHANGES[] = {
    {"the search for slips, Bishop", "method slip=bishop"},
    {"the search for slips, ordinary slices", "method slip=ordinary"},
    {"Coulomb in place of Rankine", "method pressure=coulomb;wall friction=10 deg"},
    {"passive in front, annex C", "method passive=0.3;method passive by=annex c"},
    {"a strip load", "load 1 kind=strip;load 1 pressure=10 kPa;load 1 near edge=0.5 m;load 1 far edge=1.5 m"},
    {"an earthquake", "seismic horizontal=0.1"},
    {"a storm", "storm rain=50 mm"},
    {"a trench in front", "trench depth=100 mm"},
    {"plant on the fill", "plant=small plate compactor;plant distance=0.5 m"},
    {"a fence on the wall", "fence height=1.2 m"},
    {"a tier above", "other wall distance=0.9 m;other wall height=0.5 m;other wall side=above"},
    {"ground that falls in front", "front slope=1:6"},
    {"bearing by Vesic", "method bearing=vesic"},
    {"factors of EN 1997-1, approach 1", "method format=en1997-da1"},
    {"factors of EN 1997-1, approach 2", "method format=en1997-da2"},
    {"factors of EN 1997-1, approach 3", "method format=en1997-da3"},
    {"factors of AASHTO LRFD", "method format=aashto-lrfd"},
    {"factors of NAVFAC DM 7.02", "method format=navfac-dm7"},
    {"factors of USACE EM 1110-2-2502", "method format=em-1110-2-2502"},
    {"factors of the IBC", "method format=ibc"},
};

int main(void) {
  static bench b;
  if (!prepare(&b)) return 1;
  double unit = 0.0;
  bool well = true;
  for (size_t i = 0; i < sizeof PARTS / sizeof PARTS[0]; i++) {
    double time = microseconds(&b, PARTS[i].f, PARTS[i].turns);
    if (i == 0) unit = time;
    printf("  %-40s %10.2f us  %9.2f times Coulomb\n", PARTS[i].name, time, time / unit);
  }
  double plain = changed(&b, "");
  printf("  %-40s %10.2f us  %9.2f times Coulomb\n", "... without a search for slips", plain, plain / unit);
  puts("That wall with one more thing on its sheet, and what this adds:");
  for (size_t i = 0; i < sizeof CHANGES / sizeof CHANGES[0]; i++) {
    double time = changed(&b, CHANGES[i].items);
    well = well && isfinite(time);
    printf("  %-40s %10.2f us  %+9.2f times Coulomb\n", CHANGES[i].name, time, (time - plain) / unit);
  }
  free(b.tables);
  free(b.result);
  free(b.scratch);
  return well && isfinite(b.sink) ? 0 : 1;
}
