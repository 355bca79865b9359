/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_PRESSURE_QUESTION_H
#define LOWWALL_CLI_PRESSURE_QUESTION_H

#include "formula.h"
#include "pressure_run.h"

/* What `lowwall pressure` is asked without a sheet; too big for a stack, all zero before it is read. */
typedef struct lw_pressure_question {
  lw_formula_given given;
  lw_case more; /* further soils, and loads */
  lw_pressure_run run;
} lw_pressure_question;

/* gives the exit status */
int lw_pressure_question_help(void);

/* Read the items. false where there are faults, which are in given.
 * units: of what is printed, as on the command line; NULL: as the items are written */
bool lw_pressure_question_read(const lw_arguments *arguments, const char *units,
                               lw_pressure_question *question);

#endif
