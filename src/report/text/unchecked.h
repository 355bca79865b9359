/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_TEXT_UNCHECKED_H
#define LOWWALL_REPORT_TEXT_UNCHECKED_H

#include <lowwall/report.h>

/* What is not checked, and said so. */
typedef struct lw_unchecked {
  const char *slug, *text, *brief; /* brief: one of a row of such, without its full stop */
} lw_unchecked;
typedef void (*lw_unchecked_taker)(void *context, const lw_unchecked *unchecked);
void lw_unchecked_each(const lw_result *result, lw_unchecked_taker taker, void *context);

#endif
