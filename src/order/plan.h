/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_PLAN_H
#define LOWWALL_ORDER_PLAN_H

#include "laying.h"

/* The plan of a case completed for an order; unchanged on a fault.
 * gives LW_OK · LW_FAULTS */
lw_status lw_plan_build(const lw_laying *laying, lw_plan *plan, lw_plan_fault *fault);

int lw_plan_at(const lw_plan *plan, int run);                    /* of a closed plan, wrapped around */
double lw_plan_module(const lw_plan *plan, int run, int course); /* wider on a convex curve */
double lw_plan_depth(const lw_plan *plan, int course);
/* How much the free ends of a run have stepped back in a course, both together. */
double lw_plan_end_back(const lw_plan *plan, int run, int course);
/* The half turn's tangent at the beginning or the end of a run; 0 at an open end. */
double lw_plan_tangent(const lw_plan *plan, int run, bool after);

/** How far the face of a course stands behind that of the lowest one. */
double lw_plan_offset(const lw_plan *plan, int course);
/** Length of a run's face at an offset towards the soil, corner to corner. */
double lw_plan_run_length(const lw_plan *plan, int run, double offset_m);
/** The corner at the beginning of a run at an offset towards the soil; run == run_count: the plan's end. */
lw_spot lw_plan_corner(const lw_plan *plan, int run, double offset_m);

#endif
