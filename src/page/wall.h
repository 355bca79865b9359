/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PAGE_WALL_H
#define LOWWALL_PAGE_WALL_H

#include "request.h"

/* The wall of a request, run. */

/* Too large for a stack. */
typedef struct lw_request_wall {
  lw_case c; /* as read, and changed as asked; not complete */
  lw_result result, scratch;
  lw_order order;
} lw_request_wall;

/** The wall of the request, moved as it says and run to everything; with its order where it is wanted.
 *  out   wall   to be given back by free(), whatever comes of it; NULL without memory */
lw_status lw_request_run(lw_request *asked, lw_request_wall **wall);
lw_status lw_request_run_order(lw_request *asked, lw_request_wall **wall);

#endif
