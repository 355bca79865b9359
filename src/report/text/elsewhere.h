/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_TEXT_ELSEWHERE_H
#define LOWWALL_REPORT_TEXT_ELSEWHERE_H

#include <lowwall/report.h>

/* What of this report fails beside the checks that decide, as the end of a sentence; false: nothing does. */
bool lw_result_fails_elsewhere(const lw_result *result, char *out, size_t size);

#endif
