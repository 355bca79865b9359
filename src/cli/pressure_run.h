/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_PRESSURE_RUN_H
#define LOWWALL_CLI_PRESSURE_RUN_H

#include <lowwall/diagram.h>

#include "pressure_parts.h"

/* One question of `lowwall pressure` and its answer. */
typedef struct lw_pressure_run {
  lw_earth_state state;
  char state_word[32];
  lw_pressure_method method;
  const lw_pressure_routine *routine;
  bool curved;
  lw_plane plane, wedge_plane;
  lw_thrust thrust;
  lw_trial_wedge wedge;
  lw_error error, wedge_error;
  bool wedge_known, faulty, moist_below_water;
  lw_thrust rankine; /* beside Coulomb and the wedge: on an upright plane of the same height */
  bool rankine_known;
  lw_pressure_beside beside;
  lw_diagram_asked asked; /* the planes of all methods */
  lw_diagram diagram;     /* and what each makes of its own */
} lw_pressure_run;

/* Fill in what is computed; the steps of the method in hand are told, or those of every method.
 * gives LW_OK · LW_NO_SOLUTION with run->error */
lw_status lw_pressure_compute(lw_pressure_run *run, const lw_working *told, bool every);

/* Where the formula in hand is from: a passive curve has a routine of its own. */
const char *lw_pressure_run_source(const lw_pressure_run *run);

/* Formula and wedge are the same problem, solved twice. */
bool lw_pressure_must_agree(const lw_pressure_run *run);
/* The answer as keys, the working left out, and as a page. */
void lw_pressure_run_json(const lw_pressure_run *run, json_t *out);
void lw_pressure_run_text(const lw_pressure_run *run, lw_units units, lw_text *text);

#endif
