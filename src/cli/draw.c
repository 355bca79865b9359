/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _XOPEN_SOURCE 700
#include <getopt.h>
#include <string.h>

#include <lowwall/drawing.h>

#include "cli.h"
#include "one_wall.h"
#include "output.h"

static const char help[] =
    "lowwall draw [--width MM] [--tables DIR] [-o FILE] [SHEET] [ITEM=VALUE ...]\n"
    "\n"
    "Draw the section of the wall of a sheet to scale: courses and cap, pad, ground, stone, water and loads, "
    "the\n"
    "pressure behind, the resultant, and what each number means. As SVG, or as PDF or PNG where FILE ends "
    "in\n"
    ".pdf or .png.\n"
    "\n"
    "  --width MM          of the paper, 90 to 400; 180 fits A4, 95 a phone\n"
    "  --tables DIR        values of your own: each CSV file in DIR replaces the table of its name\n"
    "  -o, --output FILE   write there, the whole of it or nothing; - is standard output\n"
    "  -h, --help          this page\n"
    "\n"
    "A drawing is no design and no approval: its first line says who must see the wall.\n";

enum { NARROWEST_MM = 90, WIDEST_MM = 400, A4_MM = 180 };

typedef struct draw_asked {
  lw_wall_asked wall;
  const char *width;
  double width_mm;
} draw_asked;

static bool take_width(draw_asked *asked) {
  asked->width_mm = A4_MM;
  if (asked->width == NULL) return true;
  if (lw_number_read(asked->width, strlen(asked->width), &asked->width_mm) &&
      asked->width_mm >= NARROWEST_MM && asked->width_mm <= WIDEST_MM)
    return true;
  lw_cli_refuse("draw", "bad-option: --width %.40s: millimetres from %d to %d are wanted", asked->width,
                NARROWEST_MM, WIDEST_MM);
  return false;
}

/* gives 0 to go on, else the exit status + 1 */
static int read_options(int argc, char **argv, draw_asked *asked) {
  static const struct option options[] = {{"width", required_argument, NULL, 'w'},
                                          {"tables", required_argument, NULL, 't'},
                                          {"output", required_argument, NULL, 'o'},
                                          {"help", no_argument, NULL, 'h'},
                                          {0}};
  optind = 0; /* glibc: begin anew, whatever was read before */
  opterr = 0;
  for (int option; (option = getopt_long(argc, argv, ":o:h", options, NULL)) != -1;) {
    bool well = true;
    switch (option) {
    case 'w': well = lw_cli_take_once("draw", "--width", optarg, &asked->width); break;
    case 't': well = lw_cli_take_once("draw", "--tables", optarg, &asked->wall.tables); break;
    case 'o': well = lw_cli_take_once("draw", "--output", optarg, &asked->wall.output); break;
    case 'h': return lw_cli_print(help) + 1;
    default: return lw_cli_refuse_option("draw", argv, option) + 1;
    }
    if (!well) return LW_EXIT_BAD_INPUT + 1;
  }
  bool well = take_width(asked) && lw_wall_take_arguments(argc, argv, optind, &asked->wall);
  return well ? 0 : LW_EXIT_BAD_INPUT + 1;
}

static lw_status write_as(const char *name, const lw_drawing *drawing, lw_text *out, lw_error *error) {
  static const double DOTS_PER_MM = 8.0;
  if (lw_cli_ends_in(name, ".pdf")) return lw_drawing_pdf(drawing, 1, out, error);
  if (lw_cli_ends_in(name, ".png")) return lw_drawing_png(drawing, DOTS_PER_MM, out, error);
  return lw_drawing_svg(drawing, out);
}

static int draw(const draw_asked *asked, const lw_result *result) {
  lw_drawing drawing = {0};
  lw_text out = {0};
  lw_error error = {0};
  lw_status status = lw_draw_section(result, asked->width_mm, &drawing, &error);
  if (status == LW_OK) status = write_as(asked->wall.output, &drawing, &out, &error);
  lw_drawing_free(&drawing);
  if (status == LW_OK) return lw_output_write(asked->wall.output, &out, LW_EXIT_DONE);
  lw_text_free(&out);
  if (status == LW_NO_MEMORY) return lw_cli_no_memory();
  lw_cli_refuse("draw", "%s: %s", lw_status_slug(status), error.text);
  return LW_EXIT_OTHER;
}

int lw_cli_draw(int argc, char **argv) {
  draw_asked asked = {.wall = {.command = "draw"}};
  int ended = read_options(argc, argv, &asked), exit_status = LW_EXIT_OTHER;
  if (ended > 0) return ended - 1;
  lw_one_wall *wall = lw_wall_open(&asked.wall, &exit_status);
  if (wall == NULL) return exit_status;
  ended = lw_wall_run(&asked.wall, wall);
  exit_status = ended > 0 ? ended - 1 : draw(&asked, &wall->result);
  lw_wall_close(wall);
  return exit_status;
}
