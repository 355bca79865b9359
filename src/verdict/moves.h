/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_VERDICT_MOVES_H
#define LOWWALL_VERDICT_MOVES_H

#include <lowwall/result.h>

/* Which check is told of; after the one that governs is known. */
void lw_verdict_choose_told(const lw_situations *situations, lw_verdict *verdict);

#endif
