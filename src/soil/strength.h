/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SOIL_STRENGTH_H
#define LOWWALL_SOIL_STRENGTH_H

#include <stdbool.h>

/* Below this angle a soil counts as frictionless, and formulas take their limits there. */
bool lw_soil_is_frictionless(double friction_rad);

#endif
