/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_REPORT_ON_PAPER_H
#define TESTS_REPORT_ON_PAPER_H

#include <lowwall/report.h>

/** No words stand on others, no line goes through words, all marks lie on the page, and as SVG it is
 *  well-formed with a title, a description and real text. */
void expect_on_paper(const lw_drawing *drawing, const char *name);

/** Whether the words of a drawing, joined however they are broken into lines, hold these. */
bool on_paper_says(const lw_drawing *drawing, const char *words);

/** Nothing that a drawing says, to the eye or the ear, is in metric units. */
void expect_no_metric(const lw_drawing *drawing, const char *name);

#endif
