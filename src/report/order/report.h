/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_ORDER_REPORT_H
#define LOWWALL_REPORT_ORDER_REPORT_H

#include <lowwall/order.h>

#include "words.h"
#include "report/json/set.h"
#include "report/page.h"
#include "report/text/echo.h"

/* Pieces of the two pages made from an order. */
void lw_order_notes_text(const lw_page *page, const lw_order *order);
void lw_order_setting_out_text(const lw_page *page, const lw_result *result, const lw_order *order);
void lw_order_setting_out_json(json_t *root, const lw_result *result, const lw_order *order);

/* A level for print: what rounds to nought has no sign. */
double lw_order_level(double level_m);

/* Was this item assumed, and does an order or its plan ask for it? */
bool lw_order_assumes(const lw_echo *echo);
/* Where an assumed item of the plan or the order comes from; "" when from no table. */
const char *lw_order_assumed_source(const lw_result *result, const lw_echo *echo);

#endif
