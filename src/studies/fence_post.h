/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_STUDIES_FENCE_POST_H
#define LOWWALL_STUDIES_FENCE_POST_H

#include <lowwall/studies.h>

/** The push that tips a short stiff post in ground without cohesion: γ b L³ Kp / (2 (e + L)).
 *  in    arm_m   height of the push above the ground, e   0 or more
 *  note  1 The ultimate push of one post; the head is free to turn.
 *        2 Concrete that fills the hole counts with its width. Water in the ground halves it, about.
 *  from  [BROMS1964 short free-headed piles]; tested by tests/handbook/fence.csv */
double lw_fence_broms(const lw_fence_hole *hole, double arm_m, const lw_working *working);

/** The depth a code asks of a post without restraint at the ground: d = A/2 (1 + √(1 + 4.36 h/A)) with
 *  A = 2.34 P/(S b).
 *  in    push_kn     of one post, P
 *        arm_m       its height above the ground, h
 *        width_m     b
 *        allowed_kpa S, at a third of the depth
 *  gives d [m]
 *  from  [IBC 1807.3.2.1]; tested by tests/handbook/fence.csv */
double lw_fence_code_depth(double push_kn, double arm_m, double width_m, double allowed_kpa);

/** The push that the same formula allows a post of that depth, S taken at a third of it.
 *  from  [IBC 1807.3.2.1] turned round; tested by tests/handbook/fence.csv */
double lw_fence_code_push(const lw_fence_hole *hole, double arm_m, const lw_working *working);

/** Depth at which the ground holds a push, by Broms over `factor`, and by the code.
 *  out   depth   unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION when 20 m are not enough */
lw_status lw_fence_broms_depth(const lw_fence_hole *hole, double push_kn, double arm_m, double factor,
                               double *depth);
lw_status lw_fence_code_depth_of(const lw_fence_hole *hole, double push_kn, double arm_m, double *depth);

/** Greatest bending stress in a board on two supports under an even pressure: w s²/8 over t²/6.
 *  gives it in kPa */
double lw_fence_board_stress(double pressure_kpa, double span_m, double thickness_m,
                             const lw_working *working);

/** Moment that a square post of solid timber resists: f b³/6.
 *  gives it in kN m of one post */
double lw_fence_post_moment(double strength_kpa, double side_m);

#endif
