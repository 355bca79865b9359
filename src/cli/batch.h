/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_BATCH_H
#define LOWWALL_CLI_BATCH_H

#include "sheet/defaults.h"
#include "sheet/entry.h"
#include "check.h"

/* A few rows of a schedule, and what comes of them: the pieces in which rows go through several threads.
 * Few enough that a batch stays in a core's cache, many enough that handing it over costs nothing. */
enum { LW_BATCH_ROWS = 32 };

typedef struct lw_batch_row {
  int row;                   /* of the schedule, from 1 */
  int fault_count;           /* found in reading; of all rows one after the other in the batch's list */
  size_t text_end, said_end; /* where the row's share of the batch's texts ends */
} lw_batch_row;

typedef struct lw_batch {
  int count, fault_count;
  lw_batch_row row[LW_BATCH_ROWS];
  const lw_schedule *schedule; /* that the rows were read from */
  unsigned char *packed;       /* their values; NULL before the first row */
  lw_fault fault[LW_FAULT_MAX];
  lw_text text; /* the result rows */
  lw_text said; /* the fault lines, for standard error */
  int gravest;  /* exit status */
} lw_batch;

/* What a thread needs to check batches, too big for a stack. */
typedef struct lw_hand {
  const lw_check_asked *asked;
  const lw_tables *tables;
  const lw_case *overrides; /* the values of the command line's items */
  const lw_named *override; /* whose values replace those of each row */
  int override_count;
  lw_defaults defaults;
  lw_faults faults; /* of the row in hand; their file's name is set beforehand */
  lw_result result, scratch;
} lw_hand;

/* Take in one more row, as the schedule hands it on. false when the batch is full, or the row's faults no
 * longer fit in. Out of memory: batch->text.failed */
bool lw_batch_add(lw_batch *batch, const lw_schedule *schedule, int row, const lw_case *c,
                  const lw_faults *faults);
/* Check its rows. Each batch is a function of its rows alone, whichever thread does it. */
void lw_batch_check(lw_batch *batch, lw_hand *hand);
/* Empty it; its memory is kept. */
void lw_batch_clear(lw_batch *batch);
void lw_batch_free(lw_batch *batch);

/* The graver of two exit statuses. */
int lw_graver(int one, int other);

#endif
