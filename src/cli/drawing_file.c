/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "drawing_file.h"

#include <string.h>

#include "output.h"
#include "say.h"

enum { NARROWEST_MM = 90, WIDEST_MM = 400, A4_MM = 180 };

bool lw_cli_take_paper_width(const char *command, const char *given, double *width_mm) {
  *width_mm = A4_MM;
  if (given == NULL) return true;
  if (lw_number_read(given, strlen(given), width_mm) && *width_mm >= NARROWEST_MM && *width_mm <= WIDEST_MM)
    return true;
  lw_cli_refuse(
      command, "bad-option: --width %.40s: a number of millimetres from %d to %d is wanted, as in --width %d",
      given, NARROWEST_MM, WIDEST_MM, A4_MM);
  return false;
}

static lw_status write_as(const char *name, const lw_drawing *drawing, lw_text *out, lw_error *error) {
  static const double DOTS_PER_MM = 8.0;
  if (lw_cli_ends_in(name, ".pdf")) return lw_drawing_pdf(drawing, 1, out, error);
  if (lw_cli_ends_in(name, ".png")) return lw_drawing_png(drawing, DOTS_PER_MM, out, error);
  return lw_drawing_svg(drawing, out);
}

int lw_cli_write_drawing(const char *command, const char *name, lw_drawing *drawing, lw_status status,
                         lw_error *error) {
  lw_text out = {0};
  if (status == LW_OK) status = write_as(name, drawing, &out, error);
  lw_drawing_free(drawing);
  if (status == LW_OK) return lw_output_write(name, &out, LW_EXIT_DONE);
  lw_text_free(&out);
  return lw_cli_fail(command, status, error);
}
