/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_TEXT_PIECES_H
#define LOWWALL_REPORT_TEXT_PIECES_H

#include "report/page.h"

/* What the first screen may say, in pieces of a few lines: as many are printed as it has room for. */

typedef enum lw_screen_part {
  LW_SCREEN_ANSWER,
  LW_SCREEN_REMEDIES,
  LW_SCREEN_CHECKS,
  LW_SCREEN_MARKS, /* below the checks, without a blank line */
  LW_SCREEN_COSTS,
  LW_SCREEN_ASKING,
  LW_SCREEN_ASSUMED,
  LW_SCREEN_CAUTIONS,
  LW_SCREEN_UNCHECKED,
  LW_SCREEN_READ_ON,
  LW_SCREEN_PARTS
} lw_screen_part;

/* Of a piece: the greater the sooner it is left out. */
enum { LW_STAYS = 0, LW_GIVES_EASILY = 100 };

typedef struct lw_piece {
  lw_screen_part part;
  size_t first, length; /* in the words of the screen, as printed */
  int lines;
  int gives;    /* LW_STAYS, or the greater the sooner it is left out */
  int left_out; /* the how manieth; 0: it is printed */
} lw_piece;

enum { LW_PIECES_MAX = 96 };

typedef struct lw_screen {
  lw_text words;
  lw_page page; /* writes there */
  size_t from;  /* where the next piece begins */
  int count;
  lw_piece piece[LW_PIECES_MAX];
  const char *heading[LW_SCREEN_PARTS]; /* NULL: none */
  int beyond[LW_SCREEN_PARTS];          /* more of its kind, for which no piece was made */
} lw_screen;

/** Begin an empty one; lw_text_free(&screen->words) ends it. */
void lw_screen_begin(lw_screen *screen, const lw_text_style *style, lw_units units);
/** All that was written to screen->page since the last piece is one more of this part. Nothing: none. */
void lw_screen_piece(lw_screen *screen, lw_screen_part part, int gives);
/** Leave out pieces until no more lines are left than that, and print the rest. */
void lw_screen_put(lw_screen *screen, int lines, lw_text *out);

#endif
