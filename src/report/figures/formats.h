/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_FIGURES_FORMATS_H
#define LOWWALL_REPORT_FIGURES_FORMATS_H

#include <lowwall/report.h>

/* Why something is missing in the answer of a set of factors. */
lw_reason lw_format_answer_reason(const lw_format_answer *answer);

#endif
