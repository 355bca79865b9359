/* SPDX-License-Identifier: GPL-3.0-or-later */
/* By the definition of UTF-8, RFC 3629: the shortest form of U+0000 to U+10FFFF, surrogates left out. */
#include "base/utf8.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <string.h>

#include <lowwall/base.h>

static size_t written(unsigned long code, unsigned char out[4]) {
  size_t length = code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
  static const unsigned char head[] = {0, 0, 0xC0, 0xE0, 0xF0};
  for (size_t i = length - 1; i > 0; i--, code >>= 6) out[i] = (unsigned char)(0x80 | (code & 0x3F));
  out[0] = (unsigned char)(head[length] | code);
  return length;
}

Test(utf8, every_character_has_the_length_it_is_written_with) {
  for (unsigned long code = 0; code <= 0x10FFFF; code += code < 0x3000 ? 1 : 61) {
    unsigned char bytes[4];
    size_t length = written(code, bytes);
    bool surrogate = code >= 0xD800 && code <= 0xDFFF;
    cr_assert_eq(lw_utf8_length(bytes, length), surrogate ? 0 : length, "U+%04lX", code);
    if (length > 1) cr_assert_eq(lw_utf8_length(bytes, length - 1), 0, "U+%04lX cut short", code);
  }
}

Test(utf8, what_is_no_character_is_seen) {
  static const char *const none[] = {"\x80",         "\xBF",         "\xC0\xAF",         "\xC1\xBF",
                                     "\xC3(",        "\xE0\x9F\xBF", "\xED\xA0\x80",     "\xF0\x8F\xBF\xBF",
                                     "\xE2\x82(",    "\xFF",         "\xF4\x90\x80\x80", "\xF5\x80\x80\x80",
                                     "\xF0\x9F\x8C("};
  for (size_t i = 0; i < sizeof none / sizeof *none; i++) {
    cr_expect_eq(lw_utf8_length((const unsigned char *)none[i], strlen(none[i])), 0, "%zu", i);
    cr_expect_not(lw_is_utf8(none[i], strlen(none[i])), "%zu", i);
  }
  cr_expect(lw_is_utf8("bed, 2 m\xC2\xB2, \xE2\x82\xAC", 15));
  cr_expect(lw_is_utf8("", 0));
}

/* What no terminal, drawing or page may be handed: commands, no characters, turns of the writing. */
static bool is_wild(unsigned long code) {
  return (code >= 0x80 && code < 0xA0) || (code & 0xFFFE) == 0xFFFE || (code >= 0xFDD0 && code <= 0xFDEF) ||
         (code >= 0x202A && code <= 0x202E) || (code >= 0x2066 && code <= 0x2069) || code == 0x2028 ||
         code == 0x2029;
}

Test(utf8, every_character_is_tamed_or_stays_as_it_is) {
  for (unsigned long code = 0x20; code <= 0x10FFFF; code += code < 0x3000 || code > 0xFFF0 ? 1 : 7) {
    if ((code >= 0xD800 && code <= 0xDFFF) || code == 0x7F) continue;
    if (code == 0x1FFF0) code = 0x10FFF0; /* the planes end alike */
    unsigned char bytes[4];
    char text[16], tamed[16];
    lw_print(text, sizeof text, "a%.*sb", (int)written(code, bytes), (const char *)bytes);
    memcpy(tamed, text, sizeof text);
    lw_utf8_tame(tamed);
    bool blank = code == 0xA0 || code == 0x2007 || code == 0x202F;
    cr_assert(lw_is_utf8(tamed, strlen(tamed)) && strlen(tamed) <= strlen(text), "U+%04lX", code);
    cr_assert_eq(strcmp(tamed, text) == 0, !is_wild(code) && !blank, "U+%04lX: %s", code, tamed);
    if (blank) cr_assert(strcmp(tamed, "a b") == 0, "U+%04lX", code);
  }
  char broken[] = "a\xFF\xC3(b";
  lw_utf8_tame(broken);
  cr_expect(strcmp(broken, "a??"
                           "(b") == 0,
            "%s", broken);
}
