/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <jansson.h>

#include "fuzz.h"
#include "page/core.h"

/* What the page might be made to ask: any bytes as a request, and any bytes as a sheet in one. */

static void expect_answer(const char *request, size_t length) {
  lw_text out = {0};
  FUZZ_EXPECT(lw_page_answer(fuzz_tables(), NULL, request, length, &out) == LW_OK);
  json_t *reply = json_loadb(out.data, out.length, 0, NULL);
  FUZZ_EXPECT(json_is_object(reply) && json_is_boolean(json_object_get(reply, "ok")));
  json_decref(reply);
  lw_text_free(&out);
}

/* One thing an input: each runs the wall. What runs it many times is left to tests/fuzz/reports.c. */
static void ask_of_sheet(const char *bytes, size_t count) {
  static const char *const DOES[] = {"check", "sheet", "order", "pegs", "answer", "take-back"};
  const char *what = DOES[count % (sizeof DOES / sizeof *DOES)];
  json_t *sheet = json_stringn(bytes, count);
  if (!sheet) return; /* no UTF-8 */
  json_t *request =
      json_pack("{s:s,s:o,s:s,s:s}", "do", what, "sheet", sheet, "key", "height", "answer", "300; 0");
  char *text = request ? json_dumps(request, 0) : NULL;
  FUZZ_EXPECT(text != NULL);
  expect_answer(text, strlen(text));
  free(text);
  json_decref(request);
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count) {
  const char *text = (const char *)bytes;
  expect_answer(text, count);
  ask_of_sheet(text, count);
  return 0;
}
