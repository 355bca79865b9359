/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_KINDS_H
#define LOWWALL_LOAD_CASES_KINDS_H

#include "slip_check.h"

/* A kind of check with the functions that make it. */
typedef struct lw_check_row {
  lw_check_about about;
  lw_make_check make;                 /* on a contact; NULL: it is made on none */
  lw_make_ground_check make_ground;   /* in the ground as a whole; NULL: not there */
  bool (*asked)(const lw_wall *wall); /* NULL: of every wall */
  bool of_strengths; /* where a set's factor of sliding is on every strength, so is what this asks */
} lw_check_row;

const lw_check_row *lw_check_row_of(lw_check_kind kind);

#endif
