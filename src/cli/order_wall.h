/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_ORDER_WALL_H
#define LOWWALL_CLI_ORDER_WALL_H

#include <lowwall/report.h>

#include "as.h"
#include "one_wall.h"

/* What `lowwall order` or `lowwall pegs` was asked. */
typedef struct lw_order_asked {
  lw_wall_asked wall;
  lw_order_page page;
  bool csv, json;
  lw_cli_as as;
} lw_order_asked;

/* The wall, then what only an order asks about. */
lw_status lw_order_complete(const lw_tables *tables, lw_case *c, lw_faults *faults);

/* The order of a wall that was run; a plan that cannot be is one more fault. */
lw_status lw_order_fill(const lw_result *result, lw_order *order, lw_faults *faults);

/* Append one wall; indent as lw_report_json's. */
lw_status lw_order_report(const lw_order_asked *asked, const lw_result *result, const lw_order *order,
                          int indent, lw_text *text);

#endif
