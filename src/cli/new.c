/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli.h"
#include "options.h"
#include "output.h"

static const char help[] =
    "lowwall new bed|ground|section [-o FILE]\n"
    "\n"
    "Write a sheet to start from. It runs as it is; its numbers are invented, so put in your own.\n"
    "\n"
    "  bed       a raised bed: only imported soil, the ground level the same on both sides\n"
    "  ground    a wall that holds up real ground\n"
    "  section   a solid wall given by its widths in place of courses\n"
    "\n"
    "  -o, --output FILE   write there; a file that exists is left as it is\n"
    "  -h, --help          this page\n";

static int write_start(const char *kind, const char *output) {
  static const char *const kinds[] = {"bed", "ground", "section", NULL};
  lw_text text = {0};
  if (lw_sheet_start(kind, &text) == LW_OK) return lw_output_write_new(output, &text, LW_EXIT_DONE);
  lw_text_free(&text);
  const char *nearest = lw_cli_nearest(kind, kinds);
  if (nearest != NULL)
    return lw_cli_refuse("new", "bad-option: there is no kind \"%.80s\"; the nearest is %s", kind, nearest);
  return lw_cli_refuse("new", "bad-option: there is no kind \"%.80s\"; wanted: bed, ground, section", kind);
}

int lw_cli_new(int argc, char **argv) {
  const char *output = NULL;
  const lw_option options[] = {LW_OPTION_OUTPUT(&output), {0}};
  lw_arguments rest;
  int ended = lw_options_read(options, help, argc, argv, &rest);
  if (ended > 0) return ended - 1;
  if (rest.count == 0) return lw_cli_refuse("new", "bad-option: a kind is wanted: bed, ground or section");
  if (rest.count > 1)
    return lw_cli_refuse("new", "bad-option: one kind at a time; \"%.80s\" is too much", rest.at[1]);
  return write_start(rest.at[0], output);
}
