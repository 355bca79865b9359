/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "units_told.h"

#include <criterion/criterion.h>

#include <ctype.h>
#include <string.h>

enum { SHOWN_MAX = 12 };

static const char *const METRIC[] = {"L",     "m",          "mm",          "cm",  "m2",    "m3",    "m4",
                                     "m2/m",  "m3/m",       "m4/m",        "kPa", "kN",    "kN/m",  "kN/m2",
                                     "kN/m3", "kNm",        "kNm/m",       "kg",  "kg/m3", "litre", "litres",
                                     "metre", "metres",     "kPa/m",       "mm2", "t/m3",  "N/mm2", "m/s",
                                     "MPa",   "millimetre", "millimetres", NULL};
static const char *const US[] = {"ft",       "lb",     "psf",    "pcf",    "lb/ft",  "kip/ft", "ft-lb",
                                 "ft-lb/ft", "ft2",    "ft3",    "yd3",    "inches", "inch",   "feet",
                                 "lbs",      "psf/ft", "ft2/ft", "ft3/ft", "ft4/ft", NULL};

static bool is_one_of(const char *word, size_t length, const char *const *all) {
  for (int i = 0; all[i] != NULL; i++)
    if (strlen(all[i]) == length && strncmp(all[i], word, length) == 0) return true;
  return false;
}

/* A word without the marks around it and the figure that may stand before it: "300mm)," is mm. */
static bool speaks(const char *word, size_t length, const char *const *all) {
  while (length > 0 && (ispunct((unsigned char)word[0]) || isdigit((unsigned char)word[0]))) {
    word++;
    length--;
  }
  while (length > 0 && ispunct((unsigned char)word[length - 1])) length--;
  return is_one_of(word, length, all);
}

/* Some are a unit after a number only: L is a length in formulas, and a name is no unit where a number
 * is put in for it, "m = 0.6". */
static bool is_symbol(const char *word, size_t length, const char *text) {
  bool after = word - text >= 2 && word[-1] == ' ' && isdigit((unsigned char)word[-2]);
  bool put_in = strncmp(word + length, " = ", 3) == 0;
  return (word[0] == 'L' || put_in) && !after;
}

/* Past a source or words that somebody else wrote; what is no such thing is where it was. */
static const char *past_quoted(const char *at, const char *end) {
  char close = *at == '[' ? ']' : *at == '"' ? '"' : '\0';
  const char *stop = close != '\0' ? memchr(at + 1, close, (size_t)(end - at - 1)) : NULL;
  bool source =
      *at != '[' || (at + 2 < end && isupper((unsigned char)at[1]) && isupper((unsigned char)at[2]));
  return stop != NULL && source ? stop + 1 : at;
}

static void tell(const char *name, const char *text, const char *at, const char *end) {
  static int shown;
  const char *from = at, *to = at;
  while (from > text && from[-1] != '\n') from--;
  while (to < end && *to != '\n') to++;
  if (shown++ < SHOWN_MAX) cr_expect(false, "%s: another system's unit: %.*s", name, (int)(to - from), from);
}

void units_told_hold(const char *name, const char *text, size_t length, lw_units units) {
  const char *const *others = units == LW_UNITS_US ? METRIC : US;
  for (const char *at = text, *end = text + length; at < end;) {
    const char *past = past_quoted(at, end);
    if (past > at) {
      at = past;
      continue;
    }
    size_t word = 0;
    while (at + word < end && !isspace((unsigned char)at[word]) && past_quoted(at + word, end) == at + word)
      word++;
    if (speaks(at, word, others) && !is_symbol(at, word, text)) tell(name, text, at, end);
    at += word > 0 ? word : 1;
  }
}
