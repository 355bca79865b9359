/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>
#include <stdlib.h>
#include <string.h>

#include "../sheet/support.h"

static json_t *answer(lw_page_kept *kept, const char *request) {
  lw_text out = {0};
  json_error_t fault;
  cr_assert_eq(lw_page_answer(sheet_test_tables(), kept, request, strlen(request), &out), LW_OK);
  json_t *reply = json_loadb(out.data, out.length, 0, &fault);
  cr_assert(reply != NULL, "no JSON: %s in %.300s", fault.text, out.data);
  cr_assert(json_is_boolean(json_object_get(reply, "ok")));
  lw_text_free(&out);
  return reply;
}

json_t *page_test_answer(const char *request) {
  return answer(NULL, request);
}

json_t *page_test_ask(json_t *request) {
  return page_test_ask_kept(NULL, request);
}

json_t *page_test_ask_kept(lw_page_kept *kept, json_t *request) {
  char *text = json_dumps(request, 0);
  cr_assert(text != NULL);
  json_t *reply = answer(kept, text);
  free(text);
  json_decref(request);
  return reply;
}

const char *page_test_sheet(const char *path) {
  static char sheet[65536];
  lw_text text = sheet_test_file(path);
  cr_assert(text.length > 0 && text.length < sizeof sheet, "%s", path);
  memcpy(sheet, text.data, text.length + 1);
  lw_text_free(&text);
  return sheet;
}

bool page_test_ok(const json_t *reply) {
  return json_is_true(json_object_get(reply, "ok"));
}

const char *page_test_text(const json_t *reply, const char *key) {
  const char *text = json_string_value(json_object_get(reply, key));
  return text ? text : "";
}
