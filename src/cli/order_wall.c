/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "order_wall.h"

/* One wall of an order: its case, its order, its page. */

lw_status lw_order_report(const lw_order_asked *asked, const lw_result *result, const lw_order *order,
                          int indent, lw_text *text) {
  if (asked->json) return lw_report_order_json(result, order, asked->page, indent, text);
  if (asked->csv) return lw_report_order_csv(result, order, asked->page, text);
  const lw_text_style style = {.columns = 80, .as = asked->as.as};
  char title[2 * LW_WORDS_MAX + 8];
  lw_cli_title(result, asked->page == LW_PAGE_ORDER ? "Order of a wall" : "Pegs of a wall", title,
               sizeof title);
  lw_report_begin(&style, title, text);
  lw_status status = lw_report_order_text(result, order, asked->page, &style, text);
  lw_report_end(&style, text);
  return text->failed ? LW_NO_MEMORY : status;
}

lw_status lw_order_complete(const lw_tables *tables, lw_case *c, lw_faults *faults) {
  lw_status status = lw_case_complete(tables, c, faults);
  return status == LW_OK ? lw_case_complete_order(tables, c, faults) : status;
}

lw_status lw_order_fill(const lw_result *result, lw_order *order, lw_faults *faults) {
  lw_plan_fault fault;
  lw_status status = lw_order_make(result, order, &fault);
  if (status != LW_OK) lw_report_plan_fault(&result->given.order, &fault, faults);
  return status;
}
