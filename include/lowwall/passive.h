/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PASSIVE_H
#define LOWWALL_PASSIVE_H

#include <lowwall/pressure.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Passive resistance, and active thrust, where soil fails along a curve, as it does on a rough wall. Signs:
 * see pressure.h; δ turns the passive thrust upwards on the wall. Coefficients are of the whole inclined
 * thrust, K γ H²/2. */

/** Coefficient by a logarithmic spiral through the foot: moments about its pole, least (active: greatest)
 *  over its two angles and over plane wedges, with the thrust at a third of the height.
 *  in    state    active or passive
 *        angles   φ (0 ≤ φ < π/2), δ, θ and β
 *  out   k        unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reasons of lw_coulomb_coefficient, or no-wedge
 *  note  1 An upper bound, up to 2 % above better ones for δ ≤ φ/2 and 3 to 10 % at δ = φ: keep a margin.
 *        2 Never above the plane wedge; equal to it with δ = θ = β = 0.
 *  from  [TERZAGHI-1943 spiral]; tested by tests/handbook/earth_pressure.csv */
lw_status lw_log_spiral_coefficient(lw_earth_state state, const lw_wall_angles *angles, double *k,
                                    lw_error *error, const lw_working *working);

/* Closed form of EN 1997-1 annex C.2: coefficients of pressure normal to the back. */
typedef struct lw_annex_c {
  double kg, kq, kc;   /* of weight (γ times the depth along the back), of a vertical load, of cohesion */
  double kn;           /* of a load normal to the ground */
  double k;            /* kg as the whole inclined thrust on vertical height */
  double ground_rad, wall_rad, fan_rad;   /* the annex's mt, mw and ν */
} lw_annex_c;

/** The numerical procedure of EN 1997-1 annex C.2.
 *  in    state    active or passive
 *        angles   φ (0 < φ < π/2), |δ| ≤ φ, |β| ≤ φ, θ
 *  out   annex    unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason angle-out-of-range or steeper-than-friction
 *  note  1 Fields of stress that the soil can bear: passive on the low side, and so the cautious one.
 *        2 For an upright wall and level ground the passive one is lw_lancellotta_coefficient.
 *        3 Active on an upright wall it is never below Coulomb's. On one that soil lies on it may be,
 *          by up to 0.3 %, where the fan's angle is negative: set the plane wedge beside it.
 *  from  [EN1997-1 annex C.2]; tested by tests/handbook/earth_pressure.csv */
lw_status lw_annex_c_coefficients(lw_earth_state state, const lw_wall_angles *angles, lw_annex_c *annex,
                                  lw_error *error, const lw_working *working);

/** Lancellotta's passive coefficient, normal part, upright wall and level ground.
 *  in    friction_rad        φ   rad   0 < φ < π/2
 *        wall_friction_rad   δ   rad   0 ≤ δ ≤ φ
 *  out   k                   of the part normal to the wall; unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason angle-out-of-range
 *  from  [LANCELLOTTA2002 closed form]; tested by tests/handbook/earth_pressure.csv */
lw_status lw_lancellotta_coefficient(double friction_rad, double wall_friction_rad, double *k,
                                     lw_error *error);

/** The fit of UFC 3-220-20 to log-spiral values, upright wall and level ground.
 *  in    as lw_lancellotta_coefficient
 *  out   k   of the whole inclined thrust; unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason angle-out-of-range
 *  from  [UFC-3-220-20 eq.4-12]; tested by tests/handbook/earth_pressure.csv */
lw_status lw_ufc_passive_coefficient(double friction_rad, double wall_friction_rad, double *k,
                                     lw_error *error);

/** Thrust on a plane by one of these, as lw_coulomb_thrust; cohesion adds 2c√K (annex C: its own Kc).
 *  in    state    active or passive
 *        plane    without an earthquake: curved surfaces in one are not computed here
 *  out   thrust   unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason of the coefficient, for any of the layers; no-wedge in an
 *        earthquake
 *  from  [TERZAGHI-1943 spiral]; [EN1997-1 annex C.2] */
lw_status lw_log_spiral_thrust(lw_earth_state state, const lw_plane *plane, lw_thrust *thrust,
                               lw_error *error, const lw_working *working);
lw_status lw_annex_c_thrust(lw_earth_state state, const lw_plane *plane, lw_thrust *thrust, lw_error *error,
                            const lw_working *working);

/** The routine of `method passive by`; NULL for the method's own.
 *  in    by
 *  gives its descriptor */
const lw_pressure_routine *lw_passive_routine_of(lw_passive_by by);

/** The routine of the active thrust: that of the method, or beside Coulomb the one of `method active by`.
 *  in    method, by
 *  gives its descriptor */
const lw_pressure_routine *lw_active_routine_of(lw_pressure_method method, lw_active_by by);

#ifdef __cplusplus
}
#endif
#endif
