/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_REPORT_MARKUP_H
#define TESTS_REPORT_MARKUP_H

#include <stdbool.h>

/* Whether every tag that opens is closed in its turn, no `&` or `<` stands bare and no attribute is left
 * open. What never closes in HTML (meta) and the document type are passed over. */
bool markup_is_closed(const char *text);

#endif
