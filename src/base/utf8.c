/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "utf8.h"

#include <stdint.h>
#include <string.h>

static size_t length_by_first(unsigned char first) {
  if (first < 0x80) {
    return 1;
  }
  if (first < 0xC2 || first > 0xF4) {
    return 0;
  }
  return first < 0xE0 ? 2 : first < 0xF0 ? 3 : 4;
}

size_t lw_utf8_length(const unsigned char *at, size_t left) {
  size_t length = length_by_first(at[0]);
  if (length > left) {
    return 0;
  }
  for (size_t i = 1; i < length; i++) {
    if ((at[i] & 0xC0) != 0x80) {
      return 0;
    }
  }
  bool overlong = (at[0] == 0xE0 && at[1] < 0xA0) || (at[0] == 0xF0 && at[1] < 0x90);
  bool beyond = (at[0] == 0xED && at[1] >= 0xA0) || (at[0] == 0xF4 && at[1] >= 0x90);
  return overlong || beyond ? 0 : length;
}

bool lw_is_utf8(const char *text, size_t length) {
  const unsigned char *at = (const unsigned char *)text;
  size_t i = 0;
  while (i < length) {
    size_t step = lw_utf8_length(at + i, length - i);
    if (step == 0) {
      return false;
    }
    i += step;
  }
  return true;
}

/* The character of a sequence that lw_utf8_length took for good. */
static uint32_t character(const unsigned char *at, size_t length) {
  uint32_t value = length == 1 ? at[0] : at[0] & (0x7Fu >> length);
  for (size_t i = 1; i < length; i++) {
    value = value << 6 | (at[i] & 0x3Fu);
  }
  return value;
}

/* Ends of lines, and blanks that only say where no line may end. */
static bool is_blank(uint32_t c) {
  return c == 0x85 || c == 0x2028 || c == 0x2029 || c == 0xA0 || c == 0x2007 || c == 0x202F;
}

/* What a terminal takes for a command. */
static bool controls(uint32_t c) {
  return c >= 0x80 && c < 0xA0;
}

/* They would turn around what stands behind the text as well. */
static bool turns_around(uint32_t c) {
  return (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
}

/* No characters at all, and so none of XML. */
static bool is_none(uint32_t c) {
  return (c & 0xFFFEu) == 0xFFFEu || (c >= 0xFDD0 && c <= 0xFDEF);
}

void lw_utf8_tame_ascii(char *text, char instead) {
  for (; *text != '\0'; text++) {
    *text = (unsigned char)*text < 0x20 || *text == 0x7F ? instead : *text;
  }
}

void lw_utf8_tame(char *text) {
  unsigned char *from = (unsigned char *)text, *to = from;
  size_t left = strlen(text);
  while (left > 0) {
    size_t length = lw_utf8_length(from, left), step = length > 0 ? length : 1;
    uint32_t c = length > 0 ? character(from, length) : 0xFFFE;
    if (is_blank(c)) {
      *to++ = ' ';
    } else if (controls(c) || is_none(c)) {
      *to++ = '?';
    } else if (!turns_around(c)) {
      memmove(to, from, step);
      to += step;
    }
    from += step;
    left -= step;
  }
  *to = '\0';
}

bool lw_utf8_is_plain(const char *text, size_t length) {
  size_t i = 0;
  while (i < length && text[i] >= 0x20 && text[i] < 0x7F) {
    i++;
  }
  return i == length;
}
