/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_TEXT_SHORTEN_H
#define LOWWALL_REPORT_TEXT_SHORTEN_H

#include "report/page.h"

/* Sentences made fit for the first screen. */

/** Leave out what is for whoever looks sources up: keys in brackets and what belongs to them. In place. */
void lw_shorten_keys(char *text);
/** Keep as many whole sentences as fit that many lines behind a prefix, at least the first. In place. */
void lw_shorten_sentences(const lw_page *page, const char *prefix, int lines, char *text);
/** Cut to that many characters, the last three of them dots where something was cut. In place. */
void lw_shorten_to(int characters, char *text);
/** Where the sentence after this one begins; its end, if there is none. */
const char *lw_shorten_next(const char *sentence);
/** The lines that a text takes behind a prefix. */
int lw_shorten_lines(const lw_page *page, const char *prefix, const char *text);

#endif
