/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "strength.h"

bool lw_soil_is_frictionless(double friction_rad) {
  static const double FRICTIONLESS_RAD = 1e-6;
  return friction_rad < FRICTIONLESS_RAD;
}
