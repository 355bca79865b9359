/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_PRECHECK_PDF_H
#define LOWWALL_REPORT_PRECHECK_PDF_H

#include <lowwall/report.h>

/** The pages as one PDF, with the sheet attached where the build found libqpdf.
 *  gives as lw_precheck_pages and lw_drawing_pdf */
lw_status lw_precheck_pdf(const lw_result *result, const char *hash, lw_paper paper, lw_text *out,
                          lw_error *error);

/** The sheet that is attached to such a PDF, and the hash that stands with it.
 *  out   hash, sheet   empty before; to be freed by the caller
 *  gives LW_OK · LW_NOT_READ · LW_NO_MEMORY · LW_NO_SOLUTION when built without libqpdf */
lw_status lw_precheck_sheet(const lw_text *pdf, lw_text *hash, lw_text *sheet, lw_error *error);

#endif
