/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_WORKING_H
#define LOWWALL_REPORT_WORKING_H

#include "parts.h"

/* The parts of the working, in their order. */

/* What was put in: the wall, the soils, the water. */
void lw_working_given(const lw_page *page, const lw_result *result);
/* A recorder that prints steps onto a page, which must outlive it. */
lw_working lw_working_printer(lw_page *page);
/* One step: symbol = formula, the numbers put in, the value with its unit and source. */
void lw_working_say(const lw_page *page, const lw_step *step);
/* Rankine and Coulomb with the wedge beside each. */
void lw_working_compared(const lw_page *page, const lw_result *result);
/* The moment table of a stage with its check sums. */
void lw_working_moments(const lw_page *page, const lw_result *result, const lw_stage *stage);
/* From the sums to the resultant and the pressures. */
void lw_working_contact(const lw_page *page, const lw_stage *stage);
/* Every joint on a line. */
void lw_working_joints(const lw_page *page, const lw_result *result, const lw_situation *situation);
/* Every check of a situation: demand, resistance, has, needs, ratio, by what. */
void lw_working_checks(const lw_page *page, const lw_situation *situation);

#endif
