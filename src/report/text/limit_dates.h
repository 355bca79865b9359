/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_TEXT_LIMIT_DATES_H
#define LOWWALL_REPORT_TEXT_LIMIT_DATES_H

#include <lowwall/report.h>

/* The month after which a limit is asked about again; "" where none says when it was read. */
enum { LW_MONTH_BYTES = 16 };
void lw_limit_ask_again(const lw_tables *tables, const lw_limit_row *row, char month[LW_MONTH_BYTES]);
/* What its text asks besides: what an exemption hangs on, what narrows a row that the wall is past; or "". */
enum { LW_LIMIT_WORDS = 660 };
const char *lw_limit_print_words(const lw_limit_hit *hit, lw_units units, char *out, size_t size);
/* The date of its text, where that was seen, and when. */
void lw_limit_print_dates(const lw_tables *tables, const lw_limit_row *row, char *out, size_t size);

#endif
