/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_PRESSURE_GROUND_H
#define LOWWALL_CLI_PRESSURE_GROUND_H

#include <lowwall/pressure.h>
#include <lowwall/sheet.h>

/* Soils and loads of `lowwall pressure` beyond the first soil, by the items that a sheet has for them. */

/* Whether an item's folded name is one of them. */
bool lw_pressure_ground_has(const char *folded);

/* Soils in order and complete, loads with what their kind needs; every fault is noted. The first soil is that
 * of the command's own items. */
void lw_pressure_ground_hold(lw_case *c, lw_faults *faults);

/* The layers below the first, the bottom of that, and the loads. */
void lw_pressure_ground_put(const lw_case *c, lw_plane *plane);
/* The number of each load of the plane. */
void lw_pressure_ground_numbers(const lw_case *c, int *number);

#endif
