/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "tape.h"

#include <math.h>

#include "amount.h"

lw_tape lw_tape_read(double length_m, int eighths) {
  static const char *const PARTS[LW_TAPE_INCH] = {"", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"};
  double step_m = LW_INCH_M / LW_TAPE_INCH * eighths;
  long all = lround(fabs(length_m) / step_m) * eighths;
  return (lw_tape){.minus = length_m < 0.0 && all > 0,
                   .feet = all / LW_TAPE_FOOT,
                   .inches = (int)(all % LW_TAPE_FOOT / LW_TAPE_INCH),
                   .part = PARTS[all % LW_TAPE_INCH]};
}
