/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "taper.h"

#include <lowwall/sheet.h>

/* Blocks that taper: a trapezium in plan, as long as the face in front and as the tail at the rear. */

double lw_case_tail_share(const lw_case *c) {
  bool known = c->order.tail_length.origin != LW_ABSENT && c->courses.block_length.origin != LW_ABSENT;
  return known ? c->order.tail_length.si / c->courses.block_length.si : 1.0;
}

double lw_case_mean_share(const lw_case *c) {
  return 0.5 * (1.0 + lw_case_tail_share(c));
}

double lw_case_block_m3(const lw_case *c, double depth_m) {
  return c->courses.block_length.si * lw_case_mean_share(c) * depth_m * c->courses.block_height.si;
}
