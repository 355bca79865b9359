/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SHEET_ITEMS_DOCUMENT_H
#define LOWWALL_SHEET_ITEMS_DOCUMENT_H

#include <lowwall/sheet.h>

/** The items as the tables of docs/sheet.md, in Markdown, a table a part. */
void lw_items_document(lw_text *out);

#endif
