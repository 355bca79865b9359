/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_GOVERNING_H
#define LOWWALL_LOAD_CASES_GOVERNING_H

#include <lowwall/checks.h>

/** The check that governs of all situations so far. False: nothing counts. */
bool lw_situations_governing(const lw_situations *situations, int *situation, int *check);

/** Which check governs, and whether the wall stands by it.
 *  out   situations   governed and what follows it */
void lw_situations_weigh(lw_situations *situations);

#endif
