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

double lw_read_double(const char *string, char **end) {
  locale_t before;
  locale_t plain = enter_c_locale(&before);
  double value = strtod(string, end);
  leave_c_locale(plain, before);
  return value;
}

/* As much as fits of what is being put together, and how long all of it is. */
typedef struct line {
  char *out;
  size_t size, length;
} line;

static void put(line *l, const char *bytes, size_t count) {
  size_t room = l->length + 1 < l->size ? l->size - 1 - l->length : 0;
  if (room > 0) {
    memcpy(l->out + l->length, bytes, count < room ? count : room);
  }
  l->length += count;
}

/* Most of what is printed is words put together, %s and %.*s alone, which needs none of printf: without this
 * a garden bed's row is about 4 % dearer by its instructions, and what stands for it below is a change of
 * locale each. -1 where it is more than that. */
static int put_together(char *out, size_t size, const char *format, va_list arguments) {
  line l = {out, size, 0};
  for (const char *mark = strchr(format, '%'); mark != NULL; mark = strchr(format, '%')) {
    put(&l, format, (size_t)(mark - format));
    if (mark[1] == 's') {
      const char *words = va_arg(arguments, const char *);
      put(&l, words, strlen(words));
      format = mark + 2;
    } else if (strncmp(mark + 1, ".*s", 3) == 0) {
      int most = va_arg(arguments, int);
      const char *words = va_arg(arguments, const char *);
      put(&l, words, strnlen(words, (size_t)most));
      format = mark + 4;
    } else {
      return -1;
    }
  }
  put(&l, format, strlen(format));
  if (size > 0) {
    out[l.length < size ? l.length : size - 1] = '\0';
  }
  return (int)l.length;
}

int lw_print_list(char *out, size_t size, const char *format, va_list arguments) {
  va_list again;
  va_copy(again, arguments);
  int length = put_together(out, size, format, again);
  va_end(again);
  if (length >= 0) {
    return length;
  }
  locale_t before;
  locale_t plain = enter_c_locale(&before);
  length = vsnprintf(out, size, format, arguments);
  leave_c_locale(plain, before);
  return length;
}

int lw_print(char *out, size_t size, const char *format, ...) {
  va_list arguments;
  va_start(arguments, format);
  int length = lw_print_list(out, size, format, arguments);
  va_end(arguments);
  return length;
}
