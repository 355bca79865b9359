/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "mitre.h"

#include <math.h>

#include <lowwall/order.h>

#include "base/angles.h"

/* Plane geometry of caps cut on the mitre and of blocks laid on a curve. */

lw_status lw_order_mitre(double angle_rad, double first_m, double second_m, lw_mitre *mitre) {
  if (!(angle_rad > 0.0 && angle_rad < LW_PI && first_m > 0.0 && second_m > 0.0)) return LW_NO_SOLUTION;
  double a = atan2(first_m * sin(angle_rad), second_m + first_m * cos(angle_rad)), b = angle_rad - a;
  double square = LW_PI / 2.0;
  if (!(a > 0.0 && a < square && b > 0.0 && b < square)) return LW_NO_SOLUTION;
  *mitre = (lw_mitre){
      .angle_rad = {a, b}, .extra_m = {first_m / tan(a), second_m / tan(b)}, .cut_m = first_m / sin(a)};
  return LW_OK;
}

lw_status lw_order_least_radius(double face_m, double tail_m, double depth_m, double gap_m, bool convex,
                                double *radius_m) {
  double spare = convex ? face_m + gap_m - tail_m : tail_m + gap_m - face_m;
  if (!(spare > 1e-9) || !(face_m > 0.0) || !(depth_m > 0.0)) return LW_NO_SOLUTION;
  *radius_m = depth_m * (convex ? face_m + gap_m : face_m) / spare;
  return LW_OK;
}
