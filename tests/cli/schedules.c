/* SPDX-License-Identifier: GPL-3.0-or-later */
/* A schedule without a wall, and one whose rows are all faulty, given to each command that takes one.
 * mkdtemp is POSIX. */
#define _XOPEN_SOURCE 700

#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "support.h"

#define HEADER "mark,wall height [mm],block height [mm],block depth [mm],block length [mm],run 1 length [m]"

/* What each writes goes to `out` in the folder. */
static const char *const commands[] = {
    "check", "check --json", "check --likely -j 2", "order",    "order --csv",       "order --json",
    "pegs",  "pegs --csv",   "pegs --json",         "precheck", "precheck --as html"};
enum { COMMANDS = sizeof commands / sizeof *commands };

typedef struct place {
  char folder[64], sheet[96], out[96];
} place;

static place place_with(const char *text) {
  place p = {.folder = P_tmpdir "/lowwall-schedules-XXXXXX"};
  cr_assert_not_null(mkdtemp(p.folder));
  snprintf(p.sheet, sizeof p.sheet, "%s/walls.csv", p.folder);
  snprintf(p.out, sizeof p.out, "%s/out", p.folder);
  FILE *file = fopen(p.sheet, "w");
  cr_assert(file != NULL && fputs(text, file) >= 0 && fclose(file) == 0);
  return p;
}

static void leave(const place *p) {
  char line[160];
  snprintf(line, sizeof line, "rm -rf '%s'", p->folder);
  cr_assert_eq(system(line), 0);
}

/* A folder for the files of a pre-check, else a file. */
static ran run_on(const place *p, const char *command) {
  char line[320];
  const char *slash = strncmp(command, "precheck", 8) == 0 ? "/" : "";
  snprintf(line, sizeof line, "%s '%s' -o '%s%s'", command, p->sheet, p->out, slash);
  return run_lowwall(line);
}

Test(schedules, without_a_wall_are_a_fault_and_nothing_is_written) {
  static const struct {
    const char *text, *slug;
  } empty[] = {{HEADER "\n", ": no-rows: "},
               {HEADER, ": no-rows: "},
               {"\n" HEADER "\n\n ,,\n\r\n", ": no-rows: "},
               {"", ": empty: "}};
  for (size_t i = 0; i < sizeof empty / sizeof *empty; i++) {
    place p = place_with(empty[i].text);
    for (int k = 0; k < COMMANDS; k++) {
      ran r = run_on(&p, commands[k]);
      const char *second = strchr(r.said, '\n');
      cr_expect(r.exit_status == 2 && strstr(r.said, empty[i].slug) && second && second[1] == '\0',
                "%s, %zu: %d, %s", commands[k], i, r.exit_status, r.said);
      cr_expect(access(p.out, F_OK) != 0, "%s, %zu: something is written", commands[k], i);
    }
    leave(&p);
  }
}

static bool is_written(const place *p, const char *words) {
  char line[160];
  snprintf(line, sizeof line, "grep -rq '%s' '%s'", words, p->out);
  return system(line) == 0;
}

Test(schedules, with_faults_in_every_row_name_each) {
  place p = place_with(HEADER "\nNorth,wide,200,250,400,3\nSouth,600,200,250,400,none\n");
  for (int k = 0; k < COMMANDS; k++) {
    char line[160];
    ran r = run_on(&p, commands[k]);
    cr_expect(r.exit_status == 2 && strstr(r.said, "row 2, column") && strstr(r.said, "row 3, column"),
              "%s: %d, %s", commands[k], r.exit_status, r.said);
    cr_expect(is_written(&p, "North") && is_written(&p, "South"), "%s", commands[k]);
    snprintf(line, sizeof line, "rm -rf '%s'", p.out);
    cr_assert_eq(system(line), 0);
  }
  leave(&p);
}

Test(schedules, without_marks_name_a_row_by_its_number) {
  place p = place_with("wall height [mm],block height [mm]\nwide,200\n");
  run_on(&p, "order");
  cr_expect(is_written(&p, "Row 2 of the schedule: no list"));
  leave(&p);
}
