/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_SLIDING_WEDGES_H
#define LOWWALL_LOAD_CASES_SLIDING_WEDGES_H

#include "balance/weigh.h"

/* A check whose factor may be one on the strength of every wedge: where the set's is, it is searched, the
 * factor at which what is left of the strengths just holds the push that they leave. */
lw_check lw_check_of_strengths(lw_make_check make, const lw_check_context *context, const lw_free_body *body);

#endif
