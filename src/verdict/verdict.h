/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_VERDICT_VERDICT_H
#define LOWWALL_VERDICT_VERDICT_H

#include <lowwall/result.h>

/** The three answers, from measured levels and distances and the checks.
 *  in    result   given, tables, wall, situations, fence, trench, influence and looks, as lw_run fills them
 *        detail   before LW_DETAIL_EVERYTHING no sentence is made but those of the headline
 *  out   result   verdict */
void lw_verdict_reach(lw_result *result, lw_detail detail);

#endif
