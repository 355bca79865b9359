/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_GROUND_RUN_H
#define LOWWALL_LOAD_CASES_GROUND_RUN_H

#include "standards/factor_set.h"

/* Slip of wall and ground, and of a bed down its slope, in the situations that change the water. At
 * LW_DETAIL_VERDICT only as far as a slip may govern. */
void lw_ground_run(const lw_wall *wall, const lw_factor_set_family *family, lw_detail detail,
                   lw_situations *situations);

#endif
