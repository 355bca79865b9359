/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_WORKING_WORKING_H
#define LOWWALL_REPORT_WORKING_WORKING_H

#include "base/tell.h"
#include "report/page.h"

/* The parts of the working, in their order. */

/* The fence as the back of the bed. */
void lw_working_fence(const lw_page *page, const lw_result *result);
/* What was put in: the wall, the soils, the water. */
void lw_working_given(const lw_page *page, const lw_result *result);
/* Steps as they come, each situation by itself: most situations share theirs. */
typedef struct lw_recorder {
  lw_page page; /* as those that the steps are for; its text is none of it */
  int at, count;
  lw_situation_name name[LW_SITUATION_COUNT];
  lw_text steps[LW_SITUATION_COUNT];
  char waiting[160];
} lw_recorder;
lw_working lw_recorder_working(lw_recorder *recorder);
void lw_recorder_print(const lw_recorder *recorder, const lw_page *page);
void lw_recorder_free(lw_recorder *recorder);
/* Where the wedge pushes more than the formula. */
void lw_working_governs(const lw_page *page, const lw_free_body *body);
/* One step: symbol = formula, the numbers put in, the value with its unit and source. */
void lw_working_say(const lw_page *page, const lw_step *step);
/* A recorder whose steps go straight onto a page, which must outlive it. */
lw_working lw_page_working(lw_page *page);
/* Rankine and Coulomb with the wedge beside each. */
void lw_working_compared(const lw_page *page, const lw_result *result);
/* A contact: base, pad, a joint by its number, or the cap with that of the joint under it. */
typedef struct lw_shown {
  lw_at at;
  int joint;
} lw_shown;
/* The moment table of a free body with its check sums. */
void lw_working_moments(const lw_page *page, const lw_result *result, const lw_free_body *body,
                        lw_shown place);
/* From the sums to the resultant and the pressures, as the free body writes it. */
void lw_working_contact(const lw_page *page, const lw_result *result, const lw_situation *situation,
                        const lw_free_body *body, lw_shown shown);
/* Symbol, formula, numbers and value in a line. */
void lw_working_brief(const lw_page *page, const char *indent, const lw_step *step, const char *tail);
/* The checks of one contact as formula, numbers, value. */
void lw_working_written(const lw_page *page, const lw_result *result, const lw_situation *situation,
                        const lw_free_body *body, lw_shown place);
/* While it is built, course by course. */
void lw_working_construction(const lw_page *page, const lw_result *result);
void lw_working_narrow(const lw_page *page, const lw_result *result);
/* How high water may stand, and what seeps to a drain. */
void lw_working_water(const lw_page *page, const lw_result *result);
/* Every joint on a line. */
void lw_working_joints(const lw_page *page, const lw_result *result, const lw_situation *situation);
/* The worst circle, slice by slice. */
void lw_working_slip(const lw_page *page, const lw_result *result, const lw_situation *situation);
/* Every check of a situation: demand, resistance, has, needs, ratio, by what. */
void lw_working_storm(const lw_page *page, const lw_storm *storm);
void lw_working_checks(const lw_page *page, const lw_result *result, const lw_situation *situation);

#endif
