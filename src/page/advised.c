/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "advised.h"

#include <stdlib.h>
#include <string.h>

void lw_page_forget(lw_page_kept *kept) {
  lw_page_search *search = kept->search;
  if (!search) return;
  lw_text_free(&search->of);
  free(search->wall);
  free(search);
  kept->search = NULL;
}

/* The sheet and what changes it, as text. */
static lw_status print_wall_of(const lw_request *asked, lw_text *of) {
  static const char *const OF_WALL[] = {"sheet", "set", "move"};
  json_t *wall = json_array();
  for (size_t i = 0; i < sizeof OF_WALL / sizeof *OF_WALL; i++) {
    json_t *value = json_object_get(asked->request, OF_WALL[i]);
    lw_json_append(wall, value ? json_deep_copy(value) : json_null());
  }
  return lw_json_write_exact(wall, 0, of);
}

static bool same_wall(const lw_page_kept *kept, const lw_text *of) {
  return kept->search && strcmp(kept->search->of.data, of->data) == 0;
}

static lw_status begin(lw_request *asked, lw_page_search *search) {
  lw_status status = lw_request_run(asked, &search->wall);
  if (status == LW_OK) lw_remedies_begin(&search->search, &search->wall->result, &search->wall->scratch);
  return status;
}

/* The search of another wall in the place of what was kept; with LW_OK or without one. */
static lw_status begin_anew(lw_request *asked, lw_text *of) {
  lw_page_kept *kept = asked->kept;
  lw_page_forget(kept);
  kept->search = calloc(1, sizeof *kept->search);
  if (!kept->search) return LW_NO_MEMORY;
  kept->search->of = *of;
  *of = (lw_text){0};
  lw_status status = begin(asked, kept->search);
  if (status != LW_OK) lw_page_forget(kept);
  return status;
}

lw_status lw_request_advised(lw_request *asked, int price, lw_page_search **search) {
  lw_text of = {0};
  lw_status status = print_wall_of(asked, &of);
  if (status == LW_OK && !same_wall(asked->kept, &of)) status = begin_anew(asked, &of);
  lw_text_free(&of);
  if (status != LW_OK) return status;
  *search = asked->kept->search;
  if (!(*search)->done) (*search)->done = lw_remedies_go_on(&(*search)->search, price);
  return LW_OK;
}
