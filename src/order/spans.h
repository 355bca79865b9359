/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_SPANS_H
#define LOWWALL_ORDER_SPANS_H

#include <lowwall/order.h>

/* The run at a place of a stretch, and where it lies in a course: on its own face from u_from to u_to in
 * units of laying, on the lowest face from base_from to base_to from the beginning of the stretch. */
typedef struct lw_span {
  int run;
  double u_from, u_to, base_from, base_to;
} lw_span;

/* gives how many */
int lw_spans_of(const lw_order *order, const lw_stretch *stretch, int course, lw_span span[LW_RUN_MAX]);
/* From laying to the lowest face, and back. */
double lw_spans_base(const lw_span *span, int count, double u_m);
double lw_spans_lay(const lw_span *span, int count, double base_m);

#endif
