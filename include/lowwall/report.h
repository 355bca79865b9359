/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_H
#define LOWWALL_REPORT_H

#include <lowwall/order.h>

LW_PUBLIC_BEGIN

/* The result flattened once: every number a report may print. */
typedef struct lw_figure {
  char key[80];            /* "drained.base.thrust_kn_per_m" */
  const char *label;       /* "thrust of the soil" */
  lw_number value;
  const char *unit;
  const char *source;      /* "[KEY locator]" or "" */
  lw_reason reason;        /* why the value is not known */
} lw_figure;

typedef void (*lw_figure_taker)(void *context, const lw_figure *figure);
/** Hand every figure of a result to taker, in a fixed order. */
void lw_figures_each(const lw_result *result, lw_figure_taker taker, void *context);

typedef struct lw_text_style {
  bool colour;
  int columns;
  bool every_joint;   /* the working has each joint in full; else the one that is nearest to its limit */
} lw_text_style;

/** One page for a terminal: verdict, reasons, governing situation, checks, assumptions, cautions, sources. */
lw_status lw_report_text(const lw_result *result, const lw_text_style *style, lw_text *out);

/** Every step with symbol, formula, numbers, unit and source; the moment table with its check sums.
 *  Runs the wall again with a recorder. */
lw_status lw_report_working(const lw_result *result, const lw_text_style *style, lw_text *out);

/** Everything, with the keys of docs/results.md. indent 0: one line. */
lw_status lw_report_json(const lw_result *result, int indent, lw_text *out);
/** Faults as JSON. */
lw_status lw_report_faults_json(const lw_faults *faults, int indent, lw_text *out);

/** A result row of a schedule, and its header row: mark, headline, what, stands, who, governing situation,
 *  check, at, has, needs, ratio, exit. */
void lw_report_row_header(lw_text *out);
void lw_report_row(const lw_result *result, int row, lw_text *out);
void lw_report_row_faults(const lw_case *c, const lw_faults *faults, int row, lw_text *out);
/** The faults of a schedule's row as one line of JSON, with the mark of its wall. */
lw_status lw_report_row_faults_json(const lw_case *c, const lw_faults *faults, lw_text *out);

/* The two pages made from an order: what to buy, and the pegs with the order of work. */
typedef enum lw_order_page { LW_PAGE_ORDER, LW_PAGE_PEGS } lw_order_page;

/** What would be right where there is no order, as a fault of the cell that has it.
 *  in    items    of the case that the order was asked for
 *        fault    of lw_order_make
 *  out   faults   one more */
void lw_report_plan_fault(const lw_case_order *items, const lw_plan_fault *fault, lw_faults *faults);

/** An order as a page, as JSON with the keys of docs/order.md, as CSV. Each begins with the verdict's
 *  headline: quantities are for the wall as given, and no leave to build it.
 *  in    result   the one that the order was made from
 *  gives LW_OK · LW_NO_MEMORY */
lw_status lw_report_order_text(const lw_result *result, const lw_order *order, lw_order_page page,
                               const lw_text_style *style, lw_text *out);
lw_status lw_report_order_json(const lw_result *result, const lw_order *order, lw_order_page page, int indent,
                               lw_text *out);
/** The header that stands once above the rows of one wall or many. */
void lw_report_order_csv_header(lw_order_page page, lw_text *out);
lw_status lw_report_order_csv(const lw_result *result, const lw_order *order, lw_order_page page,
                              lw_text *out);

LW_PUBLIC_END

#endif
