/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "pressure_asked.h"

#include <string.h>

#include <lowwall/report.h>

#include "output.h"
#include "say.h"

enum { NARROWEST_MM = 90, WIDEST_MM = 400, A4_MM = 180 };

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
  asked->width_mm = A4_MM;
  if (asked->width == NULL) return true;
  bool read = lw_number_read(asked->width, strlen(asked->width), &asked->width_mm);
  if (read && asked->width_mm >= NARROWEST_MM && asked->width_mm <= WIDEST_MM && asked->drawn) return true;
  if (read && !asked->drawn)
    lw_cli_refuse("pressure", "bad-option: --width is of a drawing: -o FILE.svg, .pdf or .png with it");
  else
    lw_cli_refuse("pressure", "bad-option: --width %.40s: millimetres from %d to %d are wanted", asked->width,
                  NARROWEST_MM, WIDEST_MM);
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

static lw_status write_as(const char *name, const lw_drawing *drawing, lw_text *out, lw_error *error) {
  static const double DOTS_PER_MM = 8.0;
  if (lw_cli_ends_in(name, ".pdf")) return lw_drawing_pdf(drawing, 1, out, error);
  if (lw_cli_ends_in(name, ".png")) return lw_drawing_png(drawing, DOTS_PER_MM, out, error);
  return lw_drawing_svg(drawing, out);
}

int lw_pressure_draw(const lw_pressure_asked *asked, const lw_pressure_page *page) {
  lw_drawing drawing = {0};
  lw_text out = {0};
  lw_error error = {0};
  lw_status status = lw_draw_pressure(page, asked->width_mm, &drawing, &error);
  if (status == LW_OK) status = write_as(asked->output, &drawing, &out, &error);
  lw_drawing_free(&drawing);
  if (status == LW_OK) return lw_output_write(asked->output, &out, LW_EXIT_DONE);
  lw_text_free(&out);
  if (status == LW_NO_MEMORY) return lw_cli_no_memory();
  lw_cli_refuse("pressure", "%s: %s", lw_status_slug(status), error.text);
  return LW_EXIT_OTHER;
}
