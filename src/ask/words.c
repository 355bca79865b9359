/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "words.h"

#include <string.h>

#include "base/amounts.h"

/* " (10 ft)" and the like: how long it is; 0: none stands there. */
static size_t us_in_brackets(const char *at) {
  const char *end = strncmp(at, " (", 2) == 0 ? strchr(at, ')') : NULL;
  if (end == NULL || end - at < 6) return 0;
  bool us = strncmp(end - 3, " in", 3) == 0 || strncmp(end - 3, " ft", 3) == 0;
  return us ? (size_t)(end - at) + 1 : 0;
}

static void metric_only(const char *words, char *out, size_t size) {
  size_t used = 0;
  while (*words != '\0' && used + 1 < size) {
    size_t left_out = us_in_brackets(words);
    words += left_out;
    if (left_out == 0) out[used++] = *words++;
  }
  out[used] = '\0';
}

const char *lw_ask_said(lw_units units, const char *words, char *out, size_t size) {
  if (units == LW_UNITS_US) return lw_amounts_told(units, words, out, size);
  metric_only(words, out, size);
  return out;
}
