/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_VERDICT_LIMIT_OWN_H
#define LOWWALL_VERDICT_LIMIT_OWN_H

#include <lowwall/tables.h>

#include "base/amount.h"

typedef struct lw_limit_figure {
  char text[64];
} lw_limit_figure;

/** The figure that stands in the law, for a reader who measures otherwise: before, "1.00 m by the law" or
 *  "4 ft by the law", after. Empty where the figure told is the law's own, and of our defaults. */
lw_limit_figure lw_limit_own(lw_units units, const lw_limit_row *row, const char *before, const char *after);

#endif
