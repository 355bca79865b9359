/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "pens.h"

const lw_pen_style *lw_pen_style_of(lw_pen pen) {
  static const lw_pen_style styles[LW_PEN_COUNT] = {
      [LW_PEN_CUT] = {.width_mm = 0.50},
      [LW_PEN_SEEN] = {.width_mm = 0.30},
      [LW_PEN_FINE] = {.width_mm = 0.15},
      [LW_PEN_DASHED] = {0.30, 2, {2.4, 1.2}},
      [LW_PEN_CHAIN] = {0.22, 4, {5.0, 1.0, 0.8, 1.0}},
      [LW_PEN_DOTTED] = {0.40, 2, {0.5, 1.1}},
      [LW_PEN_FORCE] = {.width_mm = 0.60},
      [LW_PEN_NONE] = {.width_mm = 0.0},
  };
  return &styles[pen];
}

double lw_fill_grey(lw_fill fill) {
  static const double greys[] = {
      [LW_FILL_NONE] = 1.0, [LW_FILL_PAPER] = 1.0, [LW_FILL_TINT] = 0.894, [LW_FILL_INK] = 0.0};
  return greys[fill];
}
