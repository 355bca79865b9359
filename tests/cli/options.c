/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Every option that the help of a command lists, given wrongly: each is refused by its name and points to the
 * help. strtok_r is POSIX. */
#define _POSIX_C_SOURCE 200809L

#include <criterion/criterion.h>

#include <stdio.h>
#include <string.h>

#include "support.h"

/* An option as its line of the help has it. */
typedef struct listed {
  char name[24], value[24]; /* the first word that it may take, "" where it takes none */
} listed;

static bool read_line(const char *line, listed *option) {
  const char *dashes = line[0] == ' ' && line[1] == ' ' ? strstr(line, "--") : NULL;
  if (dashes == NULL || (dashes != line + 2 && dashes != line + 6)) return false;
  size_t length = strspn(dashes + 2, "abcdefghijklmnopqrstuvwxyz");
  const char *behind = dashes + 2 + length;
  snprintf(option->name, sizeof option->name, "%.*s", (int)length, dashes + 2);
  bool takes = behind[0] == ' ' && behind[1] != ' ' && behind[0] != '\n';
  snprintf(option->value, sizeof option->value, "%.*s", takes ? (int)strcspn(behind + 1, " |\n") : 0,
           behind + 1);
  if (strcmp(option->value, "FORM") == 0) snprintf(option->value, sizeof option->value, "text");
  return length > 0;
}

static void refuses(const char *command, const char *arguments, const char *says) {
  char line[200], help[64];
  snprintf(line, sizeof line, "%s %s", command, arguments);
  snprintf(help, sizeof help, "lowwall help %s says what there is.", command);
  ran r = run_lowwall(line);
  cr_expect(r.exit_status == 2 && strstr(r.said, says) && strstr(r.said, help), "%s: %d, %s", line,
            r.exit_status, r.said);
}

static void hold(const char *command, const listed *option) {
  char arguments[120], says[120];
  const char *name = option->name, *value = option->value;
  if (value[0] == '\0') {
    snprintf(arguments, sizeof arguments, "--%s=x", name);
    if (strcmp(name, "working") != 0 || strcmp(command, "check") != 0)
      refuses(command, arguments, "or it takes no value");
    return;
  }
  snprintf(arguments, sizeof arguments, "--%s", name);
  snprintf(says, sizeof says, "--%s wants a value behind it\n", name);
  refuses(command, arguments, says);
  snprintf(arguments, sizeof arguments, "--%s ''", name);
  snprintf(says, sizeof says, "--%s wants a value behind it, and it is empty\n", name);
  refuses(command, arguments, says);
  snprintf(arguments, sizeof arguments, "--%s %s --%s=%s", name, value, name, value);
  snprintf(says, sizeof says, "--%s is given twice, as %s and as %s\n", name, value, value);
  refuses(command, arguments, says);
}

static int hold_command(const char *command) {
  char line[80];
  int options = 0;
  snprintf(line, sizeof line, "help %s", command);
  ran help = run_lowwall(line);
  cr_expect_eq(help.exit_status, 0, "%s", line);
  for (char *rest, *at = strtok_r(help.said, "\n", &rest); at != NULL; at = strtok_r(NULL, "\n", &rest)) {
    listed option;
    if (!read_line(at, &option)) continue;
    hold(command, &option);
    options++;
  }
  refuses(command, "--nothing", "there is no option --nothing");
  refuses(command, "-Z", "there is no option -Z");
  snprintf(line, sizeof line, "%s --version", command);
  cr_expect(strncmp(run_lowwall(line).said, "lowwall ", 8) == 0, "%s", line);
  return options;
}

Test(options, are_refused_by_name_where_they_are_given_wrongly) {
  ran help = run_lowwall("help");
  int commands = 0, options = 0;
  for (char *rest, *at = strtok_r(help.said, "\n", &rest); at != NULL; at = strtok_r(NULL, "\n", &rest)) {
    char command[16];
    if (strncmp(at, "  lowwall ", 10) != 0) continue;
    snprintf(command, sizeof command, "%.*s", (int)strcspn(at + 10, " "), at + 10);
    if (strcmp(command, "help") == 0 || strcmp(command, "version") == 0) continue;
    options += hold_command(command);
    commands++;
  }
  cr_expect(commands >= 13 && options >= 75, "%d commands, %d options", commands, options);
}
