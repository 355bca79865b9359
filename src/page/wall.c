/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "wall.h"

#include <stdlib.h>
#include <string.h>

#include "moves.h"

/* What is wanted of the sheet of a request. */
typedef struct wanted {
  bool moved; /* as the request says */
  bool order;
} wanted;

static lw_status find(lw_request *asked, wanted what, const lw_request_wall **wall);

/* The case of the request. It is moved from where it stands, which the page has asked for before. */
static lw_status read(lw_request *asked, wanted what, lw_case *c) {
  const lw_request_wall *now;
  if (!what.moved) return lw_request_read(asked, c);
  lw_status status = find(asked, (wanted){.moved = false}, &now);
  if (status != LW_OK) return status;
  *c = now->c;
  return lw_request_move(asked, &now->result, c);
}

static lw_status complete(lw_request *asked, bool order, lw_case *c) {
  lw_status status = lw_case_complete(asked->tables, c, &asked->faults);
  if (status == LW_OK && order) status = lw_case_complete_order(asked->tables, c, &asked->faults);
  return status;
}

static lw_status make_order(lw_request *asked, lw_request_wall *wall) {
  lw_plan_fault fault;
  lw_status status = lw_order_make(&wall->result, &wall->order, &fault);
  if (status != LW_OK) lw_report_plan_fault(&wall->result.given.order, &fault, &asked->faults);
  return status;
}

static lw_status run(lw_request *asked, wanted what, lw_request_wall *wall) {
  lw_status status = read(asked, what, &wall->c);
  if (status != LW_OK) return status;
  lw_case whole = wall->c;
  status = complete(asked, what.order, &whole);
  if (status == LW_OK)
    status = lw_run(&whole, asked->tables, LW_DETAIL_EVERYTHING, &wall->result, &asked->error);
  return status == LW_OK && what.order ? make_order(asked, wall) : status;
}

/* The sheet and what changes it, as text. */
static lw_status print_of(const lw_request *asked, wanted what, lw_text *of) {
  static const char *const OF_WALL[] = {"sheet", "set", "move"};
  json_t *wall = json_array();
  lw_json_append(wall, json_boolean(what.order));
  for (size_t i = 0; i < sizeof OF_WALL / sizeof *OF_WALL; i++) {
    bool left_out = !what.moved && strcmp(OF_WALL[i], "move") == 0;
    json_t *value = left_out ? NULL : json_object_get(asked->request, OF_WALL[i]);
    lw_json_append(wall, value ? json_deep_copy(value) : json_null());
  }
  return lw_json_write_exact(wall, 0, of);
}

static void forget(lw_request_wall *wall) {
  if (wall) lw_text_free(&wall->of);
  free(wall);
}

/* The last one asked for comes first; the one nobody asked for longest goes. */
static void keep(lw_page_kept *kept, lw_request_wall *wall) {
  int at = 0;
  while (at < LW_PAGE_WALLS - 1 && kept->wall[at] && kept->wall[at] != wall) at++;
  if (kept->wall[at] != wall) forget(kept->wall[at]);
  for (; at > 0; at--) kept->wall[at] = kept->wall[at - 1];
  kept->wall[0] = wall;
}

static lw_request_wall *kept_wall(const lw_page_kept *kept, const lw_text *of) {
  for (int i = 0; i < LW_PAGE_WALLS; i++)
    if (kept->wall[i] && strcmp(kept->wall[i]->of.data, of->data) == 0) return kept->wall[i];
  return NULL;
}

/* Takes the text. */
static lw_status run_anew(lw_request *asked, wanted what, lw_text *of, lw_request_wall **wall) {
  *wall = calloc(1, sizeof **wall);
  lw_status status = *wall ? run(asked, what, *wall) : LW_NO_MEMORY;
  if (status == LW_OK) {
    (*wall)->of = *of;
    return LW_OK;
  }
  lw_text_free(of);
  forget(*wall);
  return status;
}

static lw_status find(lw_request *asked, wanted what, const lw_request_wall **wall) {
  lw_text of = {0};
  lw_status status = print_of(asked, what, &of);
  lw_request_wall *found = status == LW_OK ? kept_wall(asked->kept, &of) : NULL;
  if (found || status != LW_OK)
    lw_text_free(&of);
  else
    status = run_anew(asked, what, &of, &found);
  if (status != LW_OK) return status;
  keep(asked->kept, found);
  *wall = found;
  return LW_OK;
}

static bool is_moved(const lw_request *asked) {
  return json_object_get(asked->request, "move") != NULL;
}

lw_status lw_request_run(lw_request *asked, const lw_request_wall **wall) {
  return find(asked, (wanted){.moved = is_moved(asked)}, wall);
}

lw_status lw_request_run_order(lw_request *asked, const lw_request_wall **wall) {
  return find(asked, (wanted){.moved = is_moved(asked), .order = true}, wall);
}

void lw_request_forget_walls(lw_page_kept *kept) {
  for (int i = 0; i < LW_PAGE_WALLS; i++) {
    forget(kept->wall[i]);
    kept->wall[i] = NULL;
  }
}

lw_request_copy *lw_request_copy_of(const lw_request_wall *wall) {
  lw_request_copy *copy = calloc(1, sizeof *copy);
  if (copy) copy->result = wall->result;
  return copy;
}
