/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "entry.h"

/* Fractions of an inch, as a tape and a block's size have them: "5/8", "7 5/8", "7-5/8", and the signs that a
 * spreadsheet makes of them. */

static const struct {
  const char *sign;
  double value;
} VULGAR[] = {
    {"\xC2\xBC", 0.25},      {"\xC2\xBD", 0.5},       {"\xC2\xBE", 0.75},      {"\xE2\x85\x9B", 0.125},
    {"\xE2\x85\x9C", 0.375}, {"\xE2\x85\x9D", 0.625}, {"\xE2\x85\x9E", 0.875},
};

size_t lw_vulgar(const char *text, double *value) {
  for (size_t i = 0; i < sizeof VULGAR / sizeof *VULGAR; i++) {
    size_t length = strlen(VULGAR[i].sign);
    if (strncmp(text, VULGAR[i].sign, length) != 0) continue;
    if (value != NULL) *value = VULGAR[i].value;
    return length;
  }
  return 0;
}

/* A few digits; their length, or 0. */
static size_t whole(const char *text, double *value) {
  enum { DIGITS_MOST = 6 };
  size_t length = strspn(text, "0123456789");
  if (length == 0 || length > DIGITS_MOST || !lw_number_read(text, length, value)) return 0;
  return length;
}

/* "5/8" */
static size_t proper(const char *text, double *value) {
  double top, bottom;
  size_t first = whole(text, &top);
  if (first == 0 || text[first] != '/') return lw_vulgar(text, value);
  size_t second = whole(text + first + 1, &bottom);
  if (second == 0 || !(bottom > 0.0)) return 0;
  *value = top / bottom;
  return first + 1 + second;
}

/* "7-5/8" */
static size_t mixed(const char *text, double *value) {
  double inches = 0.0, part = 0.0;
  size_t length = proper(text, value);
  if (length > 0) return length;
  size_t first = whole(text, &inches);
  if (first == 0) return 0;
  size_t gap = text[first] == '-' ? 1 : strspn(text + first, " ");
  size_t second = proper(text + first + gap, &part);
  bool joined = gap == 0 && lw_vulgar(text + first, NULL) == 0;
  if (second == 0 || joined || !(part < 1.0)) return 0;
  *value = inches + part;
  return first + gap + second;
}

size_t lw_fraction(const char *text, double *value) {
  size_t minus = text[0] == '-' ? 1 : 0, length = mixed(text + minus, value);
  if (length > 0 && minus > 0) *value = -*value;
  return length > 0 ? minus + length : 0;
}
