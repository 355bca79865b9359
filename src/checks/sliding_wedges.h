/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECKS_SLIDING_WEDGES_H
#define LOWWALL_CHECKS_SLIDING_WEDGES_H

#include "weigh.h"

/* Sliding. Where the set's factor is one on the strength of every wedge, and the format does not hold it yet,
 * it is searched: the factor at which what is left of the strengths just holds the push that they leave. */
lw_check lw_check_sliding(const lw_check_context *context, const lw_stage *stage, const lw_working *working);

#endif
