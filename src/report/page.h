/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_PAGE_H
#define LOWWALL_REPORT_PAGE_H

#include <lowwall/report.h>

#include "base/amount.h"
#include "kept.h"

/* A page for people. As plain text it is wrapped at its columns and written at once. In another form it
 * *keeps*: what is asked of it is noted, call after call (kept.h), and made into that form when it is closed
 * (forms.h). Colour is only ever an addition to a word that says it. */
typedef struct lw_page {
  lw_text *out; /* where a call goes: the text of a plain page, the notes of one that keeps */
  lw_text_style style;
  lw_units units; /* those that its reader measures in */
  size_t from;    /* where in `out` it begins */
  bool keeps;
} lw_page;

/** Begin at the end of `out`, or, where the form is not plain text, with the notes, empty before. */
lw_page lw_page_open(const lw_text_style *style, lw_units units, lw_text *out, lw_text *kept);
/** End: what was kept is written to `out` in the form of the page's style, and its notes are freed.
 *  gives LW_OK · LW_NO_MEMORY */
lw_status lw_page_close(const lw_page *page, lw_text *out);

void lw_page_blank(const lw_page *page);
/** What must be read first, at the top. */
void lw_page_headline(const lw_page *page, lw_tone tone, const char *text);
void lw_page_heading(const lw_page *page, const char *title);
/** Of a part below a heading; without a blank line before it. */
void lw_page_part(const lw_page *page, const char *title);
/** Wrap text after a prefix; the lines after the first are indented to the prefix's end. */
void lw_page_say(const lw_page *page, const char *prefix, const char *text);
/** The same of a text that is put together, which is freed; an empty one says nothing. */
void lw_page_say_text(const lw_page *page, const char *prefix, lw_text *text);
/** The same, printf-like. */
void lw_page_sayf(const lw_page *page, const char *prefix, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 3, 4)))
#endif
    ;
void lw_page_tone(const lw_page *page, lw_tone tone, const char *prefix, const char *text);
/** One line as it stands, blanks at its end left out. */
void lw_page_linef(const lw_page *page, lw_tone tone, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 3, 4)))
#endif
    ;

/** A row of a table, "  |%-9s|%7.2f": a cell begins at each `|`, which is not printed. One whose conversion
 *  fills up on the right, or not at all, is of words, the others of numbers. Plain text has such a line. */
void lw_page_rowf(const lw_page *page, lw_tone tone, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 3, 4)))
#endif
    ;
/** The row above them that names the columns, as many as they have; units may follow in another. */
void lw_page_headf(const lw_page *page, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 2, 3)))
#endif
    ;
/** The same where the first cell is the title of the table, in a strong line. */
void lw_page_titledf(const lw_page *page, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 2, 3)))
#endif
    ;
/** A row, or the head, of a table of numbers that end below each other, as lw_working hands it over. */
void lw_page_numbers(const lw_page *page, const char *row);

/** Text of the user's made fit for a terminal: control characters and broken UTF-8 become `?`. */
void lw_text_clean(const char *text, char *out, size_t size);

/** A number to two decimals, "-" when it is missing. */
void lw_page_number(lw_number number, char *out, size_t size);

#endif
