/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_OPTIONS_H
#define LOWWALL_CLI_OPTIONS_H

#include <stdbool.h>

/* The options of a command are a table, a row an option, that ends with an empty row. --help and --version
 * are every command's and stand in none. */
typedef struct lw_option {
  const char *name;  /* without its dashes */
  char letter;       /* its short form, or 0 */
  bool *flag;        /* becomes true */
  const char **text; /* takes the value, once. With a flag beside it the value may be left out */
  const char *words; /* what the value may be, as it is said: "a4 or letter"; NULL: anything */
} lw_option;

/* The rows of what several commands take, with where the value goes. */
#define LW_OPTION_UNITS(where) \
  { "units", .text = (where), .words = "metric or us" }
#define LW_OPTION_TABLES(where) \
  { "tables", .text = (where) }
#define LW_OPTION_OUTPUT(where) \
  { "output", 'o', .text = (where) }
#define LW_OPTION_PAPER(where) \
  { "paper", .text = (where), .words = "a4 or letter" }

/* What stands on the command line besides options. */
typedef struct lw_arguments {
  int count;
  char **at; /* ends with NULL */
} lw_arguments;

/* --help was asked of a command that makes its page. */
enum { LW_OPTIONS_HELP = -1 };

/* Read the options of the command argv[0]; what is wrong with one is said here, and so is the page.
 *  in    help   NULL: the command makes its page
 *  out   rest   the other arguments
 *  gives 0 to go on, else the exit status + 1; without a page also LW_OPTIONS_HELP */
int lw_options_read(const lw_option *options, const char *help, int argc, char **argv, lw_arguments *rest);

#endif
