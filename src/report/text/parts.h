/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_TEXT_PARTS_H
#define LOWWALL_REPORT_TEXT_PARTS_H

#include "report/page.h"

/* The parts of the page, in their order. */

/* The page's parts, in their order. */
void lw_text_headline(const lw_page *page, const lw_result *result);
/* Of the headline: where a result must not be used, and how the rest is toned. */
void lw_text_faulty(const lw_page *page, const lw_result *result);
lw_tone lw_text_tone(const lw_verdict *v);
/* One of the three answers; how it stands with the check that is worst, or without. */
void lw_text_answer(const lw_page *page, const lw_result *result, lw_answer answer, bool worst_too);
/* The same as words: what is asked, and the answer. */
const char *lw_text_asked(lw_answer answer);
void lw_text_answer_words(const lw_result *result, lw_answer answer, bool worst_too, char *out, size_t size);
void lw_text_verdict(const lw_page *page, const lw_result *result);
void lw_text_checks(const lw_page *page, const lw_result *result);
/* Each heavy load that the sheet places, and the line of influence. */
void lw_text_influence(const lw_page *page, const lw_result *result);
void lw_text_narrow(const lw_page *page, const lw_result *result);
void lw_text_construction(const lw_page *page, const lw_result *result);
void lw_text_water(const lw_page *page, const lw_result *result);
/* Where nobody may dig in front: a line among the cautions. */
void lw_text_keep_out(const lw_page *page, const lw_result *result);
void lw_text_factor_sets(const lw_page *page, const lw_result *result);
void lw_text_unchecked(const lw_page *page, const lw_result *result);
/* The items of a remedy, to be copied as they stand. */
void lw_text_type_in(const lw_page *page, const lw_typed *typed);
void lw_text_remedies(const lw_page *page, const lw_result *result);
/* Both looks in one sentence, where the wall does not hold; one caution's cost, with its
 * two values or without; all of them. */
void lw_text_looks(const lw_page *page, const lw_result *result);
void lw_text_cost(const lw_page *page, const lw_result *result, const lw_cost *cost, bool values);
/* Whether there is a number to tell of it. */
bool lw_text_cost_has(const lw_result *result, const lw_cost *cost);
void lw_text_costs(const lw_page *page, const lw_result *result);
void lw_text_fence(const lw_page *page, const lw_result *result);
void lw_text_heights(const lw_page *page, const lw_result *result);
/* The reasons that rest on answers nobody gave, where they did not fit at the head. */
void lw_text_resting(const lw_page *page, const lw_result *result);
void lw_text_assumed(const lw_page *page, const lw_result *result, bool all);
void lw_text_cautions(const lw_page *page, const lw_result *result);
void lw_text_sources(const lw_page *page, const lw_result *result);
/* Of a page that says where each of its numbers is from: those that it cites and no others. */
void lw_text_sources_cited(const lw_page *page, const lw_result *result);

#endif
