/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_BACK_ROWS_H
#define LOWWALL_REPORT_BACK_ROWS_H

#include <lowwall/result.h>

/* The row of tables/interfaces.csv that the friction of the back was taken from; NULL where it is given. */
const lw_interface_row *lw_back_row(const lw_result *result);
/* That of the membrane which takes a part of it; NULL where there is none. */
const lw_interface_row *lw_back_membrane(const lw_result *result);

#endif
