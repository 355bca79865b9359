/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TABLES_FOLD_H
#define LOWWALL_TABLES_FOLD_H

#include <stdbool.h>
#include <stddef.h>

enum { LW_FOLDED_MAX = 64 };

/** Fold a name for comparing: lower case, hyphens, underscores and runs of blanks as one blank, ends trimmed;
 *  what does not fit is cut.
 *  gives the folded length */
size_t lw_fold(const char *name, size_t length, char out[LW_FOLDED_MAX]);

/** Does one of the "|"-separated words fold to that folded name? */
bool lw_fold_listed(const char *words, const char *folded);

/** Edit distance of two folded names: single letters put in, left out, changed, or two neighbours swapped. */
int lw_edit_distance(const char *a, const char *b);

#endif
