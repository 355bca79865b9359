/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <stdlib.h>
#include <string.h>

#include "report/fit/report.h"
#include "sheet/faults.h"
#include "as.h"
#include "cli.h"
#include "one_wall.h"
#include "options.h"
#include "output.h"

static const char help[] =
    "lowwall fit [--csv | --json | --as FORM] [--units metric|us] [--tables DIR] [-o FILE] SHEET BLOCKS\n"
    "            [ITEM=VALUE ...]\n"
    "\n"
    "The blocks that a yard sells, each tried in the wall of a sheet: how many courses and which setback\n"
    "stand, how many blocks, how heavy, what they cost. Those that hold stand first, the cheapest first;\n"
    "then those that do not, with their grade; then those that cannot be laid, and why.\n"
    "BLOCKS is a CSV file with a header and a row a block, prices your own:\n"
    "  name,length [mm],height [mm],depth [mm],mass [kg],price [AUD]\n"
    "It may have setback [mm] too, where a lip makes it, and other items of a block. The sheet needs\n"
    "`run 1 length`. Nothing here says that the wall may be built.\n"
    "\n"
    "  --csv               as CSV\n"
    "  --json              everything, as JSON\n" LW_CLI_AS_HELP
    "  --units metric|us   what it is written in; left out, as most of the sheet is measured\n"
    "  --tables DIR        values of your own: each CSV file in DIR replaces the table of its name\n"
    "  -o, --output FILE   write there, the whole of it or nothing; - is standard output\n"
    "  -h, --help          this page\n"
    "\n"
    "Exit status 0, 2 bad input or bad options, 1 anything else.\n";

typedef struct fit_asked {
  lw_wall_asked wall;
  bool csv, json;
  lw_cli_as as;
} fit_asked;

/* All that is needed besides the wall, too big for a stack. */
typedef struct fit_room {
  lw_yard yard;
  lw_fit fit[LW_YARD_MAX];
  lw_fit_room room;
  lw_case read;
  lw_faults faults;
  lw_input input;
} fit_room;

/* gives 0 to go on, else the exit status + 1 */
static int read_options(int argc, char **argv, fit_asked *a) {
  const lw_option options[] = {
      {"csv", .flag = &a->csv},
      {"json", .flag = &a->json},
      LW_OPTION_AS(&a->as.given),
      LW_OPTION_UNITS(&a->wall.units),
      LW_OPTION_TABLES(&a->wall.tables),
      LW_OPTION_OUTPUT(&a->wall.output),
      {0},
  };
  lw_arguments rest;
  int ended = lw_options_read(options, help, argc, argv, &rest);
  if (ended > 0) return ended;
  if (!lw_cli_take_as("fit", a->csv, a->json, &a->as) || !lw_wall_take_arguments(&rest, &a->wall))
    return LW_EXIT_BAD_INPUT + 1;
  if (a->wall.list == NULL)
    return lw_cli_refuse("fit", "bad-option: a sheet and a list of blocks are wanted, as in lowwall fit "
                                "wall.csv blocks.csv") +
           1;
  if (strcmp(a->wall.list, "-") == 0 && strcmp(a->wall.sheet, "-") == 0)
    return lw_cli_refuse("fit", "bad-option: only one of sheet and list can be standard input") + 1;
  return 0;
}

/* gives 0, or after saying why the exit status + 1 */
static int read_blocks(const fit_asked *a, const lw_tables *tables, fit_room *room) {
  lw_text bytes = {0};
  room->input.wanted = "a list of blocks";
  lw_status status = lw_input_open(&room->input, a->wall.list, &room->faults);
  if (status == LW_OK) status = lw_input_rest(&room->input, &bytes, &room->faults);
  if (status == LW_OK)
    status =
        lw_yard_read(tables, bytes.data != NULL ? bytes.data : "", bytes.length, &room->yard, &room->faults);
  lw_input_close(&room->input);
  lw_text_free(&bytes);
  if (status == LW_OK) return 0;
  return (status == LW_NO_MEMORY ? lw_cli_no_memory() : lw_cli_print_faults(&room->faults)) + 1;
}

/* The sheet by itself, for its own faults and for its height. */
static int read_wall(const fit_asked *a, lw_one_wall *wall, lw_case *read) {
  int ended = lw_wall_read(&a->wall, wall);
  if (ended > 0) return ended;
  *read = wall->c;
  if (wall->faults.count == 0) lw_case_complete(wall->tables, &wall->c, &wall->faults);
  const lw_choice *kind = &wall->c.wall.kind;
  if (wall->faults.count == 0 && kind->value != LW_WALL_COURSES)
    lw_faults_add(&wall->faults, LW_FAULT_CONTRADICTION, (lw_cell_place){kind->row, kind->column},
                  "wall kind", "section", "courses: a solid section has no blocks to choose");
  return wall->faults.count > 0 ? lw_cli_print_faults(&wall->faults) + 1 : 0;
}

static lw_status write_page(lw_as as, const lw_fit_list *list, lw_text *text) {
  const lw_text_style style = {.columns = 80, .as = as};
  lw_report_begin(&style, "Blocks tried in a wall", text);
  lw_status status = lw_report_fit_text(list, &style, text);
  lw_report_end(&style, text);
  return text->failed ? LW_NO_MEMORY : status;
}

static int write_list(const fit_asked *a, const lw_one_wall *wall, const fit_room *room) {
  const lw_fit_list list = {&room->yard, room->fit, &room->read.order, wall->tables->replaced,
                            lw_case_units(&wall->c)};
  lw_text text = {0};
  lw_status status = a->json  ? lw_report_fit_json(&list, &text)
                     : a->csv ? lw_report_fit_csv(&list, &text)
                              : write_page(a->as.as, &list, &text);
  if (status == LW_OK) return lw_output_write(a->wall.output, &text, LW_EXIT_DONE);
  lw_text_free(&text);
  return lw_cli_no_memory();
}

static int make(const fit_asked *a, lw_one_wall *wall, fit_room *room) {
  int ended = read_wall(a, wall, &room->read);
  if (ended == 0) ended = read_blocks(a, wall->tables, room);
  if (ended > 0) return ended - 1;
  const lw_fit_wall tried = {wall->tables, &room->read, wall->c.wall.height.si, lw_case_units(&wall->c)};
  if (lw_fit_hold(&tried, &room->yard, &room->room, &wall->faults) != LW_OK)
    return lw_cli_print_faults(&wall->faults);
  lw_fit_find(&tried, &room->yard, &room->room, room->fit);
  return write_list(a, wall, room);
}

int lw_cli_fit(int argc, char **argv) {
  fit_asked a = {.wall = {.command = "fit", .wants_list = true}};
  int ended = read_options(argc, argv, &a), exit_status = LW_EXIT_OTHER;
  if (ended > 0) return ended - 1;
  lw_one_wall *wall = lw_wall_open(&a.wall, &exit_status);
  if (wall == NULL) return exit_status;
  fit_room *room = calloc(1, sizeof *room);
  exit_status = room != NULL ? make(&a, wall, room) : lw_cli_no_memory();
  free(room);
  lw_wall_close(wall);
  return exit_status;
}
