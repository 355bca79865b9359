/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_RUN_TOLD_H
#define LOWWALL_RUN_TOLD_H

#include <lowwall/result.h>

/* Every step of a result that holds everything. */
void lw_run_tell(const lw_result *result, const lw_working *working);

#endif
