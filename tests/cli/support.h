/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_CLI_SUPPORT_H
#define TESTS_CLI_SUPPORT_H

/* A command line of lowwall, run by the shell in the folder of the test. */
typedef struct ran {
  char said[16384]; /* both streams, cut */
  int exit_status;
} ran;

ran run_lowwall(const char *arguments);

#endif
