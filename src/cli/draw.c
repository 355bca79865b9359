/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _XOPEN_SOURCE 700
#include <stdlib.h>
#include <string.h>

#include <lowwall/report.h>
#include <lowwall/order.h>

#include "cli.h"
#include "drawing_file.h"
#include "one_wall.h"
#include "order_wall.h"
#include "options.h"
#include "output.h"

static const char help[] =
    "lowwall draw [--view section | elevation | plan] [--width MM] [--units metric|us]\n"
    "             [--tables DIR] [-o FILE] [SHEET] [ITEM=VALUE ...]\n"
    "\n"
    "Draw the wall of a sheet to scale. As SVG, or as PDF or PNG where FILE ends in .pdf or .png.\n"
    "\n"
    "  --view section      cut through: courses and cap, pad, ground, stone, water and loads, the pressure\n"
    "                      behind, the resultant, and what each number means; so it is when none is named\n"
    "  --view elevation    from in front and unrolled, block by block: corners, halves, cut pieces, steps\n"
    "  --view plan         from above: runs, turns, curves, pegs and the distances that check them\n"
    "                      (elevation and plan need the plan, `run 1 length` at least)\n"
    "  --width MM          of the paper, 90 to 400; 180 fits A4, 95 a phone\n"
    "  --units metric|us   what it is written in; left out, as most of the sheet is measured\n"
    "  --tables DIR        values of your own: each CSV file in DIR replaces the table of its name\n"
    "  -o, --output FILE   write there, the whole of it or nothing; - is standard output\n"
    "  -h, --help          this page\n"
    "\n"
    "A drawing is no design and no approval: its first line says who must see the wall.\n";

typedef enum draw_view { SECTION, ELEVATION, PLAN, VIEWS } draw_view;

typedef struct draw_asked {
  lw_wall_asked wall;
  const char *width, *view_name;
  draw_view view;
  double width_mm;
} draw_asked;

/* A file named as another kind of picture would not open as one. */
static bool take_name(const draw_asked *asked) {
  const char *name = asked->wall.output, *base = name ? strrchr(name, '/') : NULL;
  const char *dot = name ? strrchr(base ? base : name, '.') : NULL;
  static const char *const KINDS[] = {".svg", ".pdf", ".png"};
  if (dot == NULL || dot[1] == '\0' || dot == name || dot[-1] == '/') return true;
  for (size_t i = 0; i < sizeof KINDS / sizeof *KINDS; i++)
    if (lw_cli_ends_in(name, KINDS[i])) return true;
  lw_cli_refuse("draw", "bad-option: -o %.60s: a name that ends in .svg, .pdf or .png is wanted", name);
  return false;
}

static void take_view(draw_asked *asked) {
  static const char *const NAMES[VIEWS] = {"section", "elevation", "plan"};
  for (int i = 0; i < VIEWS && asked->view_name != NULL; i++)
    if (strcmp(asked->view_name, NAMES[i]) == 0) asked->view = (draw_view)i;
  if (asked->view != SECTION) asked->wall.complete = lw_order_complete;
}

/* gives 0 to go on, else the exit status + 1 */
static int read_options(int argc, char **argv, draw_asked *asked) {
  const lw_option options[] = {
      {"view", .text = &asked->view_name, .words = "section, elevation or plan"},
      {"width", .text = &asked->width},
      LW_OPTION_UNITS(&asked->wall.units),
      LW_OPTION_TABLES(&asked->wall.tables),
      LW_OPTION_OUTPUT(&asked->wall.output),
      {0},
  };
  lw_arguments rest;
  int ended = lw_options_read(options, help, argc, argv, &rest);
  if (ended > 0) return ended;
  take_view(asked);
  bool well = lw_cli_take_paper_width("draw", asked->width, &asked->width_mm) && take_name(asked) &&
              lw_wall_take_arguments(&rest, &asked->wall);
  return well ? 0 : LW_EXIT_BAD_INPUT + 1;
}

static lw_status draw_order(const draw_asked *asked, const lw_result *result, const lw_order *order,
                            lw_drawing *drawing, lw_error *error) {
  if (asked->view == ELEVATION) return lw_draw_elevation(result, order, asked->width_mm, drawing, error);
  return lw_draw_plan(result, order, asked->width_mm, drawing, error);
}

/* gives 0 to go on with the drawing, else the exit status + 1 */
static int draw_view_of(const draw_asked *asked, lw_one_wall *wall, lw_drawing *drawing) {
  lw_error error = {0};
  lw_order *order = asked->view != SECTION ? calloc(1, sizeof *order) : NULL;
  lw_status status = asked->view != SECTION && !order ? LW_NO_MEMORY : LW_OK;
  if (order) status = lw_order_fill(&wall->result, order, &wall->faults);
  if (status == LW_OK)
    status = order ? draw_order(asked, &wall->result, order, drawing, &error)
                   : lw_draw_section(&wall->result, asked->width_mm, drawing, &error);
  free(order);
  if (status == LW_OK) return 0;
  if (status == LW_FAULTS) return lw_cli_print_faults(&wall->faults) + 1;
  return lw_cli_fail("draw", status, &error) + 1;
}

static int draw(const draw_asked *asked, lw_one_wall *wall) {
  lw_drawing drawing = {0};
  lw_error error = {0};
  int ended = draw_view_of(asked, wall, &drawing);
  if (ended == 0) return lw_cli_write_drawing("draw", asked->wall.output, &drawing, LW_OK, &error);
  lw_drawing_free(&drawing);
  return ended - 1;
}

int lw_cli_draw(int argc, char **argv) {
  draw_asked asked = {.wall = {.command = "draw"}};
  int ended = read_options(argc, argv, &asked), exit_status = LW_EXIT_OTHER;
  if (ended > 0) return ended - 1;
  lw_one_wall *wall = lw_wall_open(&asked.wall, &exit_status);
  if (wall == NULL) return exit_status;
  ended = lw_wall_run(&asked.wall, wall);
  exit_status = ended > 0 ? ended - 1 : draw(&asked, wall);
  lw_wall_close(wall);
  return exit_status;
}
