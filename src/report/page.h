/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_PAGE_H
#define LOWWALL_REPORT_PAGE_H

#include <lowwall/report.h>

#include "base/amount.h"

/* A page of plain text, wrapped at its columns. Colour is only ever an addition to a word that says it. */
typedef struct lw_page {
  lw_text *out;
  lw_text_style style;
  lw_units units; /* those that its reader measures in */
} lw_page;

typedef enum lw_tone { LW_TONE_PLAIN, LW_TONE_STRONG, LW_TONE_GOOD, LW_TONE_BAD } lw_tone;

void lw_page_blank(const lw_page *page);
void lw_page_heading(const lw_page *page, const char *title);
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

/** Text of the user's made fit for a terminal: control characters and broken UTF-8 become `?`. */
void lw_text_clean(const char *text, char *out, size_t size);

/** A number to two decimals, "-" when it is missing. */
void lw_page_number(lw_number number, char *out, size_t size);

#endif
