/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_CITED_H
#define LOWWALL_REPORT_CITED_H

#include <lowwall/tables.h>

enum { LW_CITED_MAX = 128, LW_CITED_BYTES = 40 };

/* Whether a key was read, as the place that names it has it. A report may print one without that mark. */
typedef enum lw_cited_mark { LW_CITED_READ, LW_CITED_MEMORY, LW_CITED_UNMARKED } lw_cited_mark;

/* The keys of the sources, once each; one that is from memory anywhere is from memory. */
typedef struct lw_cited {
  int count;
  char key[LW_CITED_MAX][LW_CITED_BYTES];
  lw_cited_mark mark[LW_CITED_MAX];
} lw_cited;

/* The keys of a text, "[KEY locator] words [KEY locator]". What stands in brackets and is no key, is none. */
void lw_cited_note(lw_cited *cited, const char *text, lw_cited_mark mark);
void lw_cited_note_seen(lw_cited *cited, const char *text, lw_seen seen);
/* "KEY, KEY" of those with that mark; "" when there are none. */
void lw_cited_list(const lw_cited *cited, lw_cited_mark mark, lw_text *out);

#endif
