/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <stdlib.h>

#include "replies.h"
#include "wall.h"
#include "report/text/parts.h"
#include "report/text/said.h"

/* What would make it stand and what is worth finding out. It takes many runs, so the page asks for it after
 * the answer is shown. */

/* Where there is no remedy. */
static const char *none(const lw_result *result) {
  if (result->remedy_count > 0) return "";
  if (result->verdict.stands == LW_HOLDS) return "Every check that decides holds with the wall as it is.";
  const char *tried = lw_remedies_none(result);
  return tried[0] ? tried : "Nobody can say before more of the wall is known: see what to find out.";
}

static void put_remedies(json_t *reply, const lw_result *result) {
  lw_json_set_text(reply, "title", lw_remedies_title(result));
  lw_json_set_text(reply, "none", none(result));
  json_t *list = lw_json_list(reply, "remedies");
  for (int i = 0; i < result->remedy_count; i++) {
    json_t *entry = lw_json_entry(list);
    lw_json_set_text(entry, "words", result->remedy[i].text);
    json_t *items = lw_json_list(entry, "items");
    for (int k = 0; k < result->remedy[i].items.count; k++)
      lw_json_append(items, json_string(result->remedy[i].items.item[k]));
  }
}

/* Only of the first it is told what would come of it: the others would bury it. */
static void put_asking(json_t *reply, const lw_result *result) {
  json_t *list = lw_json_list(reply, "find_out");
  char then[200];
  for (int i = 0; i < result->asking_count; i++) {
    const lw_asking *a = &result->asking[i];
    json_t *entry = lw_json_entry(list);
    if (i == 0) lw_asking_then(result, then, sizeof then);
    lw_json_set_text(entry, "item", a->item);
    lw_json_set_text(entry, "question", a->question);
    lw_json_set_text(entry, "assumed", a->assumed);
    lw_json_set_text(entry, "favourable", a->favourable);
    lw_json_set_text(entry, "then", i == 0 ? then : "");
  }
}

static void put_costs(json_t *reply, const lw_result *result) {
  json_t *list = lw_json_list(reply, "costs");
  if (result->verdict.grade == LW_GRADE_HOLDS) return;
  for (int i = 0; i < result->cost_count; i++) {
    const lw_cost *cost = &result->cost[i];
    lw_text words = {0};
    lw_page page = {.out = &words, .style = {.columns = 10000}, .units = result->units};
    if (!lw_text_cost_has(result, cost)) continue;
    lw_text_cost(&page, result, cost, true);
    json_t *entry = lw_json_entry(list);
    lw_json_set_text(entry, "item", cost->item);
    lw_reply_put(entry, "words", &words);
  }
}

lw_status lw_reply_advice(lw_request *asked) {
  lw_request_wall *wall;
  lw_status status = lw_request_run(asked, &wall);
  if (status == LW_OK) {
    lw_remedies_find(&wall->result, &wall->scratch);
    put_remedies(asked->reply, &wall->result);
    put_asking(asked->reply, &wall->result);
    put_costs(asked->reply, &wall->result);
  }
  free(wall);
  return status;
}
