/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <stdlib.h>

#include "cli.h"
#include "order_schedule.h"
#include "output.h"

/* `lowwall order` and `lowwall pegs`: two pages of the same order. */

#define OPTIONS_HELP \
  "\n" \
  "  --csv               as CSV\n" \
  "  --json              everything, as JSON\n" LW_CLI_AS_HELP \
  "  --units metric|us   what it is written in; left out, as most of the sheet is measured\n" \
  "  --tables DIR        values of your own: each CSV file in DIR replaces the table of its name\n" \
  "  -o, --output FILE   write there, the whole of it or nothing; - is standard output\n" \
  "  -h, --help          this page\n" \
  "\n" \
  "SHEET may be a schedule, a row a wall: one list a wall then, in CSV with the mark in the first column, " \
  "in\n" \
  "JSON one object a line. Exit status 0, 2 bad input or bad options, 1 anything else.\n"

static const char order_help[] =
    "lowwall order [--csv | --json | --as FORM] [--units metric|us] [--tables DIR] [-o FILE] [SHEET]\n"
    "              [ITEM=VALUE ...]\n"
    "\n"
    "What to order for the wall of a sheet as it is given: blocks course by course, cuts, caps, stone, "
    "soil.\n"
    "It needs the plan, `run 1 length` at least. It does not say that the wall may be built: the check's\n"
    "headline stands first.\n" OPTIONS_HELP;
static const char pegs_help[] =
    "lowwall pegs [--csv | --json | --as FORM] [--units metric|us] [--tables DIR] [-o FILE] [SHEET]\n"
    "             [ITEM=VALUE ...]\n"
    "\n"
    "Where the pegs of the wall of a sheet go, the levels, the order of work with the points at which to "
    "stop\n"
    "and look, and what to read after hand-over. The check's headline stands first.\n" OPTIONS_HELP;

/* gives 0 to go on, else the exit status + 1 */
static int read_options(int argc, char **argv, lw_order_asked *a) {
  const lw_option options[] = {
      {"csv", .flag = &a->csv},
      {"json", .flag = &a->json},
      LW_OPTION_AS(&a->as.given),
      LW_OPTION_UNITS(&a->wall.units),
      LW_OPTION_TABLES(&a->wall.tables),
      LW_OPTION_OUTPUT(&a->wall.output),
      {0},
  };
  const char *help = a->page == LW_PAGE_ORDER ? order_help : pegs_help;
  lw_arguments rest;
  int ended = lw_options_read(options, help, argc, argv, &rest);
  if (ended > 0) return ended;
  bool well =
      lw_cli_take_as(a->wall.command, a->csv, a->json, &a->as) && lw_wall_take_arguments(&rest, &a->wall);
  return well ? 0 : LW_EXIT_BAD_INPUT + 1;
}

static int make(const lw_order_asked *a, lw_one_wall *wall, lw_order *order) {
  lw_text text = {0};
  int ended = lw_wall_run(&a->wall, wall);
  if (ended > 0) return ended - 1;
  if (lw_order_fill(&wall->result, order, &wall->faults) != LW_OK) return lw_cli_print_faults(&wall->faults);
  if (a->csv) lw_report_order_csv_header(a->page, &text);
  if (lw_order_report(a, &wall->result, order, 2, &text) == LW_OK)
    return lw_output_write(a->wall.output, &text, LW_EXIT_DONE);
  lw_text_free(&text);
  return lw_cli_no_memory();
}

static int run(int argc, char **argv, const char *command, lw_order_page page) {
  lw_order_asked a = {.wall = {.command = command, .complete = lw_order_complete}, .page = page};
  int ended = read_options(argc, argv, &a), exit_status = LW_EXIT_OTHER;
  if (ended > 0) return ended - 1;
  lw_one_wall *wall = lw_wall_open(&a.wall, &exit_status);
  if (wall == NULL) return exit_status;
  if (wall->many && a.as.as != LW_AS_TEXT) {
    exit_status =
        lw_cli_refuse(command,
                      "bad-option: --as %s is for one wall; %.200s is a schedule, which gives text, "
                      "--csv or --json",
                      a.as.given, a.wall.sheet);
    lw_wall_close(wall);
    return exit_status;
  }
  lw_order *order = calloc(1, sizeof *order);
  if (order == NULL)
    exit_status = lw_cli_no_memory();
  else
    exit_status = wall->many ? lw_order_schedule(&a, wall, order) : make(&a, wall, order);
  free(order);
  lw_wall_close(wall);
  return exit_status;
}

int lw_cli_order(int argc, char **argv) {
  return run(argc, argv, "order", LW_PAGE_ORDER);
}

int lw_cli_pegs(int argc, char **argv) {
  return run(argc, argv, "pegs", LW_PAGE_PEGS);
}
