/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_VERDICT_LIMIT_HELD_H
#define LOWWALL_VERDICT_LIMIT_HELD_H

#include "facts.h"

/* A row of tables/limits.csv held against the wall. */
typedef struct lw_limit_held {
  lw_so about;                /* whether the row is about this wall at all */
  const char *about_left_out; /* the item that would tell; NULL: none does */
  lw_span height;             /* by the row's own definition */
  lw_so past;                 /* open: only what is left out could make it so */
  lw_so any_height;           /* whether it asks whatever the height ... */
  lw_only_if any_by;          /* ... by this ... */
  const char *any_left_out;   /* ... or because of this item; NULL: none would tell */
} lw_limit_held;

void lw_limit_hold(const lw_facts *facts, const lw_limit_row *row, lw_limit_held *held);
/* A height that is finite, on the wrong side of the row's figure. */
bool lw_limit_is_past(const lw_limit_row *row, double height_m);
/* Whether the other wall's height is added to this one's. */
bool lw_limit_adds_tier(const lw_facts *facts, const lw_limit_row *row);

/* Whom a row calls for; how a sentence names its place. */
lw_who lw_limit_calls_for(const lw_facts *facts, const lw_limit_row *row);
const char *lw_limit_place(const lw_limit_row *row);
#endif
