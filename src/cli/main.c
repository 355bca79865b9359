/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _XOPEN_SOURCE 700
#include <errno.h>
#include <fcntl.h>
#include <gsl/gsl_errno.h>
#include <signal.h>
#include <stdio.h>
#include <string.h>
#include <unistd.h>

#include "cli.h"
#include "interrupt.h"

/* A file opened while one of the three streams is closed would take its number, and messages would go into
 * it. They are opened the wrong way round, so that using them is still an error. */
static void hold_the_three_streams(void) {
  for (int i = STDIN_FILENO; i <= STDERR_FILENO; i++)
    if (fcntl(i, F_GETFD) < 0 && open("/dev/null", i == STDIN_FILENO ? O_WRONLY : O_RDONLY) < 0) return;
}

static int dispatch(int argc, char **argv) {
  if (strcmp(argv[0], "-h") == 0 || strcmp(argv[0], "--help") == 0) return lw_cli_help(1, argv);
  if (strcmp(argv[0], "--version") == 0) return lw_cli_version(argc, argv);
  if (argv[0][0] == '-' && argv[0][1] != '\0')
    return lw_cli_refuse("", "bad-option: there is no option %.80s; a command comes first", argv[0]);
  const lw_cli_command *command = lw_cli_command_of(argv[0]);
  return command != NULL ? command->run(argc, argv) : LW_EXIT_BAD_INPUT;
}

/* Output that was never written is no success, whoever printed it. */
static int end(int exit_status) {
  bool well = fflush(stdout) == 0 && !ferror(stdout);
  if (well || exit_status == LW_EXIT_OTHER) return exit_status;
  if (errno != EPIPE) fprintf(stderr, "lowwall: not-written: standard output: %s\n", strerror(errno));
  return LW_EXIT_OTHER;
}

int main(int argc, char **argv) {
  hold_the_three_streams();
  gsl_set_error_handler_off();
  /* A closed pipe, or a file grown too large, is then an error of writing, and files are tidied up. */
  signal(SIGPIPE, SIG_IGN);
  signal(SIGXFSZ, SIG_IGN);
  lw_interrupt_watch();
  if (argc < 2) return lw_cli_refuse("", "bad-option: a command is wanted, as in lowwall check wall.csv");
  return end(dispatch(argc - 1, argv + 1));
}
