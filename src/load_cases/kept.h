/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_KEPT_H
#define LOWWALL_LOAD_CASES_KEPT_H

#include <lowwall/checks.h>

void lw_check_keep(const lw_check *check, lw_kept_check *kept);

/** One more check of a situation.
 *  in    check   at most LW_CHECK_MAX of a situation */
void lw_situation_keep(lw_situation *situation, const lw_check *check);

#endif
