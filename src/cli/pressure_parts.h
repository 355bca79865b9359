/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_PRESSURE_PARTS_H
#define LOWWALL_CLI_PRESSURE_PARTS_H

#include <jansson.h>

#include <lowwall/pressure.h>

/* What `lowwall pressure` says of an earthquake and of passive resistance along a curve; nothing where
 * neither is in play. */

void lw_pressure_seismic_json(const lw_plane *plane, const lw_thrust *thrust, json_t *out);
void lw_pressure_seismic_text(const lw_plane *plane, const lw_thrust *thrust, lw_text *text);

/* Beside a plane's passive value that is flagged as unsafe: the value along a logarithmic spiral. */
void lw_pressure_spiral_json(const lw_plane *plane, const lw_thrust *thrust, json_t *out);
void lw_pressure_spiral_text(const lw_plane *plane, const lw_thrust *thrust, lw_text *text);

#endif
