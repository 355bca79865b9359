/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_REPORT_SLUGS_H
#define TESTS_REPORT_SLUGS_H

/* The first word for programs that stands in a text for people, "outlet-blocked", "joint-2"; NULL: none. */
const char *slug_in(const char *text);

#endif
