/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_TEXT_ROWS_H
#define LOWWALL_REPORT_TEXT_ROWS_H

#include "report/page.h"

/* The checks table: each check at its worst over the situations that decide, of all joints the worst one. */

typedef struct lw_row {
  lw_check check;
  const lw_situation *situation;
} lw_row;

enum { LW_ROWS_MAX = LW_CHECK_OF_OTHERS_MAX + LW_CHECK_OF_JOINT_MAX };

typedef struct lw_rows {
  int count;
  lw_row row[LW_ROWS_MAX];
} lw_rows;

/* What falling short means: it would move, it does not stand by design values, or it has less margin. */
typedef enum lw_shortfall { LW_FALLS_MOVES, LW_FALLS_BY_DESIGN, LW_FALLS_MARGIN } lw_shortfall;
lw_shortfall lw_shortfall_of(const lw_check *check);

void lw_rows_collect(const lw_result *result, lw_rows *rows);
/* What it has, to two decimals, or to as many as it takes not to read like what it fell short of. */
void lw_row_print_has(const lw_check *check, char *out, size_t size);

void lw_rows_put_head(const lw_page *page, const char *title);
void lw_row_put(const lw_page *page, const lw_row *row);
/* What the marks mean and how many figures have one; nothing where none has. */
void lw_rows_put_legend(const lw_page *page, const lw_rows *rows);

#endif
