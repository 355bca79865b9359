/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/base.h>

#include <math.h>
#include <stdint.h>
#include <string.h>

#include "print.h"

/* Both the integer of up to 15 digits and the power up to 10^22 are exact doubles, so that one
 * multiplication or division rounds once, as the standard asks. */
static const double powers_of_ten[] = {1e0,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,  1e8,  1e9,  1e10, 1e11,
                                       1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};

enum { EXACT_DIGITS = 15, EXACT_POWER = 22, DIGITS_THAT_MATTER = 768, EXPONENT_LIMIT = 100000 };

/* A number taken apart: mantissa x 10^exponent, the mantissa good while `digits` is small. */
typedef struct parts {
  bool negative;
  int digits;        /* significant ones: leading zeros do not count */
  uint64_t mantissa; /* of the first EXACT_DIGITS digits */
  int exponent;      /* after all digits */
} parts;

static bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

static void take_digit(parts *p, char c, bool after_point) {
  if (p->digits > 0 || c != '0') {
    p->digits++;
  }
  if (p->digits <= EXACT_DIGITS) {
    p->mantissa = p->mantissa * 10 + (uint64_t)(c - '0');
  }
  p->exponent -= after_point ? 1 : 0;
}

/* The exponent behind `e`; the index past it, or 0 when there is none. */
static size_t take_exponent(const char *bytes, size_t length, size_t i, parts *p) {
  bool negative = i < length && bytes[i] == '-';
  i += i < length && (bytes[i] == '-' || bytes[i] == '+') ? 1 : 0;
  if (i >= length || !is_digit(bytes[i])) {
    return 0;
  }
  int exponent = 0;
  for (; i < length && is_digit(bytes[i]); i++) {
    exponent = exponent < EXPONENT_LIMIT ? exponent * 10 + (bytes[i] - '0') : exponent;
  }
  p->exponent += negative ? -exponent : exponent;
  return i;
}

static bool take_apart(const char *bytes, size_t length, parts *p) {
  size_t i = 0;
  bool point = false;
  int seen = 0;
  if (i < length && (bytes[i] == '-' || bytes[i] == '+')) {
    p->negative = bytes[i++] == '-';
  }
  for (; i < length && (is_digit(bytes[i]) || (bytes[i] == '.' && !point)); i++) {
    if (bytes[i] == '.') {
      point = true;
    } else {
      take_digit(p, bytes[i], point);
      seen++;
    }
  }
  if (seen == 0) {
    return false;
  }
  if (i < length && (bytes[i] == 'e' || bytes[i] == 'E')) {
    i = take_exponent(bytes, length, i + 1, p);
  }
  return i == length;
}

/* The rare rest, by the C library. Digits past those that can matter are left out, all but their being
 * there, so that a cell of any length is read with a bounded buffer. */
static double read_long(const char *bytes, size_t length, const parts *p) {
  char copy[DIGITS_THAT_MATTER + 32];
  size_t used = 0;
  int significant = 0;
  copy[used++] = p->negative ? '-' : '+';
  for (size_t i = 0; i < length && bytes[i] != 'e' && bytes[i] != 'E'; i++) {
    if (!is_digit(bytes[i]) || (significant == 0 && bytes[i] == '0')) {
      continue;
    }
    if (++significant <= DIGITS_THAT_MATTER) {
      copy[used++] = bytes[i];
    }
  }
  int left_out = significant > DIGITS_THAT_MATTER ? significant - DIGITS_THAT_MATTER : 0;
  if (left_out > 0) {
    copy[used++] = '1';
    left_out--;
  }
  lw_print(copy + used, sizeof copy - used, "e%d", p->exponent + left_out);
  return lw_read_double(copy, NULL);
}

bool lw_number_read(const char *bytes, size_t length, double *value) {
  parts p = {0};
  if (!take_apart(bytes, length, &p)) {
    return false;
  }
  double read = (double)p.mantissa;
  if (p.digits > EXACT_DIGITS || p.exponent > EXACT_POWER || p.exponent < -EXACT_POWER) {
    read = p.digits == 0 ? 0.0 : read_long(bytes, length, &p);
  } else {
    read = p.exponent < 0 ? read / powers_of_ten[-p.exponent] : read * powers_of_ten[p.exponent];
    read = p.negative ? -read : read;
  }
  if (!isfinite(read)) {
    return false;
  }
  *value = read;
  return true;
}

/* Digits of a whole number with the point put in; the length. */
static size_t write_fixed(char *out, uint64_t whole, int decimals, bool negative) {
  char reversed[32];
  size_t count = 0;
  for (int place = 0; whole > 0 || place <= decimals; place++) {
    if (place == decimals && decimals > 0) {
      reversed[count++] = '.';
    }
    reversed[count++] = (char)('0' + whole % 10);
    whole /= 10;
  }
  if (negative) {
    reversed[count++] = '-';
  }
  for (size_t i = 0; i < count; i++) {
    out[i] = reversed[count - 1 - i];
  }
  out[count] = '\0';
  return count;
}

/* `-0.00` says nothing that `0.00` does not. */
static void drop_sign_of_zero(char *text) {
  if (text[0] == '-' && strspn(text + 1, "0.") == strlen(text + 1)) {
    memmove(text, text + 1, strlen(text));
  }
}

static size_t copy_out(char *out, size_t size, const char *text) {
  int length = lw_print(out, size, "%s", text);
  return size == 0 ? 0 : (size_t)length < size ? (size_t)length : size - 1;
}

size_t lw_number_print(char *out, size_t size, double value, int decimals) {
  decimals = decimals < 0 ? 0 : decimals > 9 ? 9 : decimals;
  if (!isfinite(value)) {
    return copy_out(out, size, "n/a");
  }
  double scaled = fabs(value) * powers_of_ten[decimals];
  double rounded = floor(scaled + 0.5);
  /* By the C library alone a garden bed's row is about 14 % dearer. Near a half the product's own rounding
   * could decide; there it does. */
  if (scaled < 1e12 && fabs(fabs(scaled - rounded) - 0.5) > 1e-3) {
    char fast[40];
    size_t length = write_fixed(fast, (uint64_t)rounded, decimals, value < 0 && rounded > 0);
    if (length < size) {
      memcpy(out, fast, length + 1);
      return length;
    }
    return copy_out(out, size, fast);
  }
  char slow[400];
  lw_print(slow, sizeof slow, "%.*f", decimals, value);
  drop_sign_of_zero(slow);
  return copy_out(out, size, slow);
}
