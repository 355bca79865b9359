/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ASK_PARTS_H
#define LOWWALL_ASK_PARTS_H

#include "sheet/entry.h"

/* The cells of the tables of questions are lists: "item=value; item=value", "mm; mm". */

typedef struct lw_ask_part {
  const char *text; /* blanks around it left out */
  size_t length;
} lw_ask_part;

/* The next part of a list, and where the one after it begins; false past the last. An empty list has none. */
bool lw_ask_next(const char **at, char mark, lw_ask_part *part);
/* The n-th, from 0; one of no length where there are not so many. */
lw_ask_part lw_ask_nth(const char *list, char mark, int n);
int lw_ask_count(const char *list, char mark);
bool lw_ask_is(const lw_ask_part *part, const char *word);
/* A copy that ends with a NUL, cut where it does not fit. */
const char *lw_ask_copy(const lw_ask_part *part, char *out, size_t size);

/* "item=value" taken apart, or an item alone; false where there is no such item. */
typedef struct lw_ask_pair {
  lw_named named;
  lw_ask_part value;
} lw_ask_pair;
bool lw_ask_pair_of(const lw_ask_part *part, lw_ask_pair *pair);

/* Each pair of "item=value; ...", a "+" between items that take the same value being one more. */
typedef struct lw_ask_walk {
  const char *at, *plus;
  lw_ask_part part;
  lw_ask_pair pair;
  int index; /* of the part, from 0 */
} lw_ask_walk;
lw_ask_walk lw_ask_begin(const char *list);
bool lw_ask_step(lw_ask_walk *walk);

bool lw_ask_same(const lw_named *a, const lw_named *b);
/* Whether the list of items or of pairs has that item. */
bool lw_ask_has(const char *list, const lw_named *named);

#endif
