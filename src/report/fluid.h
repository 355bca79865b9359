/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_FLUID_H
#define LOWWALL_REPORT_FLUID_H

#include <lowwall/result.h>

/* The soil's push on the base as built, as that of a fluid, beside the fluid that a code has for the soil. */
typedef struct lw_fluid {
  bool known;              /* one soil, and a coefficient of its thrust */
  double weight_kn_per_m3; /* its level part: K γ cos(δ + θ), or along the ground */
  double coefficient, unit_weight_kn_per_m3, angle_rad;
  const lw_soil_row *row; /* NULL: no code has one for this soil, or nobody has named it */
  double share;           /* of the code's; 0 without */
} lw_fluid;

/** Decides nothing: the 1.5 that codes ask for goes with their own pressures. */
lw_fluid lw_fluid_of(const lw_result *result);

#endif
