/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PAGE_ADVISED_H
#define LOWWALL_PAGE_ADVISED_H

#include "remedies/search.h"
#include "wall.h"

/* The wall of a request with what would make it stand. It takes many runs: a page asks for it slice by slice,
 * and what was found is kept in the meantime. Another wall takes its place. */
typedef struct lw_page_search {
  lw_text of; /* which wall it is of */
  lw_request_copy *wall;
  lw_remedies_search search;
  bool done;
} lw_page_search;

/** Go on with it, or begin it.
 *  in    price    for how long: see lw_remedies_go_on; INT_MAX to its end
 *  out   search   kept by who asked: not to be freed
 *  gives as lw_request_run */
lw_status lw_request_advised(lw_request *asked, int price, lw_page_search **search);
void lw_request_forget_search(lw_page_kept *kept);

#endif
