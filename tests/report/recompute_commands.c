/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _POSIX_C_SOURCE 200809L
#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "recompute.h"
#include "units_told.h"

/* The working of `lowwall bearing`, `pressure` and `slip`: its steps come out as those of a whole wall do. */

enum { PAGE_BYTES = 200000 };

static const char *const COMMANDS[] = {
    "bearing 'width=1.13 m' 'depth=0.47 m' 'friction angle=31.7 deg' 'cohesion=2.9 kPa' 'unit weight=18.3 "
    "kN/m3' "
    "'eccentricity=0.083 m' 'vertical=41.7 kN/m' 'horizontal=9.3 kN/m' 'depth factors=own' "
    "'inclination factors=own'",
    "bearing 'width=0.87 m' 'depth=1.31 m' 'friction angle=0 deg' 'cohesion=27 kPa' 'unit weight=19.1 kN/m3' "
    "'vertical=33.1 kN/m' 'horizontal=11.7 kN/m' 'depth factors=own' 'inclination factors=own'",
    "bearing 'width=0.87 m' 'friction angle=8.3 deg' 'cohesion=1 kPa' 'unit weight=19.1 kN/m3' "
    "'vertical=33.1 kN/m' 'horizontal=13.7 kN/m' 'inclination factors=own' 'n gamma=hansen'",
    "slip 'slope=1:2' 'height=9.3 m' 'soil 1 friction angle=19.6 deg' 'soil 1 cohesion=3.3 kPa' "
    "'soil 1 unit weight=20.3 kN/m3' 'pore ratio=0.13' 'slices=9'",
    "slip 'slope=21.3 deg' 'depth=1.53 m' 'soil 1 friction angle=26.7 deg' 'soil 1 cohesion=2.3 kPa' "
    "'soil 1 unit weight=19.3 kN/m3' 'pore ratio=0.21'",
    "pressure 'friction angle=34.7 deg' 'wall height=0.63 m' 'unit weight=18.3 kN/m3' 'plant load=31.8 kN/m' "
    "'bed width=0.31 m' 'wall friction=19.7 deg' method=coulomb",
    "pressure 'friction angle=29.3 deg' 'wall friction=14.7 deg' 'wall height=1.13 m' 'unit weight=18.1 "
    "kN/m3' "
    "'cohesion=2.3 kPa' state=passive 'method passive by=log spiral' method=coulomb 'ground slope=-4.7 deg' "
    "'back batter=3.7 deg'",
    "pressure 'friction angle=31.3 deg' 'wall friction=1.3 deg' 'wall height=1.13 m' 'unit weight=18.1 "
    "kN/m3' "
    "state=passive 'method passive by=log spiral' method=coulomb 'back batter=-11.3 deg'",
    "pressure 'friction angle=29.3 deg' 'wall friction=14.7 deg' 'wall height=1.13 m' 'unit weight=18.1 "
    "kN/m3' "
    "'cohesion=2.3 kPa' state=passive 'method passive by=annex c' method=coulomb 'back batter=3.7 deg'",
    "pressure --working 'friction angle=33.3 deg' 'unit weight=17.3 kN/m3' 'wall height=1.37 m' "
    "'wall friction=50 %' 'soil 1 bottom=0.53 m' 'soil 2 friction angle=27.7 deg' 'soil 2 cohesion=1.3 kPa' "
    "'soil 2 unit weight=18.9 kN/m3' 'water depth=0.91 m' 'load 1 kind=strip' 'load 1 pressure=9.3 kPa' "
    "'load 1 near edge=0.37 m' 'load 1 far edge=1.13 m' 'load 2 kind=line' 'load 2 force=2.7 kN/m' "
    "'load 2 distance=0.83 m' 'load 3 pressure=2.7 kPa'",
    "pressure --working 'friction angle=33.3 deg' 'unit weight=17.3 kN/m3' 'wall height=1.37 m' "
    "'back batter=3.3 deg' 'load 1 kind=point' 'load 1 force=3.1 kN' 'load 1 distance=0.57 m'",
    "pressure --working 'friction angle=33.3 deg' 'unit weight=17.3 kN/m3' 'wall height=1.37 m' "
    "'ground slope=7.3 deg' 'method load pressure=doubled' 'load 1 kind=strip' 'load 1 pressure=9.3 kPa' "
    "'load 1 near edge=0.37 m' 'load 1 far edge=1.13 m' 'load 1 below ground=0.13 m'",
    "pressure --working 'friction angle=33.3 deg' 'unit weight=17.3 kN/m3' 'wall height=1.37 m' "
    "'method load pressure=curves' 'load 1 kind=line' 'load 1 force=2.7 kN/m' 'load 1 distance=0.83 m'",
    "pressure --working 'friction angle=33.3 deg' 'unit weight=17.3 kN/m3' 'wall height=1.37 m' "
    "'method load pressure=curves' 'load 1 kind=point' 'load 1 force=3.1 kN' 'load 1 distance=0.37 m'",
    "pressure --working docs/demo/bank.csv"};

static const int LEAST_STEPS[sizeof COMMANDS / sizeof *COMMANDS] = {57, 51,  60, 5,  1,  43, 14, 13,
                                                                    7,  150, 70, 70, 70, 70, 60};
/* Those that are told in feet and pounds too. */
static const char *const IN_UNITS[] = {"bearing", "slip", "pressure"};

/* What the command prints, its steps written as the report of a wall writes them. */
static char *page_of(const char *command, const char *units) {
  static char page[PAGE_BYTES];
  char line[2000], whole[1200];
  size_t used = 0;
  const char *program = getenv("LOWWALL");
  cr_assert_not_null(program, "LOWWALL names the command");
  snprintf(whole, sizeof whole, "%s %s%s", program, command, units);
  FILE *out = popen(whole, "r");
  cr_assert_not_null(out);
  while (fgets(line, sizeof line, out) != NULL) {
    bool with = strncmp(line, "    with ", 9) == 0, is = strncmp(line, "    = ", 6) == 0;
    used += (size_t)snprintf(page + used, sizeof page - used, "%s%s",
                             with ? "       : "
                             : is ? "       = "
                                  : "",
                             with ? line + 9
                             : is ? line + 6
                                  : line);
    cr_assert_lt(used, sizeof page);
  }
  cr_assert_eq(pclose(out), 0, "%s", whole);
  return page;
}

/* Not a row of a table that has an equals sign in its name. */
static bool begins_step(const char *line) {
  const char *next = recompute_next(line);
  return recompute_is_step(line) &&
         (strncmp(next, "       : ", 9) == 0 || strncmp(next, "       = ", 9) == 0);
}

static void read_command(size_t number, const char *option, lw_units units) {
  static recompute r;
  r = (recompute){.wall = COMMANDS[number]};
  const char *page = page_of(COMMANDS[number], option);
  units_told_hold(COMMANDS[number], page, strlen(page), units);
  for (const char *line = page; *line != '\0';) {
    bool heading = *line != ' ';
    if (heading) r.said.count = 0;
    line = begins_step(line) ? recompute_step(&r, line) : recompute_next(line);
  }
  cr_expect_geq(r.steps, LEAST_STEPS[number], "%s%s: %d steps", COMMANDS[number], option, r.steps);
}

static bool is_in_units(const char *command) {
  for (size_t i = 0; i < sizeof IN_UNITS / sizeof *IN_UNITS; i++)
    if (strncmp(command, IN_UNITS[i], strlen(IN_UNITS[i])) == 0) return true;
  return false;
}

Test(recompute, every_step_of_a_single_formula_comes_to_what_it_prints) {
  for (size_t i = 0; i < sizeof COMMANDS / sizeof *COMMANDS; i++) {
    read_command(i, "", LW_UNITS_METRIC);
    if (is_in_units(COMMANDS[i])) read_command(i, " --units us", LW_UNITS_US);
  }
}
