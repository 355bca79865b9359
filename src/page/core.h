/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PAGE_CORE_H
#define LOWWALL_PAGE_CORE_H

#include <lowwall/tables.h>

/* All that the page asks of the library, as one question and its answer. The page keeps a sheet and nothing
 * else; what is said of a wall, and every number, comes from here. docs/page.md has the requests. */

/* What was worked out for earlier requests, kept by whoever asks: walls as they were run, the last one asked
 * for first, and how far the search for what would make one stand has come. NULL: nothing. */
enum { LW_PAGE_WALLS = 3 };
typedef struct lw_page_kept {
  struct lw_request_wall *wall[LW_PAGE_WALLS];
  struct lw_page_search *search;
} lw_page_kept;
void lw_page_forget(lw_page_kept *kept);

/** Answer one request.
 *  in    tables    in effect
 *        kept      from earlier requests, with these tables; NULL: each begins anew
 *        request   JSON: {"do": "check", "sheet": "item,value,unit\n...", ...}
 *        length    of it, in bytes
 *  out   out       JSON is added: {"ok": true, ...}, or {"ok": false, "why": "...", "text": "...",
 *                  "faults": [...]} where why is bad-request, faults, no-solution or no-memory
 *  gives LW_OK, whatever the answer is · LW_NO_MEMORY when even that could not be written
 *  note  1 Keeps nothing else between calls, opens nothing. */
lw_status lw_page_answer(const lw_tables *tables, lw_page_kept *kept, const char *request, size_t length,
                         lw_text *out);

#endif
