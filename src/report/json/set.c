/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <string.h>

#include "set.h"
#include "report/page.h"

enum { DIGITS = 12, EXACT_DIGITS = 15, CLEAN_MAX = 1024 };

/* What could not be put in leaves a mark on what it belongs to, one reference too many: that needs no memory,
 * and lw_json_write finds it. */
static void mark_unless(bool well, json_t *holder) {
  if (!well) json_incref(holder);
}

void lw_json_put(json_t *object, const char *key, json_t *value) {
  mark_unless(json_object_set_new(object, key, value) == 0, object);
}

void lw_json_append(json_t *list, json_t *value) {
  mark_unless(json_array_append_new(list, value) == 0, list);
}

/* Adding 0 turns a negative zero into a plain one. */
bool lw_json_set_real(json_t *object, const char *key, lw_number number) {
  bool there = number.known && isfinite(number.value);
  lw_json_put(object, key, there ? json_real(number.value + 0.0) : json_null());
  return there;
}

bool lw_json_set_double(json_t *object, const char *key, double value) {
  return lw_json_set_real(object, key, (lw_number){value, true});
}

void lw_json_set_text(json_t *object, const char *key, const char *text) {
  char clean[CLEAN_MAX];
  lw_text_clean(text ? text : "", clean, sizeof clean);
  lw_json_put(object, key, json_string(clean));
}

void lw_json_set_flag(json_t *object, const char *key, bool flag) {
  lw_json_put(object, key, json_boolean(flag));
}

void lw_json_set_count(json_t *object, const char *key, int count) {
  lw_json_put(object, key, json_integer(count));
}

json_t *lw_json_list(json_t *object, const char *key) {
  lw_json_put(object, key, json_array());
  return json_object_get(object, key);
}

json_t *lw_json_object(json_t *object, const char *key) {
  lw_json_put(object, key, json_object());
  return json_object_get(object, key);
}

json_t *lw_json_entry(json_t *list) {
  size_t at = json_array_size(list);
  lw_json_append(list, json_object());
  return json_array_get(list, at);
}

static int add_bytes(const char *bytes, size_t count, void *out) {
  lw_text_add_bytes(out, bytes, count);
  return ((lw_text *)out)->failed ? -1 : 0;
}

/* Take the mark off a value; true, false and null are never counted. gives whether there was none */
static bool unmark(json_t *value) {
  bool whole = value->refcount == 1 || value->refcount == (size_t)-1;
  while (!whole && value->refcount > 1) json_decref(value);
  return whole;
}

static bool is_whole(json_t *value) {
  bool whole = unmark(value);
  const char *key;
  size_t at;
  json_t *inner;
  json_object_foreach(value, key, inner) whole = is_whole(inner) && whole;
  json_array_foreach(value, at, inner) whole = is_whole(inner) && whole;
  return whole;
}

static lw_status write_digits(json_t *root, int indent, int digits, lw_text *out) {
  size_t flags = JSON_REAL_PRECISION((size_t)digits) | (indent > 0 ? JSON_INDENT((size_t)indent) : 0);
  bool whole = root != NULL && is_whole(root);
  bool well = whole && json_dump_callback(root, add_bytes, out, flags) == 0;
  json_decref(root);
  lw_text_add(out, "\n");
  out->failed = out->failed || !well;
  return out->failed ? LW_NO_MEMORY : LW_OK;
}

lw_status lw_json_write(json_t *root, int indent, lw_text *out) {
  return write_digits(root, indent, DIGITS, out);
}

lw_status lw_json_write_exact(json_t *root, int indent, lw_text *out) {
  return write_digits(root, indent, EXACT_DIGITS, out);
}
