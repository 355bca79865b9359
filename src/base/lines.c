/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "lines.h"

#include <math.h>

/* Where a straight line comes out of the ground. */

double lw_line_out(double depth_m, double run, double rise) {
  return run * rise < 1.0 ? run * depth_m / (1.0 - run * rise) : INFINITY;
}

double lw_line_out_bent(double depth_m, double run, double rise, double bend_m) {
  double back = lw_line_out(depth_m, run, rise);
  return back <= bend_m ? back : run * (depth_m + bend_m * rise);
}
