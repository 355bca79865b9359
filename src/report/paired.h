/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_PAIRED_H
#define LOWWALL_REPORT_PAIRED_H

#include <lowwall/report.h>

/** The row whose cohesion counts beside its low angle; NULL: none does. */
const lw_soil_row *lw_paired_row(const lw_result *result);
/** How much of it counts, where and why, and what a slip has with none of it, as sentences. Appended. */
void lw_paired_say(const lw_result *result, lw_text *out);

#endif
