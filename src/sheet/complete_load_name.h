/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SHEET_COMPLETE_LOAD_NAME_H
#define LOWWALL_SHEET_COMPLETE_LOAD_NAME_H

#include "complete_note.h"

/* Kind and size of a load by its name; false after a fault. */
bool lw_complete_load_name(lw_completing *s, lw_case_load *load);
/* Named, and its row gives a pressure a metre. */
bool lw_load_by_the_metre(const lw_completing *s, const lw_case_load *load);

#endif
