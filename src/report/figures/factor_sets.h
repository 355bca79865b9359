/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_FIGURES_FACTOR_SETS_H
#define LOWWALL_REPORT_FIGURES_FACTOR_SETS_H

#include <lowwall/report.h>

/* Why something is missing in the answer of a set of factors. */
lw_reason lw_factor_set_answer_reason(const lw_factor_set_answer *answer);

#endif
