/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "json.h"

#include <math.h>
#include <string.h>

enum { DIGITS = 12, CLEAN_MAX = 1024 };

/* Adding 0 turns a negative zero into a plain one. */
bool lw_json_set_real(json_t *object, const char *key, lw_number number) {
  bool there = number.known && isfinite(number.value);
  json_object_set_new(object, key, there ? json_real(number.value + 0.0) : json_null());
  return there;
}

bool lw_json_set_double(json_t *object, const char *key, double value) {
  return lw_json_set_real(object, key, (lw_number){value, true});
}

void lw_json_set_text(json_t *object, const char *key, const char *text) {
  char clean[CLEAN_MAX];
  lw_text_clean(text ? text : "", clean, sizeof clean);
  json_object_set_new(object, key, json_string(clean));
}

void lw_json_set_flag(json_t *object, const char *key, bool flag) {
  json_object_set_new(object, key, json_boolean(flag));
}

void lw_json_set_count(json_t *object, const char *key, int count) {
  json_object_set_new(object, key, json_integer(count));
}

json_t *lw_json_list(json_t *object, const char *key) {
  json_t *list = json_array();
  return json_object_set_new(object, key, list) == 0 ? list : NULL;
}

json_t *lw_json_object(json_t *object, const char *key) {
  json_t *inner = json_object();
  return json_object_set_new(object, key, inner) == 0 ? inner : NULL;
}

json_t *lw_json_entry(json_t *list) {
  json_t *entry = json_object();
  return json_array_append_new(list, entry) == 0 ? entry : NULL;
}

static int add_bytes(const char *bytes, size_t count, void *out) {
  lw_text_add_bytes(out, bytes, count);
  return ((lw_text *)out)->failed ? -1 : 0;
}

lw_status lw_json_write(json_t *root, int indent, lw_text *out) {
  size_t flags = JSON_REAL_PRECISION(DIGITS) | (indent > 0 ? JSON_INDENT((size_t)indent) : 0);
  int failed = root == NULL ? -1 : json_dump_callback(root, add_bytes, out, flags);
  json_decref(root);
  lw_text_add(out, "\n");
  return failed != 0 || out->failed ? LW_NO_MEMORY : LW_OK;
}
