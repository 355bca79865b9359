/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_GROUND_RUN_H
#define LOWWALL_LOAD_CASES_GROUND_RUN_H

#include "slip_check.h"
#include "standards/factor_set.h"

/* Slip of wall and ground, and of a bed down its slope, in the situations that change the water, as far as it
 * is aimed for. */
void lw_ground_run(const lw_wall *wall, const lw_factor_set_family *family, lw_ground_aim aim,
                   lw_situations *situations);

#endif
