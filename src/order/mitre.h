/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_MITRE_H
#define LOWWALL_ORDER_MITRE_H

#include <lowwall/base.h>

typedef struct lw_mitre {
  double angle_rad[2]; /* between the mitre and the long edge of each piece */
  double extra_m[2];   /* long edge beyond the short edge */
  double cut_m;        /* length of the mitre */
} lw_mitre;

/** The mitre of two strips of any widths at any corner.
 *  in    angle_rad   between the two runs, measured where the material is   0 < angle < π
 *        first_m, second_m   the widths                                    > 0
 *  out   mitre       unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION when the strips do not meet in a mitre: a butt joint
 *  note  tan a1 = w1 sin θ / (w2 + w1 cos θ), a2 = θ - a1; plane geometry, both widths being heights of the
 *        same cut */
lw_status lw_order_mitre(double angle_rad, double first_m, double second_m, lw_mitre *mitre);

/** The least radius of a face laid of tapered blocks or with open joints.
 *  in    face_m, tail_m   length of a block at its face and at its rear
 *        depth_m          front to back
 *        gap_m            widest gap: at the face of a convex wall, at the rear of a concave one
 *        convex           centre on the soil's side
 *  out   radius_m         of the face; unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION when no radius will do
 *  note  convex R = D (Lf + g)/(Lf + g - Lr), concave R = D Lf/(Lr + g - Lf): similar triangles */
lw_status lw_order_least_radius(double face_m, double tail_m, double depth_m, double gap_m, bool convex,
                                double *radius_m);

#endif
