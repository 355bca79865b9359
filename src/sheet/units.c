/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "complete.h"

bool lw_is_measured(const lw_quantity *q) {
  bool measured = q->kind == LW_KIND_LENGTH || q->kind >= LW_KIND_PRESSURE;
  return q->origin == LW_GIVEN && q->row != LW_WORKED_OUT_ROW && measured && fabs(q->si) > 0.0;
}

lw_units lw_case_units(const lw_case *c) {
  int written[2] = {0};
  lw_item_walk walk = {0};
  if (c->about.units.origin == LW_GIVEN) return (lw_units)c->about.units.value;
  if (c->counted) return c->most;
  for (const lw_item *item = lw_item_next(&walk); item != NULL; item = lw_item_next(&walk)) {
    for (int i = 0; item->type == LW_ITEM_QUANTITY && i < (item->repeats > 0 ? item->repeats : 1); i++) {
      const lw_quantity *q = (const void *)((const char *)c + item->offset + (size_t)i * item->stride);
      if (lw_is_measured(q)) written[q->in]++;
    }
  }
  return written[LW_UNITS_US] > written[LW_UNITS_METRIC] ? LW_UNITS_US : LW_UNITS_METRIC;
}
