/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_JSON_SET_H
#define LOWWALL_REPORT_JSON_SET_H

#include <jansson.h>

#include <lowwall/report.h>

/* The doors through which all of our JSON goes. What finds no memory is remembered in what it belongs to. */
void lw_json_put(json_t *object, const char *key, json_t *value);
void lw_json_append(json_t *list, json_t *value);
/* The one way a number gets into our JSON: null when it is missing or not finite.
 * gives true when it is there */
bool lw_json_set_real(json_t *object, const char *key, lw_number number);
bool lw_json_set_double(json_t *object, const char *key, double value);
/* The one way a text gets in: what is not UTF-8 is cleaned. NULL stands for "". */
void lw_json_set_text(json_t *object, const char *key, const char *text);
void lw_json_set_flag(json_t *object, const char *key, bool flag);
void lw_json_set_count(json_t *object, const char *key, int count);
/* A new array or object under a key. */
json_t *lw_json_list(json_t *object, const char *key);
json_t *lw_json_object(json_t *object, const char *key);
/* A new object at the end of a list. */
json_t *lw_json_entry(json_t *list);
/* Write a value, and free it; exact: with every digit that a number has for certain. indent 0: one line.
 * gives LW_OK · LW_NO_MEMORY, and the text has failed, when any part of making or writing found none */
lw_status lw_json_write(json_t *root, int indent, lw_text *out);
lw_status lw_json_write_exact(json_t *root, int indent, lw_text *out);

#endif
