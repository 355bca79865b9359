/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _XOPEN_SOURCE 700
#include <fcntl.h>
#include <gsl/gsl_errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "cli/cli.h"

/* A schedule of invented walls, checked by one thread and by several: results, fault lines and exit status
 * must be the same, and the thread sanitizer, with which this is built, must see nothing. */

static int failures;

static void expect(bool holds, const char *words) {
  if (holds) return;
  failures++;
  printf("threads: %s\n", words);
}

/* Beds and higher walls; some rows with a soil that is not, some with a height that cannot be. */
static void write_schedule(const char *name, int rows) {
  FILE *file = fopen(name, "w");
  if (file == NULL) exit(2);
  fputs("mark,site behind,wall height [mm],block height [mm],block depth [mm],soil 1 name\n", file);
  for (int i = 0; i < rows; i++)
    fprintf(file, "W%d,bed,%d,200,%d,%s\n", i, i % 19 == 7 ? -5 : 200 * (1 + i % 3), 200 + i % 250,
            i % 23 == 5 ? "clean snad" : "clean sand");
  fclose(file);
}

static char *contents(const char *name) {
  enum { MOST = 1 << 22 };
  char *text = calloc(1, MOST);
  FILE *file = fopen(name, "r");
  if (text == NULL || file == NULL) exit(2);
  size_t length = fread(text, 1, MOST - 1, file);
  fclose(file);
  return length < MOST - 1 ? text : NULL;
}

static bool same(const char *name, const char *other) {
  char *one = contents(name), *two = contents(other);
  bool well = one != NULL && two != NULL && one[0] != '\0' && strcmp(one, two) == 0;
  free(one);
  free(two);
  return well;
}

static void show(const char *name) {
  char *text = contents(name);
  if (text != NULL) fputs(text, stdout);
  free(text);
}

/* lowwall check SCHEDULE, with what it says in a file. The words are copied: getopt sorts them anew. */
static int check(const char *jobs, const char *form, const char *results, const char *said) {
  char words[7][32] = {"check", "schedule.csv", "-j", "", "-o", "", ""}, *argument[8] = {NULL};
  int count = form[0] != '\0' ? 7 : 6;
  snprintf(words[3], sizeof words[3], "%s", jobs);
  snprintf(words[5], sizeof words[5], "%s", results);
  snprintf(words[6], sizeof words[6], "%s", form);
  for (int i = 0; i < count; i++) argument[i] = words[i];
  int before = dup(STDERR_FILENO), file = open(said, O_WRONLY | O_CREAT | O_TRUNC, 0600);
  if (before < 0 || file < 0 || dup2(file, STDERR_FILENO) < 0) exit(2);
  int exit_status = lw_cli_check(count, argument);
  dup2(before, STDERR_FILENO);
  close(before);
  close(file);
  return exit_status;
}

static void compare(int rows, const char *form) {
  write_schedule("schedule.csv", rows);
  int alone = check("1", form, "one.txt", "one.said");
  int together = check("4", form, "four.txt", "four.said");
  expect(alone == LW_EXIT_BAD_INPUT, "one thread: another exit status than that of faulty rows");
  expect(together == alone, "several threads: another exit status");
  expect(same("one.txt", "four.txt"), "several threads: other results");
  bool same_faults = same("one.said", "four.said");
  expect(same_faults, "several threads: other fault lines, or the sanitizer said something:");
  if (!same_faults) show("four.said");
}

/* Writing fails while the others are at work: all must come to an end. */
static void no_room(void) {
  if (access("/dev/full", W_OK) != 0) return;
  write_schedule("schedule.csv", 200);
  expect(check("4", "", "/dev/full", "full.said") == LW_EXIT_OTHER, "a full disk is not noticed");
}

int main(void) {
  static const char *const made[] = {"schedule.csv", "one.txt",   "one.said",
                                     "four.txt",     "four.said", "full.said"};
  char folder[] = P_tmpdir "/lowwall.XXXXXX";
  gsl_set_error_handler_off();
  if (mkdtemp(folder) == NULL || chdir(folder) != 0) return 2;
  compare(200, "");
  compare(8, "--json");
  no_room();
  for (size_t i = 0; i < sizeof made / sizeof made[0]; i++) unlink(made[i]);
  rmdir(folder);
  return failures > 0;
}
