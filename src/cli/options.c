/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "options.h"

#include <assert.h>
#include <getopt.h>
#include <stdlib.h>
#include <string.h>

#include "cli.h"
#include "output.h"

enum { MOST = 16, HELP = 'h', VERSION = 'v', FIRST_ROW = 256 };

/* getopt_long is given the row's number, beyond all letters. */
static void add_row(const lw_option *row, int number, struct option *known, char *letters) {
  int value = row->text == NULL ? no_argument : row->flag != NULL ? optional_argument : required_argument;
  assert(number < MOST);
  known[number] = (struct option){row->name, value, NULL, FIRST_ROW + number};
  if (row->letter == 0) return;
  letters += strlen(letters);
  *letters++ = row->letter;
  if (value == required_argument) *letters++ = ':';
  *letters = '\0';
}

static const lw_option *row_of(const lw_option *options, int found) {
  if (found >= FIRST_ROW) return &options[found - FIRST_ROW];
  while (options->letter != found) options++;
  return options;
}

static int refuse_unknown(char **argv, int found) {
  const char *command = argv[0], *stood = argv[optind - 1];
  if (found == ':') return lw_cli_refuse(command, "bad-option: %.80s wants a value behind it", stood);
  if (strcmp(stood, "--as") == 0 || strncmp(stood, "--as=", 5) == 0)
    return lw_cli_refuse(command, "bad-option: --as is for check, order, pegs and fit; leave it out here");
  if (optopt > 0 && optopt < 128 && strncmp(stood, "--", 2) != 0)
    return lw_cli_refuse(command, "bad-option: there is no option -%c", optopt);
  return lw_cli_refuse(command, "bad-option: there is no option %.80s, or it takes no value", stood);
}

/* Words are listed as people say them: "section, elevation or plan". */
static bool is_listed(const char *value, const char *words) {
  for (;;) {
    size_t length = strcspn(words, ", ");
    if (strlen(value) == length && strncmp(value, words, length) == 0) return true;
    words += length;
    if (*words == '\0') return false;
    words += *words == ',' ? strlen(", ") : strlen(" or ");
  }
}

/* false after saying what is wrong */
static bool take(const lw_option *row, const char *value, const char *command) {
  if (row->flag != NULL) *row->flag = true;
  if (value == NULL) return true;
  if (value[0] == '\0')
    lw_cli_refuse(command, "bad-option: --%s wants a value behind it, and it is empty", row->name);
  else if (*row->text != NULL)
    lw_cli_refuse(command, "bad-option: --%s is given twice, as %.200s and as %.200s", row->name, *row->text,
                  value);
  else if (row->words != NULL && !is_listed(value, row->words))
    lw_cli_refuse(command, "bad-option: --%s %.40s: %s is wanted", row->name, value, row->words);
  else
    *row->text = value;
  return *row->text == value;
}

static int print_help(const char *help) {
  return help != NULL ? lw_output_print(help) + 1 : LW_OPTIONS_HELP;
}

int lw_options_read(const lw_option *options, const char *help, int argc, char **argv, lw_arguments *rest) {
  struct option known[MOST + 3] = {{0}};
  char letters[2 * MOST + 3] = ":h"; /* the colon: a value that is missing is told apart */
  int count = 0;
  for (; options[count].name != NULL; count++) add_row(&options[count], count, known, letters);
  known[count++] = (struct option){"help", no_argument, NULL, HELP};
  known[count] = (struct option){"version", no_argument, NULL, VERSION};
  optind = 0; /* glibc: begin anew, whatever was read before */
  opterr = 0;
  for (int found; (found = getopt_long(argc, argv, letters, known, NULL)) != -1;) {
    if (found == HELP) return print_help(help);
    if (found == VERSION) return lw_cli_version(1, argv) + 1;
    if (found == '?' || found == ':') return refuse_unknown(argv, found) + 1;
    if (!take(row_of(options, found), optarg, argv[0])) return LW_EXIT_BAD_INPUT + 1;
  }
  *rest = (lw_arguments){argc - optind, argv + optind};
  return 0;
}
