/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BASE_TEXT_H
#define LOWWALL_BASE_TEXT_H

#include <lowwall/base.h>

/** Whether a spreadsheet would run a cell: text that begins with = + - or @ and is no number. Written with an
 *  apostrophe before it, it is text. */
bool lw_cell_runs(const char *cell);

#endif
