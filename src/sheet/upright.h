/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SHEET_UPRIGHT_H
#define LOWWALL_SHEET_UPRIGHT_H

#include "entry.h"

/* A row of an upright sheet as it was typed; of a remark named is NULL. */
typedef struct lw_upright_row {
  const lw_named *named;
  const char *value, *unit, *note;
  bool comma_is_decimal;
} lw_upright_row;

typedef void (*lw_upright_taker)(void *context, const lw_upright_row *row);

/* As lw_sheet_read, and each row is handed on as it stands; one with a fault may be too. */
lw_status lw_upright_read(const char *bytes, size_t length, lw_case *c, lw_upright_taker taker, void *context,
                          lw_faults *faults);

#endif
