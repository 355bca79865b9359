/* SPDX-License-Identifier: GPL-3.0-or-later */
/* What the search for slips misses, on random cross-sections that are the same in every run.
 *
 *    slip SECTIONS DENSE
 *
 * Once of the walls that a garden has; once of those on a hillside: set back, under long slopes, above
 * falling ones, on named soils, with water in front; once of wild ones: soft and strong soils, heavy line
 * loads, footings in the ground. First how many times the least factor is the best of each stage at most,
 * over SECTIONS of them: the gaps in src/slip/search.c stand above these. Then how far the usual
 * search lies above a dense one, over DENSE of them, which stays below the last of the gaps. Fails where a
 * gap is met.
 */
#include <lowwall/lowwall.h>

#include "slip/parts.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>

static const lw_slip_effort DENSE = {.exits = 25,
                                     .entries = 24,
                                     .depths = 16,
                                     .coarse = 16,
                                     .fine = 40,
                                     .starts = 6,
                                     .turns = 8,
                                     .last_turns = 5,
                                     .line_steps = 7,
                                     .worth = 1e-6};

static const lw_slip_aim ALL = {.enough = INFINITY};

typedef enum sort { GARDEN, HILLSIDE, WILD } sort;

typedef struct survey {
  lw_tables *tables;
  lw_result *result;
  unsigned long long dice;
  sort sort;
  int sections, dense, compared, above;
  int efforts;
  const lw_slip_effort *effort[4]; /* those that were asked for */
  lw_slip_stages most[4];          /* times the least */
  double worst;
} survey;

static double between(survey *s, double low, double high) {
  s->dice = s->dice * 6364136223846793005ULL + 1442695040888963407ULL;
  return low + (high - low) * (double)(s->dice >> 11) / 9007199254740992.0;
}

static bool one_in(survey *s, int count) {
  return between(s, 0.0, count) < 1.0;
}

typedef struct thrown {
  lw_case c;
  lw_faults faults;
} thrown;

static void item(thrown *sheet, const char *name, double value, const char *unit) {
  char words[96];
  lw_print(words, sizeof words, "%s=%.4f%s", name, value, unit);
  (void)lw_sheet_override(words, 1, &sheet->c, &sheet->faults);
}

static void soil(survey *s, thrown *sheet, const char *of) {
  char name[48];
  bool sticks = one_in(s, 2);
  bool wild = s->sort == WILD;
  double loosest = wild ? (sticks ? 0.0 : 18.0) : (sticks ? 12.0 : 24.0), tightest = wild ? 42.0 : 36.0;
  lw_print(name, sizeof name, "%s friction angle", of);
  item(sheet, name, between(s, loosest, tightest), "deg");
  lw_print(name, sizeof name, "%s unit weight", of);
  item(sheet, name, between(s, 15.0, 20.0), "kN/m3");
  lw_print(name, sizeof name, "%s cohesion", of);
  if (sticks) item(sheet, name, between(s, 0.5, wild ? 40.0 : 10.0) * between(s, 0.0, 1.0), "kPa");
}

static void wall(survey *s, thrown *sheet) {
  double courses = floor(between(s, 2.0, 11.0));
  item(sheet, "course count", courses, "");
  item(sheet, "block height", between(s, 0.1, 0.25), "m");
  item(sheet, "block depth", between(s, 0.15, 0.8), "m");
  item(sheet, "block unit weight", between(s, 16.0, 24.0), "kN/m3");
  item(sheet, "wall embedment", between(s, 0.0, 0.3), "m");
  bool hillside = s->sort == HILLSIDE;
  if (one_in(s, hillside ? 2 : 3)) item(sheet, "setback", between(s, 0.0, hillside ? 100.0 : 40.0), "mm");
  if (one_in(s, 3)) item(sheet, "pad thickness", between(s, 0.05, 0.3), "m");
}

static void named(survey *s, thrown *sheet) {
  static const char *const NAMES[] = {"clean sand", "loose sand", "road base", "crushed rock"};
  char words[64];
  lw_print(words, sizeof words, "footing soil name=%s", NAMES[(int)between(s, 0.0, 4.0)]);
  (void)lw_sheet_override(words, 1, &sheet->c, &sheet->faults);
}

static void ground(survey *s, thrown *sheet) {
  soil(s, sheet, "soil 1");
  if (s->sort == HILLSIDE && one_in(s, 2))
    named(s, sheet);
  else
    soil(s, sheet, "footing soil");
  if (one_in(s, 3)) {
    item(sheet, "soil 1 bottom", between(s, 0.2, 0.8), "m");
    soil(s, sheet, "soil 2");
  }
  bool hillside = s->sort == HILLSIDE;
  if (one_in(s, 2)) item(sheet, "ground slope", between(s, 0.0, 25.0), "deg");
  if (one_in(s, hillside ? 2 : 4))
    item(sheet, "ground slope run", between(s, 0.3, hillside ? 40.0 : 4.0), "m");
  if (one_in(s, hillside ? 2 : 3)) item(sheet, "front slope", between(s, 0.0, 25.0), "deg");
  if (hillside && one_in(s, 3)) item(sheet, "front water depth", between(s, 0.0, 1.5), "m");
  item(sheet, "drain outlets", floor(between(s, 0.0, 3.0)), "");
  if (one_in(s, 3)) item(sheet, "water depth", between(s, 0.0, 1.5), "m");
  if (one_in(s, 4)) item(sheet, "soil below top", between(s, 0.0, 0.3), "m");
}

static void load(survey *s, thrown *sheet) {
  double near = between(s, 0.0, 1.5);
  if (one_in(s, 2)) return;
  bool wild = s->sort == WILD;
  if (wild && one_in(s, 3)) {
    (void)lw_sheet_override("load 1 kind=line", 1, &sheet->c, &sheet->faults);
    item(sheet, "load 1 force", between(s, 1.0, 40.0), "kN/m");
    item(sheet, "load 1 distance", near, "m");
    return;
  }
  (void)lw_sheet_override("load 1 kind=strip", 1, &sheet->c, &sheet->faults);
  item(sheet, "load 1 pressure", between(s, 1.0, wild ? 80.0 : 15.0), "kPa");
  item(sheet, "load 1 near edge", near, "m");
  item(sheet, "load 1 far edge", near + between(s, 0.2, 3.0), "m");
  if (wild && one_in(s, 3)) item(sheet, "load 1 below ground", between(s, 0.1, 1.0), "m");
}

/* A wall that holds up ground; false where the dice contradict themselves. */
static bool throw_wall(survey *s) {
  static thrown sheet;
  sheet.c = (lw_case){0};
  sheet.faults.count = 0;
  (void)lw_sheet_override("site behind=ground", 1, &sheet.c, &sheet.faults);
  wall(s, &sheet);
  ground(s, &sheet);
  load(s, &sheet);
  return sheet.faults.count == 0 && lw_case_complete(s->tables, &sheet.c, &sheet.faults) == LW_OK &&
         lw_run(&sheet.c, s->tables, LW_DETAIL_EVERYTHING, s->result, NULL) == LW_OK;
}

static void note_stages(survey *s, const lw_slip_effort *effort, const lw_slip_stages *found) {
  int i = 0;
  while (i < s->efforts && s->effort[i] != effort) i++;
  if (i == s->efforts) s->effort[s->efforts++] = effort;
  lw_slip_stages *most = &s->most[i];
  most->eighth = fmax(most->eighth, found->eighth / found->least);
  most->grid = fmax(most->grid, found->grid / found->least);
  most->hollow = fmax(most->hollow, found->hollow / found->least);
}

static void compare(survey *s, const lw_slip_ground *ground, double least) {
  lw_slip_effort near = DENSE;
  lw_slip_stages stages;
  lw_slip slip;
  double dense = INFINITY;
  near.near = true;
  for (int i = 0; i < 2; i++)
    if (lw_slip_search_by(i ? &DENSE : &near, ground, LW_SLIP_BISHOP, &ALL, &stages, &slip) &&
        slip.status == LW_OK)
      dense = fmin(dense, slip.bishop);
  if (!isfinite(dense)) return;
  s->compared++;
  s->above += least > 1.01 * dense ? 1 : 0;
  s->worst = fmax(s->worst, least / dense);
}

static void look_at(survey *s, const lw_situation *situation) {
  const lw_slip_effort *efforts[LW_SLIP_EFFORTS_MAX];
  lw_slip_ground ground;
  if (!situation->slip_known || situation->slip.status != LW_OK) return;
  lw_situation_slip_ground(&s->result->wall, s->tables, situation, &ground);
  int count = lw_slip_efforts(&ground, efforts);
  for (int i = 0; i < count; i++) {
    lw_slip_stages stages;
    lw_slip slip;
    (void)lw_slip_search_by(efforts[i], &ground, LW_SLIP_BISHOP, &ALL, &stages, &slip);
    if (slip.status == LW_OK && isfinite(stages.eighth)) note_stages(s, efforts[i], &stages);
  }
  s->sections++;
  if (s->compared < s->dense) compare(s, &ground, situation->slip.bishop);
}

static bool say_gap(const char *body, double found, double taken) {
  printf("      %-36s %6.2f   taken for at most %.2f\n", body, found, taken);
  return found < taken;
}

static bool say(const survey *s) {
  static const char *const SORTS[] = {"garden", "hillside", "wild"};
  bool well = true;
  printf("  %d %s cross-sections; times the least factor at most:\n", s->sections, SORTS[s->sort]);
  for (int i = 0; i < s->efforts; i++) {
    const lw_slip_stages *gaps = &s->effort[i]->gaps, *most = &s->most[i];
    printf("    search %s\n", s->effort[i]->name);
    well = say_gap("best of an eighth of the grid", most->eighth, gaps->eighth) && well;
    well = say_gap("best of the grid", most->grid, gaps->grid) && well;
    well = say_gap("bottom of the best's hollow", most->hollow, gaps->hollow) && well;
  }
  printf("    against a dense search of %d of them: %d more than 1 %% above, the worst %.1f %%\n",
         s->compared, s->above, s->compared > 0 ? 100.0 * (s->worst - 1.0) : 0.0);
  return s->worst < s->effort[0]->gaps.least && well;
}

static bool look(survey s, int sections) {
  while (s.sections < sections) {
    if (!throw_wall(&s)) continue;
    for (int i = 0; i < s.result->situations.count; i++) look_at(&s, &s.result->situations.situation[i]);
  }
  return say(&s);
}

int main(int count, char **arguments) {
  if (count != 3) return 2;
  int sections = (int)strtol(arguments[1], NULL, 10);
  survey s = {.dice = 20261126, .dense = (int)strtol(arguments[2], NULL, 10)};
  bool well = true;
  s.tables = calloc(1, sizeof *s.tables);
  s.result = calloc(1, sizeof *s.result);
  if (!s.tables || !s.result || lw_tables_read(NULL, s.tables, NULL) != LW_OK) return 1;
  for (s.sort = GARDEN; s.sort <= WILD; s.sort++) well = look(s, sections) && well;
  free(s.result);
  free(s.tables);
  return well ? 0 : 1;
}
