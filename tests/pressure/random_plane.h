/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TESTS_PRESSURE_RANDOM_PLANE_H
#define LOWWALL_TESTS_PRESSURE_RANDOM_PLANE_H

#include <lowwall/pressure.h>

#include "../checks/random_wall.h"

/* A layer as moist as it is wet. */
lw_layer pressure_soil(double bottom_m, double weight, double friction_deg, double cohesion_kpa);

/* Up to four layers, and by chance a slope that they all stand at, water, loads, a back that leans. */
lw_plane pressure_random_plane(dice *d);

#endif
