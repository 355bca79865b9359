/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BASE_CANNED_H
#define LOWWALL_BASE_CANNED_H

#include <lowwall/base.h>

/* Sentences that stand ready in the tables. Each measure in them is written both ways, in braces with an
 * equals sign between: "Nearer than {3 m = 10 ft} to it." Nothing is converted or guessed when it is told. */

/** The sentence to a reader who measures so: "Nearer than 10 ft to it." What is no such pair stays as it is.
 *  out   the sentence, cut to size
 *  gives out */
const char *lw_canned_told(lw_units units, const char *sentence, char *out, size_t size);

/** The same to whoever may read it: "Nearer than 3 m (10 ft) to it." */
const char *lw_canned_both(const char *sentence, char *out, size_t size);
/** As lw_canned_both, appended to a text. */
void lw_canned_add_both(const char *sentence, lw_text *out);

/** Whether a pair begins at the brace, and how long it is, both braces included; 0: none does. */
size_t lw_canned_pair(const char *brace);

#endif
