/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_SITUATION_H
#define LOWWALL_LOAD_CASES_SITUATION_H

#include <lowwall/checks.h>

/** The steps to the push on the base in each situation that was run.
 *  in    situations   of lw_situations_run at LW_DETAIL_EVERYTHING
 *        working      takes the steps */
void lw_situations_tell(const lw_wall *wall, const lw_tables *tables, const lw_situations *situations,
                        const lw_working *working);

/** The steps from the sums of one contact to its resultant and pressures, in the load case that is shown.
 *  in    at, joint   base, pad, joint (1 is the lowest) or cap, which the wall has
 *        working     takes them */
void lw_situation_tell(const lw_wall *wall, const lw_situation *situation, lw_at at, int joint,
                       const lw_working *working);

#endif
