/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "request.h"

#include <stdarg.h>
#include <string.h>

#include "base/print.h"

const char *lw_request_text_of(const lw_request *asked, const char *key) {
  const char *text = json_string_value(json_object_get(asked->request, key));
  return text ? text : "";
}

double lw_request_number_of(const lw_request *asked, const char *key, double otherwise) {
  const json_t *value = json_object_get(asked->request, key);
  return json_is_number(value) ? json_number_value(value) : otherwise;
}

lw_status lw_request_refuse(lw_request *asked, const char *format, ...) {
  va_list arguments;
  va_start(arguments, format);
  lw_print_list(asked->error.text, sizeof asked->error.text, format, arguments);
  va_end(arguments);
  asked->error.status = LW_FAULTS;
  return LW_FAULTS;
}

static lw_status set_items(lw_request *asked, lw_case *c) {
  const json_t *list = json_object_get(asked->request, "set");
  size_t at;
  json_t *item;
  json_array_foreach(list, at, item) {
    if (!json_is_string(item)) return lw_request_refuse(asked, "set: items as texts are wanted");
    (void)lw_sheet_override(json_string_value(item), (int)at + 1, c, &asked->faults);
  }
  return asked->faults.count > 0 ? LW_FAULTS : LW_OK;
}

lw_status lw_request_read(lw_request *asked, lw_case *c) {
  const json_t *sheet = json_object_get(asked->request, "sheet");
  if (!json_is_string(sheet)) return lw_request_refuse(asked, "sheet: the text of a sheet is wanted");
  const char *bytes = json_string_value(sheet);
  size_t length = json_string_length(sheet);
  if (lw_sheet_is_schedule(bytes, length))
    return lw_request_refuse(asked, "This is a schedule of many walls: one wall at a time is wanted here.");
  *c = (lw_case){0};
  lw_status status = length > 0 ? lw_sheet_read(bytes, length, c, &asked->faults) : LW_OK;
  return status == LW_OK ? set_items(asked, c) : status;
}

void lw_reply_put(json_t *object, const char *key, lw_text *text) {
  json_t *value = text->failed ? NULL : json_stringn(text->data ? text->data : "", text->length);
  lw_json_put(object, key, value);
  lw_text_free(text);
}

void lw_reply_put_sheet(json_t *object, const lw_case *c) {
  lw_text sheet = {0};
  lw_sheet_write(c, false, &sheet);
  lw_reply_put(object, "sheet", &sheet);
}
