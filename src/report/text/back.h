/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_TEXT_BACK_H
#define LOWWALL_REPORT_TEXT_BACK_H

#include "report/page.h"

/* Why the back has the friction that it has, and what hangs on the wall by it. */
void lw_text_back(const lw_page *page, const lw_result *result);

#endif
