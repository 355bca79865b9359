/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_PLAN_H
#define LOWWALL_ORDER_PLAN_H

#include "laying.h"

/* The plan of a case settled for an order; unchanged on a fault.
 * gives LW_OK · LW_FAULTS */
lw_status lw_plan_build(const lw_laying *laying, lw_plan *plan, lw_plan_fault *fault);

int lw_plan_at(const lw_plan *plan, int run);                    /* of a closed plan, wrapped around */
double lw_plan_module(const lw_plan *plan, int run, int course); /* wider on a convex curve */
double lw_plan_depth(const lw_plan *plan, int course);
/* How much the free ends of a run have stepped back in a course, both together. */
double lw_plan_end_back(const lw_plan *plan, int run, int course);
/* The half turn's tangent at the beginning or the end of a run; 0 at an open end. */
double lw_plan_tangent(const lw_plan *plan, int run, bool after);

#endif
