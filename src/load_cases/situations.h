/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_SITUATIONS_H
#define LOWWALL_LOAD_CASES_SITUATIONS_H

#include <lowwall/checks.h>

/** Run every situation on a wall.
 *  in    wall      as lw_wall_build made it
 *        tables    in effect
 *        detail    below LW_DETAIL_EVERYTHING no free body and no joint of a situation is filled in
 *  out   situations   each with its checks; a check that cannot be shown says why */
void lw_situations_run(const lw_wall *wall, const lw_tables *tables, lw_detail detail,
                       lw_situations *situations);

/** As lw_situations_run to LW_DETAIL_VERDICT, for whoever asks for lw_situations_least() alone: what governs
 *  is not to be read from them. */
void lw_situations_run_least(const lw_wall *wall, const lw_tables *tables, lw_situations *situations);

#endif
