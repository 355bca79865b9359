/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_SEISMIC_H
#define LOWWALL_PRESSURE_SEISMIC_H

#include <lowwall/pressure.h>

/* What an earthquake adds to a static thrust on a plane. */
typedef struct lw_seismic_part {
  double increment_kn_per_m;              /* along the thrust; below 0 when passive */
  double coefficient;                     /* of the lowest layer, static part included; 0 at rest */
  double turn_rad;                        /* ψ there */
  double moving_kn_per_m, still_kn_per_m; /* the two whose difference it is; both 0 at rest */
} lw_seismic_part;

/** What an earthquake adds to the thrust of soil and uniform load on a plane.
 *  in    state   active, passive or at rest
 *        plane   with its coefficients; along_ground: δ of the formula is the slope
 *  out   part    unchanged on failure; all 0 without an earthquake
 *  gives LW_OK · LW_NO_SOLUTION with the reason of the coefficient, for any of the layers
 *  note  1 Mononobe-Okabe less Coulomb on the effective stress, both without cohesion: what cohesion takes
 *          off the static thrust is taken off once, and holds nothing against the earthquake.
 *        2 Below water tan ψ is kh γsat/((1 - kv) γ'), or kh γ/((1 - kv) γ') where the soil is pervious; the
 *          water's own part is then lw_westergaard_kn_per_m.
 *        3 At rest, for a wall that cannot move: kh γ H² (and kh q H), water and soil moving as one.
 *  from  [MONONOBE-OKABE formula]; [EN1998-5 annex E]; [WOOD1973 rigid wall] */
lw_status lw_seismic_find(lw_earth_state state, const lw_plane *plane, lw_seismic_part *part,
                          lw_error *error);

/* Add what an earthquake adds to a static thrust, at its own height.
 * Without an earthquake it stays as it is. */
void lw_seismic_add(lw_earth_state state, const lw_plane *plane, const lw_seismic_part *part,
                    lw_thrust *thrust, const lw_working *working);

/* --- its working: seismic_record.c --- */

/* A thrust before the earthquake. */
typedef struct lw_still {
  double thrust_kn_per_m, height_m;
} lw_still;

/* The angle psi and the coefficient of each layer, above water and below it. */
void lw_seismic_tell_layers(lw_earth_state state, const lw_plane *plane, const lw_working *working);
/* The increment, its height, and the thrust with it. */
void lw_seismic_tell(const lw_plane *plane, const lw_seismic_part *part, const lw_still *before,
                     const lw_thrust *thrust, const lw_working *working);

#endif
