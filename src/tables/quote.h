/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TABLES_QUOTE_H
#define LOWWALL_TABLES_QUOTE_H

#include <lowwall/tables.h>

enum { LW_QUOTE_MAX = 96 };

/* What stands between braces, "table/slug" or "table/slug as form", as that row's figure: "twice", and a
 * measure in both units, "{3 m = 9 ft 10 in}", as base/canned.h has it.
 * gives false, out unchanged: no such row, or no such form */
bool lw_quote(const lw_tables *tables, const char *quote, size_t length, char *out, size_t size);

/* A text with every quote in it said, appended. What is a pair already stays.
 * gives LW_OK · LW_NO_MEMORY · LW_FAULTS, the quote that says nothing in wrong */
lw_status lw_quote_all(const lw_tables *tables, const char *text, lw_text *out, char wrong[LW_QUOTE_MAX]);

#endif
