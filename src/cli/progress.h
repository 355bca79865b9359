/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_PROGRESS_H
#define LOWWALL_CLI_PROGRESS_H

#include <stdbool.h>
#include <stdio.h>

/* How far a schedule is: one line at the foot of the terminal, drawn again and again and wiped out at the
 * end. Only where someone sees it: standard error is a terminal, the results do not go to one, and we are in
 * its foreground. Everywhere else these functions do nothing. */
typedef struct lw_progress {
  bool wanted, drawn;
  double size;          /* of the schedule in bytes; 0 when it cannot be known */
  double fed;           /* bytes of it read into rows */
  double read, written; /* rows */
  double began_s, drawn_s;
} lw_progress;

/* Begin to count; results is where they are written to. */
void lw_progress_open(lw_progress *progress, FILE *sheet, FILE *results);
/* So many rows more are written; draws when it is time. */
void lw_progress_step(lw_progress *progress, int rows);
/* Wipe it out, before anything else is written to standard error and at the end. */
void lw_progress_hide(lw_progress *progress);

#endif
