/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECKS_WEIGH_H
#define LOWWALL_CHECKS_WEIGH_H

#include "format.h"

/* What the checks of one load case share. */
typedef struct lw_check_context {
  const lw_wall *wall;
  const lw_format *format;
  const lw_load_case *load_case;
} lw_check_context;

lw_number lw_known(double value);
/* has, needs, ratio and whether it holds, from demand and resistance. */
void lw_check_weigh(lw_check *check, const lw_format_row *row, lw_situation_kind kind);
/* A check that has no answer, and why. */
void lw_check_not_shown(lw_check *check, lw_reason reason);

#endif
