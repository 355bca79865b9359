/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_REPORT_ADVISED_H
#define TESTS_REPORT_ADVISED_H

#include <lowwall/report.h>

/* What stands above the remedies, and in their place, is true of what was found: in the page in full, on the
 * first screen and on the page for a phone. gives whether there was anything to hold */
int advised_hold(const lw_result *result, const char *name);

#endif
