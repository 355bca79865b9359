/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/base.h>

#include <criterion/criterion.h>

#include <string.h>

#include "base/hash.h"

static const char *hash_of(const char *text, size_t repeat, char *hex) {
  lw_hash hash;
  lw_hash_start(&hash);
  for (size_t i = 0; i < repeat; i++) lw_hash_add(&hash, text, strlen(text));
  lw_hash_end(&hash, hex);
  return hex;
}

/* The examples that go with [FIPS180-4], from memory; the digests agree with a common tool's. */
Test(base, a_hash_is_that_of_the_standard) {
  static const struct {
    const char *text;
    size_t repeat;
    const char *hex;
  } rows[] = {
      {"abc", 1, "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"},
      {"", 1, "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"},
      {"abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq", 1,
       "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"},
      {"a", 1000000, "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"},
  };
  char hex[LW_HASH_HEX];
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
    cr_expect_str_eq(hash_of(rows[i].text, rows[i].repeat, hex), rows[i].hex);
}

/* Lengths around the ends of a block, whole and byte by byte. */
Test(base, a_hash_does_not_depend_on_how_the_bytes_came) {
  char text[200], whole[LW_HASH_HEX], pieces[LW_HASH_HEX];
  for (size_t length = 0; length < sizeof text; length++) {
    lw_hash hash;
    memset(text, 'x', sizeof text);
    text[length] = '\0';
    hash_of(text, 1, whole);
    lw_hash_start(&hash);
    for (size_t i = 0; i < length; i++) lw_hash_add(&hash, text + i, 1);
    lw_hash_end(&hash, pieces);
    cr_expect_str_eq(whole, pieces, "%zu bytes", length);
  }
}
