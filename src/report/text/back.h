/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_TEXT_BACK_H
#define LOWWALL_REPORT_TEXT_BACK_H

#include "report/page.h"

/* Why the back has the friction that it has, and what hangs on the wall by it. */
void lw_text_back(const lw_page *page, const lw_result *result);
/* What the other of Coulomb and Rankine says of the same wall. */
void lw_text_beside(const lw_page *page, const lw_result *result);
/* The push as a fluid's beside that of a code, where there is one. */
void lw_text_fluid(const lw_page *page, const lw_result *result);

#endif
