/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_METHODS_H
#define LOWWALL_PRESSURE_METHODS_H

#include <lowwall/pressure.h>

/** Why formula and wedge may differ on this plane: the first reason that holds. Never the curve, which only a
 *  formula knows. */
lw_difference lw_plane_difference(const lw_plane *plane);

/** How far the plane of active failure runs back for each metre up: tan(45° - φ/2).
 *  in    friction_rad   φ   rad   0 to less than π/2
 *  from  [RANKINE1857 level ground] */
double lw_failure_run(double friction_rad);

#endif
