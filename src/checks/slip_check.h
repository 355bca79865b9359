/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECKS_SLIP_CHECK_H
#define LOWWALL_CHECKS_SLIP_CHECK_H

#include "format.h"

/* Slip of wall and ground, and of a bed down its slope, in the situations that change the water. At
 * LW_DETAIL_VERDICT only as far as a slip may govern. */
void lw_slips_check(const lw_wall *wall, const lw_format_family *family, lw_detail detail,
                    lw_situations *situations);

#endif
