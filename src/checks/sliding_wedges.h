/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECKS_SLIDING_WEDGES_H
#define LOWWALL_CHECKS_SLIDING_WEDGES_H

#include "place.h"
#include "weigh.h"

/* Sliding where the set's factor is on the strength of every wedge: the factor at which what is left of the
 * strengths just holds the push that they leave. */
lw_check lw_check_sliding_of_wedges(const lw_check_context *context, const lw_place *place);

#endif
