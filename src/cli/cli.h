/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_CLI_H
#define LOWWALL_CLI_CLI_H

#include "say.h"

/* A subcommand a file. argv[0] is the subcommand's name; each gives the exit status. */
int lw_cli_ask(int argc, char **argv);
int lw_cli_check(int argc, char **argv);
int lw_cli_order(int argc, char **argv);
int lw_cli_pegs(int argc, char **argv);
int lw_cli_fit(int argc, char **argv);
int lw_cli_form(int argc, char **argv);
int lw_cli_new(int argc, char **argv);
int lw_cli_list(int argc, char **argv);
int lw_cli_pressure(int argc, char **argv);
int lw_cli_bearing(int argc, char **argv);
int lw_cli_slip(int argc, char **argv);
int lw_cli_draw(int argc, char **argv);
int lw_cli_precheck(int argc, char **argv);
int lw_cli_help(int argc, char **argv);
int lw_cli_version(int argc, char **argv);

typedef struct lw_cli_command {
  const char *name, *summary;
  int (*run)(int argc, char **argv);
} lw_cli_command;

/* The subcommand of that name, or NULL after saying which is the nearest. */
const lw_cli_command *lw_cli_command_of(const char *name);

#endif
