/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_REPORT_FORMS_READ_H
#define TESTS_REPORT_FORMS_READ_H

#include <lowwall/base.h>

/* What a reader sees of a form: its words with a blank between each two, the dashes of lists left out. */

/* Of plain text. */
void forms_read_text(const char *text, lw_text *words);
/* Of HTML, behind its <body>. false: an entity that it does not know */
bool forms_read_html(const char *html, lw_text *words);
/* Of Markdown, read as CommonMark has it as far as a page uses it. false: a character that would do something
 * stands bare, a fence is not closed */
bool forms_read_markdown(const char *markdown, lw_text *words);

/* Whether each row of each table has as many columns as the first. */
bool forms_rows_are_even(const char *html);

/* All forms of one page: the same words, and well made. `name` is of the wall. */
void forms_expect_same(const char *name, const char *text, const char *markdown, const char *html);

#endif
