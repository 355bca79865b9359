/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_REPORT_REBUILT_H
#define TESTS_REPORT_REBUILT_H

#include <stdbool.h>

/* A contact made again from the sums of its forces, by other ways than the program's: integrals over the plan
 * of what bears, its edges found by halving. */
typedef struct rebuilt_plan {
  double width_m, front_share, rear_share; /* what bears, a trapezium in plan */
  double shell_m;                          /* only so much at either edge; 0: all of it */
  bool even;                               /* its load stands evenly on it, as under a pad */
} rebuilt_plan;

typedef struct rebuilt_sums {
  double vertical, horizontal, holds, tips; /* kN/m and kN m/m, about the front edge */
} rebuilt_sums;

typedef enum rebuilt_pressure { REBUILT_NO_TENSION, REBUILT_LINEAR, REBUILT_EFFECTIVE } rebuilt_pressure;

typedef struct rebuilt_contact {
  bool inside;
  double area_m2, share, greatest_kpa;
  double near_m; /* of the resultant to the nearer edge */
} rebuilt_contact;

rebuilt_contact rebuilt_of(const rebuilt_plan *plan, const rebuilt_sums *sums, rebuilt_pressure pressure);

#endif
