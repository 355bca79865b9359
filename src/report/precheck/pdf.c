/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "pdf.h"

#include <string.h>

#include "report/draw/pdf_parts.h"

/* The pre-check as one file that needs nothing else: its pages, and the sheet that they were made of. */

static const char NAME[] = "sheet.csv";

lw_status lw_precheck_pdf(const lw_result *result, const char *hash, lw_paper paper, lw_text *out,
                          lw_error *error) {
  lw_drawing_pages pages = {0};
  lw_text sheet = {0};
  lw_status status = lw_precheck_pages(result, hash, paper, &pages, error);
  if (status == LW_OK) status = lw_drawing_pdf(pages.page, pages.count, out, error);
  lw_sheet_write(&result->given, false, &sheet);
  if (status == LW_OK && sheet.failed)
    status = lw_error_set(error, LW_NO_MEMORY, LW_REASON_NONE, "no memory left");
  if (status == LW_OK && lw_pdf_has_parts()) status = lw_pdf_attach(out, NAME, hash, &sheet, error);
  lw_text_free(&sheet);
  lw_drawing_pages_free(&pages);
  return status;
}

lw_status lw_precheck_sheet(const lw_text *pdf, lw_text *hash, lw_text *sheet, lw_error *error) {
  return lw_pdf_attached(pdf, NAME, hash, sheet, error);
}
