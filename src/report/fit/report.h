/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_FIT_REPORT_H
#define LOWWALL_REPORT_FIT_REPORT_H

#include <lowwall/report.h>

#include "fit/fit.h"

/* The blocks of a yard in one wall, in the order of lw_fit_find. */
typedef struct lw_fit_list {
  const lw_yard *yard;
  const lw_fit *fit;          /* yard->count of them */
  const lw_case_order *items; /* of the sheet: where a plan that cannot be has its cell */
  const char *replaced;       /* tables, "" if none */
  lw_units units;             /* that the reader measures in */
} lw_fit_list;

/* gives LW_OK · LW_NO_MEMORY */
lw_status lw_report_fit_text(const lw_fit_list *list, const lw_text_style *style, lw_text *out);
lw_status lw_report_fit_csv(const lw_fit_list *list, lw_text *out);
lw_status lw_report_fit_json(const lw_fit_list *list, lw_text *out);

enum { LW_FIT_WHY = 400 };
/* holds · falls short, by its grade · does-not-fit · no-plan · fault */
const char *lw_fit_slug(const lw_fit *fit);
/* Why it cannot be laid; "" when it can. */
const char *lw_fit_why(const lw_fit_list *list, const lw_fit *fit, char out[LW_FIT_WHY]);
/* The items to type, each in quotation marks, parted by blanks. */
void lw_fit_typed(const lw_fit *fit, lw_text *out);

#endif
