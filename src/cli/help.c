/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "cli.h"
#include "output.h"

static const lw_cli_command commands[] = {
    {"ask", "ask about a wall, a question at a time, and write its sheet", lw_cli_ask},
    {"check", "check a wall, or the many walls of a schedule", lw_cli_check},
    {"order", "what to order for the wall of a sheet, block by block", lw_cli_order},
    {"pegs", "where its pegs go, the levels, and the order of work", lw_cli_pegs},
    {"fit", "the blocks that a yard sells, tried in the wall: what holds, what it costs", lw_cli_fit},
    {"draw", "draw the section of a wall to scale", lw_cli_draw},
    {"precheck", "make the two pages that a council can file", lw_cli_precheck},
    {"form", "the questions of ask on paper, to fill in on site", lw_cli_form},
    {"new", "write a sheet to start from", lw_cli_new},
    {"list", "print the published values, with their sources, and what a sheet may hold", lw_cli_list},
    {"pressure", "earth pressure by all methods side by side, against depth and drawn", lw_cli_pressure},
    {"bearing", "bearing of a strip footing by five authors, side by side", lw_cli_bearing},
    {"slip", "slip of a plain slope along a circle, slice by slice, or along a plane", lw_cli_slip},
    {"help", "this page, or that of a command", lw_cli_help},
    {"version", "the version", lw_cli_version},
};

enum { COMMAND_COUNT = sizeof commands / sizeof commands[0] };

static const lw_cli_command *find(const char *name) {
  for (size_t i = 0; i < COMMAND_COUNT; i++)
    if (strcmp(commands[i].name, name) == 0) return &commands[i];
  return NULL;
}

const lw_cli_command *lw_cli_command_of(const char *name) {
  const lw_cli_command *command = find(name);
  if (command != NULL) return command;
  const char *names[COMMAND_COUNT + 1] = {NULL};
  for (size_t i = 0; i < COMMAND_COUNT; i++) names[i] = commands[i].name;
  const char *nearest = lw_cli_nearest(name, names);
  if (strchr(name, '=') != NULL || strstr(name, ".csv") != NULL)
    lw_cli_refuse("", "bad-option: \"%.80s\" is no command; a wall is checked by lowwall check ...", name);
  else if (nearest != NULL)
    lw_cli_refuse("", "bad-option: there is no command \"%.80s\"; the nearest is %s", name, nearest);
  else
    lw_cli_refuse("", "bad-option: there is no command \"%.80s\"", name);
  return NULL;
}

static int general_help(void) {
  lw_text text = {0};
  lw_text_add(&text,
              "lowwall checks small dry-laid gravity retaining walls from a sheet of measurements.\n\n");
  for (size_t i = 0; i < COMMAND_COUNT; i++)
    lw_text_addf(&text, "  lowwall %-9s %s\n", commands[i].name, commands[i].summary);
  lw_text_add(&text,
              "\n"
              "To begin: lowwall ask, and answer. Or lowwall new bed -o wall.csv, put in your own\n"
              "measurements, lowwall check wall.csv.\n"
              "lowwall help COMMAND says what a command takes. The man page is lowwall(1).\n"
              "\n"
              "Exit status of check, of many walls the gravest in the order 1, 2, 5, 4, 3, 0:\n"
              "  0  every deciding check holds and the wall is below the limit on file; confirm with the\n"
              "     authority\n"
              "  3  ask the council before building\n"
              "  4  a deciding check falls short, or cannot be shown\n"
              "  5  a licensed engineer must design it\n"
              "  2  bad input or bad options\n"
              "  1  anything else: the output could not be written, no memory\n"
              "The other commands end with 0, 2 or 1.\n");
  return lw_output_write(NULL, &text, LW_EXIT_DONE);
}

int lw_cli_help(int argc, char **argv) {
  bool itself = argc > 1 && (strcmp(argv[1], "help") == 0 || strcmp(argv[1], "version") == 0 ||
                             strcmp(argv[1], "-h") == 0 || strcmp(argv[1], "--help") == 0);
  if (argc > 2) return lw_cli_refuse("", "bad-option: help takes one command, not \"%.80s\" too", argv[2]);
  if (argc == 1 || itself) return general_help();
  const lw_cli_command *command = lw_cli_command_of(argv[1]);
  if (command == NULL) return LW_EXIT_BAD_INPUT;
  char option[] = "--help";
  char *asked[] = {argv[1], option, NULL};
  return command->run(2, asked);
}
