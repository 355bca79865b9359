/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "replies.h"

/* Sheets themselves: one to begin with, one changed, and what a sheet may hold. */

lw_status lw_reply_start(lw_request *asked) {
  lw_text sheet = {0};
  lw_status status = lw_sheet_start(lw_request_text_of(asked, "kind"), &sheet);
  if (status == LW_NO_SOLUTION) return lw_request_refuse(asked, "kind: bed, ground or section is wanted");
  lw_reply_put(asked->reply, "sheet", &sheet);
  return status;
}

lw_status lw_reply_sheet(lw_request *asked) {
  lw_case c;
  lw_status status = lw_request_read(asked, &c);
  if (status == LW_OK) lw_reply_put_sheet(asked->reply, &c);
  return status;
}

static void put_words(json_t *entry, const lw_item *item) {
  char word[LW_WORDS_MAX];
  json_t *list = lw_json_list(entry, "words");
  for (int i = 0; lw_item_word(item, i, word, sizeof word)[0] != '\0'; i++)
    lw_json_append(list, json_string(word));
}

lw_status lw_reply_items(lw_request *asked) {
  json_t *list = lw_json_list(asked->reply, "items");
  for (size_t i = 0; i < lw_item_count(); i++) {
    const lw_item *item = lw_item_at(i);
    json_t *entry = lw_json_entry(list);
    lw_json_set_text(entry, "part", lw_item_part_words(item->part));
    lw_json_set_text(entry, "name", item->name);
    lw_json_set_text(entry, "means", item->means);
    lw_json_set_text(entry, "example", item->example);
    lw_json_set_text(entry, "unit", item->unit);
    lw_json_set_count(entry, "repeats", item->repeats);
    if (item->type == LW_ITEM_CHOICE) put_words(entry, item);
  }
  return LW_OK;
}
