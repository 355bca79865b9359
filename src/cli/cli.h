/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_CLI_H
#define LOWWALL_CLI_CLI_H

/* A subcommand a file. argv[0] is the subcommand's name; each gives the exit status. */
int lw_cli_pressure(int argc, char **argv);
int lw_cli_bearing(int argc, char **argv);

#endif
