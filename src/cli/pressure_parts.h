/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_PRESSURE_PARTS_H
#define LOWWALL_CLI_PRESSURE_PARTS_H

#include <jansson.h>

#include <lowwall/lateral.h>
#include <lowwall/studies.h>
#include <lowwall/pressure.h>

/* What `lowwall pressure` says of an earthquake and of passive resistance along a curve; nothing where
 * neither is in play. */

void lw_pressure_seismic_json(const lw_plane *plane, const lw_thrust *thrust, json_t *out);
void lw_pressure_seismic_text(const lw_plane *plane, const lw_thrust *thrust, lw_units units, lw_text *text);

/* Beside a plane's passive value that is flagged as unsafe: the value along a logarithmic spiral. */
void lw_pressure_spiral_json(const lw_plane *plane, const lw_thrust *thrust, json_t *out);
void lw_pressure_spiral_text(const lw_plane *plane, const lw_thrust *thrust, lw_units units, lw_text *text);

/* What may stand beside the thrust: what compaction plant presses, and the published values for a narrow bed.
 * Neither is added to it. */
typedef struct lw_pressure_beside {
  bool plant_given;
  double plant_kn_per_m, bed_width_m, wall_friction_rad; /* bed width 0: none is given */
  double height_m, earth_kn_per_m;
  lw_status plant_status;
  lw_compaction_diagram diagram;
  lw_lateral push;
  lw_narrow narrow;
} lw_pressure_beside;

void lw_pressure_beside_find(lw_earth_state state, const lw_plane *plane, lw_pressure_beside *beside,
                             const lw_working *working);
void lw_pressure_beside_json(const lw_pressure_beside *beside, json_t *out);
void lw_pressure_beside_text(const lw_pressure_beside *beside, lw_units units, lw_text *text);

#endif
