/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_AT_REST_H
#define LOWWALL_PRESSURE_AT_REST_H

#define LW_AT_REST_SOURCE "[JAKY1944 1 - sin phi]"
/* Where the coefficient of ground of that slope is from. */
const char *lw_at_rest_source(double slope_rad);

#endif
