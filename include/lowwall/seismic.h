/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SEISMIC_H
#define LOWWALL_SEISMIC_H

#include <lowwall/pressure.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Earth pressure in an earthquake, as a steady push. Signs: see pressure.h; ψ is the angle by which the
 * earthquake turns the weight of the soil, tan ψ = kh/(1 - kv) for dry soil. */

/** Mononobe and Okabe's coefficient: Coulomb's wedge in a weight turned by ψ; thrust K (1 - kv) γ H²/2.
 *  in    state      active or passive
 *        angles     φ (0 ≤ φ < π/2), δ, θ and β
 *        turn_rad   ψ   rad   0 ≤ ψ < π/2
 *  out   k          of the whole thrust, with the static part in it; unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason no-seismic-wedge (active φ - β < ψ, passive φ + β < ψ) or
 *        those of lw_coulomb_coefficient
 *  note  1 With ψ = 0 it is lw_coulomb_coefficient, to the last bit.
 *        2 Plane wedges: the passive value is unsafe with a rough wall; use δ = 0, as EN 1998-5 does.
 *        3 EN 1998-5 drops the root where β + ψ > φ and goes on; here there is no answer then.
 *  from  [MONONOBE-OKABE formula]; tested by tests/handbook/earth_pressure.csv and the
 *        numerical wedge */
lw_status lw_mononobe_okabe_coefficient(lw_earth_state state, const lw_wall_angles *angles, double turn_rad,
                                        double *k, lw_error *error);

/* What an earthquake adds to a static thrust on a plane. */
typedef struct lw_seismic_part {
  double increment_kn_per_m;   /* along the thrust; below 0 when passive */
  double coefficient;          /* of the lowest layer, static part included; 0 at rest */
  double turn_rad;             /* ψ there */
  double moving_kn_per_m, still_kn_per_m;   /* the two whose difference it is; both 0 at rest */
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

/** Push or suction of open water, level, on an upright face in an earthquake: 7/12 kh γw h², at 0.4 h.
 *  in    horizontal                    kh
 *        water_unit_weight_kn_per_m3   γw
 *        depth_m                       h, of the water
 *  note  On the soil side it adds to the water's push; in front it takes away from what holds.
 *  from  [WESTERGAARD1933 parabola]; [EN1998-5 annex E] */
double lw_westergaard_kn_per_m(double horizontal, double water_unit_weight_kn_per_m3, double depth_m);

/** Seed and Whitman's estimate of what an earthquake adds to the active coefficient: 0.75 kh.
 *  in    horizontal   kh
 *  note  For φ about 35°, δ about φ/2, an upright back, level ground and kh < 0.4: a check of the order.
 *  from  [SEED-WHITMAN1970 estimate]; tested by tests/handbook/earth_pressure.csv */
double lw_seed_whitman_increment(double horizontal);

#ifdef __cplusplus
}
#endif
#endif
