/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_DRAW_PDF_LANGUAGE_H
#define LOWWALL_REPORT_DRAW_PDF_LANGUAGE_H

#include <lowwall/base.h>

/* Say in a PDF that its tags are tags and its words English. */
void lw_pdf_add_language(lw_text *pdf);

#endif
