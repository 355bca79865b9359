/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_STUDIES_FENCE_PUSH_H
#define LOWWALL_STUDIES_FENCE_PUSH_H

#include <lowwall/studies.h>

/** The coefficients of soil behind a fence: at rest, and where the boards may lean.
 *  in    friction_rad   φ   rad   0 ≤ φ < π/2
 *  from  [JAKY1944 coefficient]; [RANKINE1857 level ground]; tested by tests/handbook/fence.csv */
double lw_fence_at_rest(double friction_rad, const lw_working *working);
double lw_fence_yielding(double friction_rad, const lw_working *working);

/** Pressure, push and moments of soil on a fence.
 *  out   push   greatest pressure (at the ground), push and moment at the ground, moment about the bottom of
 *               the post hole: M + V L
 *  note  1 K (γ z + q); below water K (γsat - γw) and the water itself.
 *  from  [RANKINE1857 level ground] with [JAKY1944 coefficient] for K; tested by tests/handbook/fence.csv */
void lw_fence_soil_push(const lw_fence_bed *bed, lw_fence_push *push, const lw_working *working);

/** The same of wind on the whole face: p, p Hf, p Hf²/2, p Hf (Hf/2 + L).
 *  from  statics; tested by tests/handbook/fence.csv */
void lw_fence_wind_push(const lw_fence_gust *gust, lw_fence_push *push, const lw_working *working);

/** The height of soil at which one measure comes to a share of the wind's.
 *  in    bed      its height is not used
 *        wind     the push to be met
 *        share    0 < share; 1: equal to the wind
 *  out   height   unchanged on failure; 0 where the load on the bed alone is enough
 *  gives LW_OK · LW_NO_SOLUTION when no height below 100 m does it
 *  note  1 Dry: boards (p/K - q)/γ, push (√(q² + 2 γ p Hf/K) - q)/γ, without load the moment at the ground
 *          ∛(3 p Hf²/(K γ)). Otherwise a root.
 *  from  statics; tested by tests/handbook/fence.csv */
lw_status lw_fence_equal_height(const lw_fence_bed *bed, const lw_fence_push *wind, lw_fence_measure measure,
                                double share, double *height);

#endif
