/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_VERDICT_MOVES_H
#define LOWWALL_VERDICT_MOVES_H

#include <lowwall/result.h>

/* Of two checks that fall short the one that says that the wall would move is told before one that lacks
 * margin; of two that say so the one that has less; of others the graver. */
bool lw_check_told_before(const lw_check *a, const lw_check *b);

/* Which check is told of; after the one that governs is known. */
void lw_verdict_choose_told(const lw_situations *situations, lw_verdict *verdict);

#endif
