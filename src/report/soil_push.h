/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_SOIL_PUSH_H
#define LOWWALL_REPORT_SOIL_PUSH_H

#include <lowwall/result.h>

/* What soil and the loads on it push on one contact, summed from its free body, factors included. What posts
 * and the like push through the ground is not in it. */
typedef struct lw_soil_push {
  double kn_per_m, angle_rad; /* positive: it presses the wall down */
  double horizontal_kn_per_m, vertical_kn_per_m;
  double x_m, y_m;     /* where it meets the line that the soil pushes on */
  double above_foot_m; /* of that line */
  double through_ground_kn_per_m;
  bool loads; /* some of it is of loads */
} lw_soil_push;

/* gives false where there is none */
bool lw_soil_push_find(const lw_free_body *body, lw_soil_push *push);

#endif
