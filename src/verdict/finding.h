/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_VERDICT_FINDING_H
#define LOWWALL_VERDICT_FINDING_H

#include "facts.h"
#include "reasons.h"

enum { LW_LEFT_OUT_MAX = 8 };

/* What came of one condition: the items that leave it open, and the end of the sentence where it is so. */
typedef struct lw_finding {
  const char *left_out[LW_LEFT_OUT_MAX];
  int left_out_count;
  char *detail;   /* LW_CLAUSE_MAX bytes; NULL: nobody reads it */
  lw_units units; /* that it is told in */
} lw_finding;

/* Onto what is told already. */
void lw_tell(lw_finding *found, const char *format, ...) __attribute__((format(printf, 2, 3)));
/* Left open by an item; NULL adds none. */
lw_so lw_open_by(lw_finding *found, const char *item);

#endif
