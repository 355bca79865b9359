/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _POSIX_C_SOURCE 200809L
#include "print.h"

#include <locale.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#ifdef __APPLE__
#include <xlocale.h>
#endif

#include <lowwall/base.h>

/* The C locale costs nothing to make: the C library hands out its built-in one. */
static locale_t enter_c_locale(locale_t *before) {
  locale_t plain = newlocale(LC_ALL_MASK, "C", (locale_t)0);
  *before = plain == (locale_t)0 ? (locale_t)0 : uselocale(plain);
  return plain;
}

static void leave_c_locale(locale_t plain, locale_t before) {
  if (plain != (locale_t)0) {
    uselocale(before);
    freelocale(plain);
  }
}

int lw_print_list(char *out, size_t size, const char *format, va_list arguments) {
  locale_t before;
  locale_t plain = enter_c_locale(&before);
  int length = vsnprintf(out, size, format, arguments);
  leave_c_locale(plain, before);
  return length;
}

double lw_read_double(const char *string, char **end) {
  locale_t before;
  locale_t plain = enter_c_locale(&before);
  double value = strtod(string, end);
  leave_c_locale(plain, before);
  return value;
}

/* What a string alone needs of snprintf, which is most of what verdicts print. */
static int copy(char *out, size_t size, const char *words) {
  size_t length = strlen(words), kept = length < size ? length : size - 1;
  if (size > 0) {
    memcpy(out, words, kept);
    out[kept] = '\0';
  }
  return (int)length;
}

int lw_print(char *out, size_t size, const char *format, ...) {
  va_list arguments;
  va_start(arguments, format);
  bool plain = strcmp(format, "%s") == 0;
  int length = plain ? copy(out, size, va_arg(arguments, const char *))
                     : lw_print_list(out, size, format, arguments);
  va_end(arguments);
  return length;
}
