/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_PRESSURE_SIDE_H
#define LOWWALL_CLI_PRESSURE_SIDE_H

#include <jansson.h>

#include <lowwall/diagram.h>

/* What `lowwall pressure` says of all methods side by side and of the pressure against depth. */

/* The ground: layers, water, loads. */
void lw_pressure_ground_text(const lw_diagram *diagram, lw_units units, lw_text *text);
void lw_pressure_side_text(const lw_diagram *diagram, lw_units units, lw_text *text);
void lw_pressure_depths_text(const lw_diagram *diagram, lw_units units, lw_text *text);

/* Lists `layers`, `loads`, `methods` and `depths`. */
void lw_pressure_side_json(const lw_diagram *diagram, json_t *out);

/* A row a depth, every method and every load. */
void lw_pressure_depths_csv(const lw_diagram *diagram, lw_text *text);

/* What a way has more than Coulomb in its state, as a share; not known where either has no answer. */
lw_number lw_way_against_coulomb(const lw_diagram *diagram, lw_way way);

#endif
