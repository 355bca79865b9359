/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_PLAN_AREA_H
#define LOWWALL_ORDER_PLAN_AREA_H

#include <lowwall/order.h>

/* The face of the lowest course between two places of the plan, and what it loses for each metre that it is
 * moved towards the soil: corners and curves make it shorter there. */
typedef struct lw_face {
  double length_m, loses;
} lw_face;
lw_face lw_face_between(const lw_plan *plan, double from_m, double to_m);
static inline double lw_face_at(const lw_face *face, double offset_m) {
  return face->length_m - offset_m * face->loses;
}
/* Area between two such offsets. */
static inline double lw_face_strip(const lw_face *face, double from_m, double to_m) {
  return face->length_m * (to_m - from_m) - face->loses * (to_m * to_m - from_m * from_m) / 2.0;
}

/** Area of the strip between two offsets towards the soil, mitred at corners. */
double lw_plan_strip(const lw_plan *plan, double from_m, double to_m);
/** Area inside a closed plan at an offset towards the soil; 0 for an open one. */
double lw_plan_inside(const lw_plan *plan, double offset_m);

#endif
