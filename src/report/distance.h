/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_DISTANCE_H
#define LOWWALL_REPORT_DISTANCE_H

#include <lowwall/case.h>

#include "base/amount.h"

/** A distance that the sheet gives: "3.00 m", or "more than 3.00 m" where that is all it says. */
lw_amount lw_distance_told(lw_units units, const lw_quantity *distance);

#endif
