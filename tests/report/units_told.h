/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_REPORT_UNITS_TOLD_H
#define TESTS_REPORT_UNITS_TOLD_H

#include <lowwall/base.h>

/** Whether a page speaks its reader's units alone: with US no metre and no kilonewton, in metric no foot and
 *  no pound. Sources in square brackets and what stands in quotation marks, a person's own words and the
 *  law's, are passed over. length bytes of text are read. A few failures are told in full. */
void units_told_hold(const char *name, const char *text, size_t length, lw_units units);

#endif
