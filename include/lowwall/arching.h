/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ARCHING_H
#define LOWWALL_ARCHING_H

#include <lowwall/compaction.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Soil between two upright faces that stand close: it partly hangs on both. Published values, for a student
 * to compare: lowwall never counts them in a wall's favour. */

typedef struct lw_slot {
  double width_m;                 /* B, clear between the faces; > 0 */
  double unit_weight_kn_per_m3;   /* γ */
  double wall_friction_rad;       /* δ, on both faces; 0 or more */
  double surcharge_kpa;           /* q */
} lw_slot;

/** The level pressure on a face at a depth, by slices: K σv, σv = γB/(2K tan δ) [1 - exp(-2K z tan δ/B)]
 *  + q exp(-2K z tan δ/B).
 *  in    slot          as above
 *        coefficient   K, 0 < K
 *        depth_m       z, 0 or more
 *  gives kPa
 *  note  1 With smooth faces, and between faces far apart, it is K (γ z + q): nothing hangs.
 *  from  [JANSSEN1895 slices]; tested by tests/handbook/earth_pressure.csv */
double lw_slot_kpa(const lw_slot *slot, double coefficient, double depth_m);

/** The push on a face and its height above the foot, by integration of lw_slot_kpa.
 *  in    height_m   > 0
 *  out   lateral    unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason no-wedge where the integral does not settle */
lw_status lw_slot_thrust(const lw_slot *slot, double coefficient, double height_m, lw_lateral *lateral,
                         lw_error *error, const lw_working *working);

/** The ratio of level to upright stress beside a rough face that yields:
 *  K = [(s+1) - √((s+1)² - (1-s)(4 tan²δ - s + 1))]/(4 tan²δ - s + 1), s = sin²φ.
 *  in    friction_rad, wall_friction_rad   0 < φ < π/2, 0 ≤ δ ≤ φ
 *  out   k                                 unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason angle-out-of-range
 *  note  1 δ = 0 gives Ka, δ = φ gives (1 - s)/(1 + s).
 *  from  [FRYDMAN1987 stress at a rough face]; tested by its two limits */
lw_status lw_frydman_keissar_coefficient(double friction_rad, double wall_friction_rad, double *k,
                                         lw_error *error, const lw_working *working);

/** Handy's coefficient of an arch between rough faces: Kw = 1.06 (cos²T + Ka sin²T), T = 45° + φ/2.
 *  in    friction_rad   0 < φ < π/2
 *  out   k              unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason angle-out-of-range
 *  from  [HANDY1985 the arch in soil arching] */
lw_status lw_handy_coefficient(double friction_rad, double *k, lw_error *error, const lw_working *working);

#ifdef __cplusplus
}
#endif
#endif
