/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_PRESSURE_ASKED_H
#define LOWWALL_CLI_PRESSURE_ASKED_H

#include <lowwall/report.h>

/* The options of `lowwall pressure`. */
typedef struct lw_pressure_asked {
  bool json, csv, working;
  bool drawn; /* the output is a drawing, by its name */
  double width_mm;
  const char *width, *tables, *output, *units;
} lw_pressure_asked;

/* Options against each other; false after saying what is wrong. */
bool lw_pressure_asked_hold(lw_pressure_asked *asked);

/* The drawing, written as its name has it. headline: who must see the wall, "" for a plane of no wall.
 * gives the exit status */
int lw_pressure_draw(const lw_pressure_asked *asked, const lw_pressure_page *page);

#endif
