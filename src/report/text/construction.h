/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_TEXT_CONSTRUCTION_H
#define LOWWALL_REPORT_TEXT_CONSTRUCTION_H

#include <lowwall/report.h>

/* What to do while it is built, one or two sentences, without the last full stop. */
enum { LW_INSTRUCTION_MAX = 400 };
void lw_construction_instruction(const lw_result *result, char *out, size_t size);

#endif
