/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_RUN_ONCE_H
#define LOWWALL_RUN_ONCE_H

#include <lowwall/result.h>

/* The beginning of a run, for the case in hand and for one that differs from it. */

/** The case completed, and its wall; the rest of the result emptied.
 *  gives as lw_run */
lw_status lw_run_begin(const lw_case *c, const lw_tables *tables, lw_detail detail, lw_result *result,
                       lw_error *error);

/** The checks of result->wall, and what the verdict is reached from beside them. */
void lw_run_checks(lw_result *result, lw_detail detail);

#endif
