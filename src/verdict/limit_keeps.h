/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_VERDICT_LIMIT_KEEPS_H
#define LOWWALL_VERDICT_LIMIT_KEEPS_H

#include "facts.h"
#include "reasons.h"

/* The distances and loads that a row asks for besides its height. Gives whether all are kept for certain. */
bool lw_limit_keeps(const lw_facts *facts, const lw_limit_row *row, const lw_span *height, lw_reaching *to);

#endif
