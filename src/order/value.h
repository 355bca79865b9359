/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_VALUE_H
#define LOWWALL_ORDER_VALUE_H

#include <lowwall/tables.h>

/* The value of a row of tables/ordering.csv; otherwise when it is gone. */
double lw_ordering_value(const lw_tables *tables, const char *slug, double otherwise);

#endif
