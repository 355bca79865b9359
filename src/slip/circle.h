/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SLIP_CIRCLE_H
#define LOWWALL_SLIP_CIRCLE_H

#include <lowwall/ground.h>

/** The factor of a slip by the method asked for.
 *  in    slip   status LW_OK
 *  gives ordinary by LW_SLIP_ORDINARY, else bishop   1 */
double lw_slip_factor(const lw_slip *slip, lw_slip_method method);

#endif
