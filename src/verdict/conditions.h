/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_VERDICT_CONDITIONS_H
#define LOWWALL_VERDICT_CONDITIONS_H

#include "tables/known.h"
#include "facts.h"

/* Whether a condition of tables/conditions.csv is so; left_out, which may be NULL, is the first item
 * that leaves it open, and else unchanged. */
lw_so lw_verdict_condition(const lw_facts *facts, lw_known_row row, const char **left_out);
/* The i-th condition that a sheet can answer, or NULL past the last. */
const char *lw_verdict_condition_at(size_t index);

#endif
