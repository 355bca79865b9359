/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_WORKING_SYMBOLS_H
#define LOWWALL_REPORT_WORKING_SYMBOLS_H

#include "report/page.h"

/* What the symbols of a working mean: those that it uses, each once. */

/* A letter stands for other things in another part of the working. */
typedef enum lw_symbol_part {
  LW_SYMBOLS_PUSH = 1,     /* the soil's push, wedges, an earthquake */
  LW_SYMBOLS_BODY = 2,     /* a contact in equilibrium, what resists in front, bearing */
  LW_SYMBOLS_STORM = 4,    /* rain that stays in the soil */
  LW_SYMBOLS_SLIP = 8,     /* circles, and the bed on its slope */
  LW_SYMBOLS_SEEPAGE = 16, /* rain that seeps to a drain */
  LW_SYMBOLS_BUILT = 32,   /* while it is built */
  LW_SYMBOLS_NARROW = 64,
  LW_SYMBOLS_FENCE = 128,
  LW_SYMBOLS_LOADS = 256 /* at a distance behind the plane, below their own heading */
} lw_symbol_part;

typedef struct lw_symbol {
  const char *symbol;
  unsigned parts;      /* where it means that */
  const char *meaning; /* without a unit, which the step has */
} lw_symbol;

/* All that there are, a symbol's meanings below each other; ends with a NULL symbol. */
extern const lw_symbol lw_symbols[];
enum { LW_SYMBOLS_MAX = 400 };

typedef struct lw_symbols_used {
  bool row[LW_SYMBOLS_MAX];
  bool numbered; /* some symbol has the number of a layer or of a round */
} lw_symbols_used;

/** Note what a part of a page uses: in its steps, the heads of its tables, and where it says what one is. */
void lw_symbols_note(lw_symbols_used *used, lw_symbol_part part, lw_span entries);
/** The list of those used. */
void lw_symbols_put(const lw_page *page, const lw_symbols_used *used);

#endif
