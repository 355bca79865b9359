/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <ctype.h>
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "validation.h"

/* Numbers are the same to one unit of the last printed digit: mathematics libraries may differ there. */

static bool begins_number(const char *from, const char *at) {
  bool inside_word = at > from && (isalnum((unsigned char)at[-1]) || at[-1] == '.');
  return isdigit((unsigned char)*at) && !inside_word;
}

static size_t number_length(const char *at) {
  return strspn(at, "0123456789.e");
}

static double last_digit(const char *at, size_t length) {
  const char *point = memchr(at, '.', length);
  return point == NULL ? 1.0 : pow(10.0, -(double)(length - 1 - (size_t)(point - at)));
}

static bool same_number(const char *a, size_t na, const char *b, size_t nb) {
  double x, y;
  if (na == nb && memcmp(a, b, na) == 0) return true;
  if (!lw_number_read(a, na, &x) || !lw_number_read(b, nb, &y)) return false;
  return fabs(x - y) <= 1.001 * fmax(last_digit(a, na), last_digit(b, nb)) && memchr(a, '.', na) != NULL;
}

/* Where two texts part, or NULL. */
static const char *parts_at(const char *a, const char *b) {
  for (const char *from_a = a, *from_b = b; *a != '\0' || *b != '\0';) {
    if (begins_number(from_a, a) && begins_number(from_b, b)) {
      size_t na = number_length(a), nb = number_length(b);
      if (!same_number(a, na, b, nb)) return a;
      a += na;
      b += nb;
    } else if (*a++ != *b++) {
      return a - 1;
    }
  }
  return NULL;
}

Test(handbook, validated_compares) {
  cr_expect_null(parts_at("ours 1.2345 kPa, -0.01 %", "ours 1.2346 kPa, -0.02 %"));
  cr_expect_not_null(parts_at("ours 1.2345 kPa", "ours 1.2347 kPa"));
  cr_expect_not_null(parts_at("12 rows", "13 rows"));
  cr_expect_not_null(parts_at("ours", "ours 1"));
  cr_expect_not_null(parts_at("t1-das/06", "t1-das/07"));
}

/* docs/validation.md is what `make validation` would write now. */
Test(handbook, validated) {
  lw_text now = {0}, held = {0};
  char part[4096];
  FILE *in = fopen("docs/validation.md", "rb");
  cr_assert_not_null(in);
  for (size_t got; (got = fread(part, 1, sizeof part, in)) > 0;) lw_text_add_bytes(&held, part, got);
  fclose(in);
  validation_write(&now);
  cr_assert(!now.failed && !held.failed && now.length > 100000);
  const char *at = parts_at(held.data, now.data);
  cr_expect_null(at, "docs/validation.md is another from here on: %.200s", at);
  lw_text_free(&now);
  lw_text_free(&held);
}
