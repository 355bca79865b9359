/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SHEET_FAULTS_H
#define LOWWALL_SHEET_FAULTS_H

#include <lowwall/sheet.h>

/* Where a fault stands: row and column from 1, 0 when there is none; row 0 and a column: the command line. */
typedef struct lw_cell_place {
  int row, column;
} lw_cell_place;

/** Note a fault; past LW_FAULT_MAX the last one becomes no-room.
 *  in    item           the item in hand, "" if none
 *        stood          what stood there; it is cut and cleaned
 *        wanted_format  what would be right, printf-like */
void lw_faults_add(lw_faults *faults, lw_fault_slug slug, lw_cell_place place, const char *item,
                   const char *stood, const char *wanted_format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 6, 7)))
#endif
    ;

/** Whether any fault has come since there were `before`. A full list takes no more: of what is read after it
 *  nothing is told to be well. */
bool lw_faults_more(const lw_faults *faults, int before);

#endif
