/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "pressure_asked.h"

#include <string.h>

#include <lowwall/report.h>

#include "drawing_file.h"
#include "say.h"

static bool is_drawing(const char *name) {
  return lw_cli_ends_in(name, ".svg") || lw_cli_ends_in(name, ".pdf") || lw_cli_ends_in(name, ".png");
}

/* A picture of a kind that is not drawn: the page in a file so named would open as none. */
static bool is_other_picture(const char *name) {
  static const char *const KINDS[] = {".gif", ".jpg", ".jpeg", ".webp", ".tif", ".tiff", ".bmp", ".eps"};
  for (size_t i = 0; i < sizeof KINDS / sizeof *KINDS; i++)
    if (lw_cli_ends_in(name, KINDS[i])) return true;
  return false;
}

static bool take_width(lw_pressure_asked *asked) {
  if (asked->width == NULL || asked->drawn)
    return lw_cli_take_paper_width("pressure", asked->width, &asked->width_mm);
  lw_cli_refuse("pressure", "bad-option: --width is of a drawing: -o FILE.svg, .pdf or .png with it");
  return false;
}

bool lw_pressure_asked_hold(lw_pressure_asked *asked) {
  asked->drawn = is_drawing(asked->output);
  if (!take_width(asked)) return false;
  if (is_other_picture(asked->output))
    lw_cli_refuse("pressure",
                  "bad-option: -o %.60s: a drawing is written where it ends in .svg, .pdf or .png",
                  asked->output);
  else if (asked->json && asked->csv)
    lw_cli_refuse("pressure", "bad-option: --json or --csv, one of them");
  else if (asked->drawn && (asked->json || asked->csv))
    lw_cli_refuse("pressure", "bad-option: -o %.60s is a drawing; --json and --csv want another name",
                  asked->output);
  else if (asked->working && (asked->drawn || asked->csv))
    lw_cli_refuse("pressure",
                  "bad-option: --working: a drawing and --csv have no steps; the page and --json do");
  else
    return true;
  return false;
}

int lw_pressure_draw(const lw_pressure_asked *asked, const lw_pressure_page *page) {
  lw_drawing drawing = {0};
  lw_error error = {0};
  lw_status status = lw_draw_pressure(page, asked->width_mm, &drawing, &error);
  return lw_cli_write_drawing("pressure", asked->output, &drawing, status, &error);
}
