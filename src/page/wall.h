/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PAGE_WALL_H
#define LOWWALL_PAGE_WALL_H

#include "request.h"

/* The wall of a request, run. One thing after the other is asked about the same wall, so it is kept for the
 * next request as the run left it: whoever adds to a result takes a copy. */
typedef struct lw_request_wall {
  lw_text of; /* which wall it is, as the request has it */
  lw_case c;  /* as read, and changed as asked; not complete */
  lw_result result;
  lw_order order; /* where it was asked for */
} lw_request_wall;

/** The wall of the request, moved as it says and run to everything; with its order where it is wanted.
 *  out   wall   kept by who asked: not to be freed */
lw_status lw_request_run(lw_request *asked, const lw_request_wall **wall);
lw_status lw_request_run_order(lw_request *asked, const lw_request_wall **wall);
void lw_request_forget_walls(lw_page_kept *kept);

/* A result to add to, and one to run in beside it. */
typedef struct lw_request_copy {
  lw_result result, scratch;
} lw_request_copy;

/** gives a copy, to be given back by free(); NULL without memory */
lw_request_copy *lw_request_copy_of(const lw_request_wall *wall);

#endif
