/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_SEEPAGE_H
#define LOWWALL_PRESSURE_SEEPAGE_H

#include <lowwall/lateral.h>

/* zeta(3), and how many terms of the sums for the pore force are taken at most. */
#define LW_ZETA_3 1.20205690315959428540
enum { LW_SEEPAGE_PORE_TERMS = 200 };

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

/** The alternating sum S in it, of exp(-k pi x/2)/k^3 over odd k, x the cotangent of the angle. */
double lw_seepage_alternating(double cotangent);

/** Weight of soil and load on a plane that lies at 45 degrees: γ H²/2 + q H. */
double lw_seepage_weight(const lw_plane *plane, double unit_weight_kn_per_m3);

/** The thrust alone of soil through which rain seeps to a drain on the plane, for a balance of forces.
 *  in    plane     as for lw_seepage_thrust
 *  out   along     the greatest of all wedges, along the direction of the thrust; unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION, as lw_seepage_thrust
 *  note  1 Newton's method on a quotient of the cotangent of the wedge's angle, some hundred nanoseconds. */
lw_status lw_seepage_along(const lw_plane *plane, double *along_kn_per_m, lw_error *error,
                           const lw_working *working);

#endif
