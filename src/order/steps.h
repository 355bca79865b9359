/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_STEPS_H
#define LOWWALL_ORDER_STEPS_H

#include <lowwall/order.h>

/* The steps of the base, those of the sheet or those that falling ground asks for. */
void lw_plan_add_steps(const lw_case_order *items, lw_plan *plan);

/** Courses that the base is raised above its lowest place, just before or after a distance along the plan. */
int lw_plan_raised(const lw_plan *plan, double at_m, bool after);

#endif
