/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <limits.h>
#include <string.h>

#include "advised.h"
#include "replies.h"
#include "report/text/parts.h"
#include "report/text/advised.h"

/* What would make it stand and what is worth finding out. It takes many runs, so the page asks for it after
 * the answer is shown, slice by slice. */

static void put_remedies(json_t *reply, const lw_result *result) {
  json_t *list = lw_json_list(reply, "remedies");
  for (int i = 0; i < result->remedy_count; i++) {
    json_t *entry = lw_json_entry(list);
    lw_json_set_text(entry, "words", result->remedy[i].text);
    json_t *items = lw_json_list(entry, "items");
    for (int k = 0; k < result->remedy[i].items.count; k++)
      lw_json_append(items, json_string(result->remedy[i].items.item[k]));
  }
}

static void put_asking(json_t *reply, const lw_result *result, bool asked) {
  json_t *list = lw_json_list(reply, "find_out");
  for (int i = 0; asked && i < result->asking_count; i++) {
    lw_text words = {0};
    json_t *entry = lw_json_entry(list);
    lw_json_set_text(entry, "item", result->asking[i].item);
    lw_json_set_text(entry, "question", result->asking[i].question);
    lw_asking_words(result, i, false, &words);
    lw_reply_put(entry, "words", &words);
  }
}

static void put_costs(json_t *reply, const lw_result *result, bool asked) {
  json_t *list = lw_json_list(reply, "costs");
  if (!asked || result->verdict.grade == LW_GRADE_HOLDS) return;
  for (int i = 0; i < result->cost_count; i++) {
    const lw_cost *cost = &result->cost[i];
    lw_text words = {0};
    lw_page page = {.out = &words, .style = {.columns = 10000}, .units = result->units};
    if (!lw_text_cost_has(result, cost)) continue;
    lw_text_cost(&page, result, cost, true);
    json_t *entry = lw_json_entry(list);
    lw_json_set_text(entry, "item", cost->item);
    lw_json_set_text(entry, "words", words.data ? words.data + strspn(words.data, " -") : "");
    lw_text_free(&words);
  }
  lw_json_set_text(reply, "costs_title", "What each caution costs");
}

/* What is asked comes first and is whole before the first remedy; remedies come one after the other. */
static void put_found(json_t *reply, const lw_page_search *search) {
  const lw_result *result = &search->wall->result;
  bool asked = search->search.stage >= LW_SEARCH_ALONE;
  lw_text instead = {0};
  if (search->done) lw_remedies_instead(result, &instead);
  lw_json_set_flag(reply, "done", search->done);
  lw_json_set_flag(reply, "asked", asked);
  lw_json_set_text(reply, "title",
                   search->done ? lw_remedies_title(result) : lw_remedies_title_before(result));
  lw_reply_put(reply, "none", &instead);
  put_remedies(reply, result);
  put_asking(reply, result, asked);
  put_costs(reply, result, asked);
}

lw_status lw_reply_advice(lw_request *asked) {
  lw_page_search *search;
  double price = lw_request_number_of(asked, "price", INT_MAX);
  if (!(price >= 1.0 && price <= INT_MAX)) return lw_request_refuse(asked, "price: 1 or more is wanted");
  lw_status status = lw_request_advised(asked, (int)price, &search);
  if (status == LW_OK) put_found(asked->reply, search);
  return status;
}
