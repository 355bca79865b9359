/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "advised.h"

#include <stdlib.h>
#include <string.h>

void lw_request_forget_search(lw_page_kept *kept) {
  lw_page_search *search = kept->search;
  if (!search) return;
  lw_text_free(&search->of);
  free(search->wall);
  free(search);
  kept->search = NULL;
}

static bool is_of(const lw_page_search *search, const lw_request_wall *wall) {
  return search && strcmp(search->of.data, wall->of.data) == 0;
}

/* gives NULL without memory */
static lw_page_search *begin(const lw_request_wall *wall) {
  lw_page_search *search = calloc(1, sizeof *search);
  if (!search) return NULL;
  search->wall = lw_request_copy_of(wall);
  lw_text_add_bytes(&search->of, wall->of.data, wall->of.length);
  if (search->wall && !search->of.failed)
    lw_remedies_begin(&search->search, &search->wall->result, &search->wall->scratch);
  return search;
}

/* The search of another wall in the place of what was kept. */
static lw_status begin_anew(lw_page_kept *kept, const lw_request_wall *wall) {
  lw_request_forget_search(kept);
  kept->search = begin(wall);
  if (!kept->search) return LW_NO_MEMORY;
  if (kept->search->wall && !kept->search->of.failed) return LW_OK;
  lw_request_forget_search(kept);
  return LW_NO_MEMORY;
}

lw_status lw_request_advised(lw_request *asked, int price, lw_page_search **search) {
  const lw_request_wall *wall;
  lw_status status = lw_request_run(asked, &wall);
  if (status == LW_OK && !is_of(asked->kept->search, wall)) status = begin_anew(asked->kept, wall);
  if (status != LW_OK) return status;
  *search = asked->kept->search;
  if (!(*search)->done) (*search)->done = lw_remedies_go_on(&(*search)->search, price);
  return LW_OK;
}
