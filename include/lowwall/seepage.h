/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SEEPAGE_H
#define LOWWALL_SEEPAGE_H

#include <lowwall/pressure.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Steady rain that seeps through the soil to a working drain on an upright back: the push lies between that
 * of drained soil and that of soil full of standing water. */

/* Level pushes on one plane, soil, load and water together; each coefficient is the push over the moist
 * weight and load above the plane's foot, gamma H^2/2 + q H. */
typedef struct lw_seepage {
  double dry_kn_per_m, seeping_kn_per_m, blocked_kn_per_m;
  double dry_k, seeping_k, blocked_k;
  double plane_angle_rad;          /* of the critical plane while it seeps, from the horizontal */
  double pore_force_kn_per_m;      /* of the seeping water on that plane */
} lw_seepage;

/** Head of water that seeps to an upright drain from ground kept wet by rain, above an impermeable floor.
 *  in    height_m   of the drain, H        m   > 0
 *        x_m, y_m   behind the drain, above the floor   m   x ≥ 0, 0 ≤ y ≤ H
 *  gives the head above the floor, m: y on the drain, H on the ground and far away
 *  note  1 h = H - sum of An exp(-ln x) cos(ln y), ln = (2n + 1) pi/(2H), An = 8H/((2n + 1) pi)^2: Laplace's
 *          equation with no flow through the floor. On the drain itself the sum is cut at 1e-4 of H.
 *  from  [GRAY1958 vertical drain], derived here; tested by tests/pressure/seepage.c */
double lw_seepage_head(double height_m, double x_m, double y_m);

/** Pore force on a plane through the foot of that drain, over the unit weight of water: the integral of
 *  h - y along it.
 *  in    height_m    H                                m     > 0
 *        angle_rad   of the plane to the horizontal   rad   0 < angle ≤ π/2
 *  gives m²; 0 on the drain, never more than of standing water, H²/(2 sin angle)
 *  note  1 Closed: H² (1/(2 sin a) - 14 zeta(3)/pi^3 cos a - 16/pi^3 sin a S), S the alternating sum of
 *          exp(-(2n + 1) pi cot(a)/2)/(2n + 1)^3.
 *  from  [GRAY1958 vertical drain], derived here; tested by tests/pressure/seepage.c */
double lw_seepage_pore_area(double height_m, double angle_rad);

/** Dry, seeping and blocked push on an upright plane, by Coulomb's wedge on saturated soil with the pore
 *  force on its plane.
 *  in    plane     upright, one soil without cohesion, level ground, uniform load only
 *  out   seepage   unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason no-seepage-form where the plane is another, or that of the
 *        coefficient
 *  note  1 P = (W sin(a - φ) + U sin φ)/cos(a - φ - δ), greatest over the angle a; its level part is taken.
 *        2 Blocked: water up to the ground, whatever plane->water_depth_m says; dry: none.
 *        3 The drain is taken as perfect over its whole height, and the rain as keeping the ground full.
 *  from  [GRAY1958 vertical drain], [BARROS2006 pore pressure], derived here; tested by
 *        tests/pressure/seepage.c */
lw_status lw_seepage_thrust(const lw_plane *plane, lw_seepage *seepage, lw_error *error,
                            const lw_working *working);

#ifdef __cplusplus
}
#endif
#endif
