/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_CREW_H
#define LOWWALL_CLI_CREW_H

#include "batch.h"

/* Threads that check batches, handed in and taken back in the same order. The one that opens the crew is one
 * of them: it lends a hand whenever it has to wait, so a crew of one needs no other and does the same.
 * Batches stand in a ring, which bounds the memory whatever comes in. */
enum { LW_CREW_MAX = 256 };

typedef struct lw_crew lw_crew;

/* What each hand of the crew is given, all of it there as long as the crew; file is the sheet's name, for
 * faults. */
typedef struct lw_crew_job {
  const lw_check_asked *asked;
  const lw_tables *tables;
  const lw_case *overrides;
  const char *file;
} lw_crew_job;

/* gives NULL out of memory. Threads that the system has no room for are done without. */
lw_crew *lw_crew_open(int threads, const lw_crew_job *job);
/* An empty batch to fill; NULL while all are handed in: take the oldest back first. */
lw_batch *lw_crew_empty(lw_crew *crew);
/* Hand in what lw_crew_empty gave. */
void lw_crew_hand_in(lw_crew *crew);
/* The oldest batch handed in, once it is checked; NULL when there is none. */
lw_batch *lw_crew_oldest(lw_crew *crew);
/* Give back what lw_crew_oldest gave. */
void lw_crew_give_back(lw_crew *crew);
/* End, whatever is still handed in; NULL is allowed. */
void lw_crew_close(lw_crew *crew);

#endif
