/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_DIFFERENCE_H
#define LOWWALL_REPORT_DIFFERENCE_H

#include <lowwall/report.h>

/* Why formula and wedge differ; "" when they must agree. */
const char *lw_difference_words(lw_difference difference);
/* Where the formula of the thrust is from. */
const char *lw_thrust_source(const lw_result *result);

#endif
