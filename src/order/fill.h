/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_FILL_H
#define LOWWALL_ORDER_FILL_H

#include "laying.h"

enum { LW_CHOICE_MAX = 48 };

/* The ways to fill a row; at least one. */
int lw_row_choices(const lw_laying *laying, const lw_laid *row, lw_laid choice[LW_CHOICE_MAX]);

#endif
