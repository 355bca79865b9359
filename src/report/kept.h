/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_KEPT_H
#define LOWWALL_REPORT_KEPT_H

#include <lowwall/base.h>

/* A page that is no plain text is kept as what was asked of it, entry after entry, and put into its form at
 * the end: only then is it known where a list or a table ends. */

typedef enum lw_tone { LW_TONE_PLAIN, LW_TONE_STRONG, LW_TONE_GOOD, LW_TONE_BAD } lw_tone;

typedef enum lw_kept_kind {
  LW_KEPT_BLANK,
  LW_KEPT_HEADLINE,
  LW_KEPT_HEADING,
  LW_KEPT_PART,    /* a heading below a heading */
  LW_KEPT_SAY,     /* words behind a prefix */
  LW_KEPT_LINE,    /* as it stands */
  LW_KEPT_ROW,     /* of a table, its cells marked */
  LW_KEPT_HEAD,    /* the row that names its columns */
  LW_KEPT_TITLED,  /* the same, the first cell the title of the table */
  LW_KEPT_NUMBERS, /* of a table whose columns end below each other, its cells not marked */
  LW_KEPT_KINDS
} lw_kept_kind;

/* Before each cell of a row: whether it begins or ends below those above it. */
enum { LW_CELL_BEGINS = 0x1E, LW_CELL_ENDS = 0x1D };

typedef struct lw_span {
  const char *at;
  size_t length;
} lw_span;

typedef struct lw_kept {
  lw_kept_kind kind;
  lw_tone tone;
  lw_span prefix, text;
} lw_kept;

/** One more. Controls become `?`, but for the marks of a row's cells. */
void lw_kept_add(lw_text *entries, lw_kept_kind kind, lw_tone tone, const char *prefix, const char *text);

/** The one at the cursor, which goes on to the next. false: there is none. */
bool lw_kept_next(lw_span *cursor, lw_kept *entry);

/** Without the blanks at its ends. */
lw_span lw_span_trim(lw_span span);

/** Whether the entry belongs to a table, where `cursor` is behind it: its rows, and what is said between two
 *  rows or far in below one. */
bool lw_kept_of_table(const lw_kept *entry, lw_span cursor);

/** Whether it names the columns of a table. */
bool lw_kept_heads(const lw_kept *entry);

/* What a prefix makes of the words behind it. */
typedef enum lw_lead {
  LW_LEAD_NONE, /* blanks: a paragraph */
  LW_LEAD_ITEM, /* "- ", "? ", "3. ": an item of a list */
  LW_LEAD_STEP, /* "Ka = ": a step of the working */
  LW_LEAD_MORE, /* ": ", "= ": the step goes on */
  LW_LEAD_NAME  /* a name that the words belong to */
} lw_lead;
lw_lead lw_kept_lead(const lw_kept *entry);
/** The blanks before a prefix; words as far in as this belong to what stands above them. */
enum { LW_FAR_IN = 4 };
size_t lw_kept_indent(const lw_kept *entry);

#endif
