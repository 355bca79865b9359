/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_STRETCHES_H
#define LOWWALL_ORDER_STRETCHES_H

#include "laying.h"

/* A corner that is no right angle is cut on the mitre: something of a block must be left beside the cut. */
lw_status lw_corners_hold(const lw_laying *laying, lw_plan_fault *fault);
/* Corners and stretches of the order. */
void lw_stretches_build(const lw_laying *laying);

#endif
