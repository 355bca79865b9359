/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_FORMS_H
#define LOWWALL_REPORT_FORMS_H

#include "page.h"

/* What was kept of a page, in its form. */

/** The same calls again, onto a page of plain text. */
void lw_kept_text(lw_span entries, const lw_page *page);
/** As CommonMark: what carries meaning in columns, and steps, stand in fenced blocks. */
void lw_kept_markdown(lw_span entries, lw_text *out);
/** As the inside of an HTML body. */
void lw_kept_html(lw_span entries, lw_text *out);

#endif
