/* SPDX-License-Identifier: GPL-3.0-or-later */
/* popen is POSIX. */
#define _POSIX_C_SOURCE 200809L

#include "support.h"

#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <sys/wait.h>

ran run_lowwall(const char *arguments) {
  ran r = {.exit_status = -1};
  char line[600];
  const char *program = getenv("LOWWALL");
  cr_assert_not_null(program);
  snprintf(line, sizeof line, "exec 2>&1 </dev/null; '%s' %s", program, arguments);
  FILE *from = popen(line, "r");
  cr_assert_not_null(from);
  r.said[fread(r.said, 1, sizeof r.said - 1, from)] = '\0';
  int status = pclose(from);
  if (WIFEXITED(status)) r.exit_status = WEXITSTATUS(status);
  return r;
}
