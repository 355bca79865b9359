/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TESTS_PRESSURE_SUPPORT_H
#define LOWWALL_TESTS_PRESSURE_SUPPORT_H

#include <lowwall/pressure.h>

#define RAD(degrees) ((degrees)*3.14159265358979323846 / 180.0)

/* A plane of 2.385 m with one cohesionless soil, dry, level, smooth, upright, with no load. */
lw_plane pressure_plane(double friction_deg);

/* What a recorder heard. */
typedef struct heard {
  int headings, steps, incomplete;
} heard;
lw_working pressure_listener(heard *h);

#endif
