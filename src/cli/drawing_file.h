/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_DRAWING_FILE_H
#define LOWWALL_CLI_DRAWING_FILE_H

#include <lowwall/report.h>

/* What commands that draw have in common: the width of the paper, and the file. */

/* The width that --width gave, that of A4 where it gave none; false after saying what is wrong. */
bool lw_cli_take_paper_width(const char *command, const char *given, double *width_mm);

/* Write a drawing as its file's name has it: .pdf, .png, else SVG. status and error are those of drawing it;
 * the drawing is freed in any case. gives the exit status */
int lw_cli_write_drawing(const char *command, const char *name, lw_drawing *drawing, lw_status status,
                         lw_error *error);

#endif
