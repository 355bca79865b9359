/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_TEXT_HAZARD_H
#define LOWWALL_REPORT_TEXT_HAZARD_H

#include <lowwall/tables.h>

/* "What happens: what to do about it." */
enum { LW_HAZARD_WORDS_MAX = LW_SOURCE_MAX + LW_NOTE_MAX };
void lw_hazard_words(const lw_hazard_row *row, lw_units units, char *out, size_t size);

#endif
