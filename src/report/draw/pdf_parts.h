/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_DRAW_PDF_PARTS_H
#define LOWWALL_REPORT_DRAW_PDF_PARTS_H

#include <lowwall/base.h>

/* What cairo leaves out of a PDF, by libqpdf where the build found it. */

bool lw_pdf_has_parts(void); /* whether it did */

/** Say in which language its words are, what a drawing shows, and what each head cell is the head of.
 *  in    alt   in place of each figure
 *  gives LW_OK · LW_NO_MEMORY; built without libqpdf only the language is said */
lw_status lw_pdf_dress(lw_text *pdf, const char *alt);

/** Attach a file.
 *  in    name, about   of the file; about is a line on it
 *        bytes
 *  gives LW_OK · LW_NO_MEMORY · LW_NO_SOLUTION when built without libqpdf; error says what to install */
lw_status lw_pdf_attach(lw_text *pdf, const char *name, const char *about, const lw_text *bytes,
                        lw_error *error);

/** A file that is attached.
 *  out   about, bytes   empty before; to be freed by the caller
 *  gives LW_OK · LW_NOT_READ when it is no PDF, or none of this name is attached · as above */
lw_status lw_pdf_attached(const lw_text *pdf, const char *name, lw_text *about, lw_text *bytes,
                          lw_error *error);

#endif
