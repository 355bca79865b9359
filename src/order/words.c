/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/order.h>

const char *lw_cut_slug(lw_cut_kind kind) {
  static const char *const slugs[] = {"closer", "mitred-unit", "cap", "mitred-cap", "wedge-cap", "half"};
  return slugs[kind];
}

const char *lw_stock_slug(lw_stock stock) {
  static const char *const slugs[] = {"block", "base-block", "cap"};
  return slugs[stock];
}

const char *lw_corner_slug(lw_corner_made made) {
  static const char *const slugs[] = {"turned", "cut", "handed"};
  return slugs[made];
}

const char *lw_row_end_slug(lw_row_end end) {
  static const char *const slugs[] = {"free", "step", "through", "stopped", "mitred", "ring"};
  return slugs[end];
}
