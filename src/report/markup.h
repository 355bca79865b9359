/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_MARKUP_H
#define LOWWALL_REPORT_MARKUP_H

#include <lowwall/base.h>

/* Words for SVG and HTML: what would be taken for a tag or an entity is escaped. */
void lw_markup_add(lw_text *out, const char *words);
void lw_markup_add_bytes(lw_text *out, const char *words, size_t length);

#endif
