/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_TEXT_ROWS_H
#define LOWWALL_REPORT_TEXT_ROWS_H

#include "report/page.h"

/* The checks table: each check at its worst over the situations that decide, as the
 * headline tells it, of all joints the worst one. */

typedef struct lw_row {
  lw_check check;
  const lw_situation *situation;
  lw_number likely; /* what it has by likely values */
  lw_grade grade;   /* LW_GRADE_COUNT: it does not count */
} lw_row;

enum { LW_ROWS_MAX = LW_CHECK_OF_OTHERS_MAX + LW_CHECK_OF_JOINT_MAX };

typedef struct lw_rows {
  int count;
  bool likely; /* some row has a likely value */
  lw_row row[LW_ROWS_MAX];
} lw_rows;

/* What a row comes to. */
typedef enum lw_row_says {
  LW_ROW_HOLDS,
  LW_ROW_LESS_MARGIN,
  LW_ROW_MAY_MOVE,
  LW_ROW_WOULD_MOVE,
  LW_ROW_BY_DESIGN, /* it does not stand by design values, which hold the margin */
  LW_ROW_NOT_SHOWN,
  LW_ROW_NOT_ASKED,
  LW_ROW_NOT_CHECKED
} lw_row_says;
lw_row_says lw_row_says_of(const lw_row *row);
/* The same in a word or two. */
const char *lw_row_outcome(const lw_row *row);

void lw_rows_collect(const lw_result *result, lw_rows *rows);
/* What it has, to two decimals, or to as many as it takes not to read like what it fell short of. */
void lw_row_print_has(const lw_check *check, char *out, size_t size);
/* What it needs, with the mark that the legend explains. */
void lw_row_print_needs(const lw_row *row, char *out, size_t size);

void lw_rows_put_head(const lw_page *page, const char *title, const lw_rows *rows);
void lw_row_put(const lw_page *page, const lw_rows *rows, int index);
/* Why a wall would move of which each row only may: what cannot be shown, by likely values either. */
void lw_rows_put_unshown(const lw_page *page, const lw_result *result, const lw_rows *rows);
/* What the columns and the marks mean, and how many figures have one. */
void lw_rows_put_legend(const lw_page *page, const lw_rows *rows);

#endif
