/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "utf8.h"

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
