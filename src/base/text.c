/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "text.h"

#include <lowwall/base.h>

#include <stdlib.h>
#include <string.h>

#include "print.h"

/* Room for count more bytes and the NUL; false once the text has failed. */
static bool make_room(lw_text *text, size_t count) {
  if (text->failed || count >= LW_TEXT_CEILING || text->length + count >= LW_TEXT_CEILING) {
    text->failed = true;
    return false;
  }
  size_t needed = text->length + count + 1;
  if (needed <= text->capacity) {
    return true;
  }
  size_t capacity = text->capacity < 256 ? 256 : text->capacity * 2;
  capacity = capacity < needed ? needed : capacity;
  char *data = realloc(text->data, capacity);
  if (data == NULL) {
    text->failed = true;
    return false;
  }
  text->data = data;
  text->capacity = capacity;
  return true;
}

void lw_text_add_bytes(lw_text *text, const char *bytes, size_t count) {
  if (!make_room(text, count)) {
    return;
  }
  if (count > 0) {
    memcpy(text->data + text->length, bytes, count);
  }
  text->length += count;
  text->data[text->length] = '\0';
}

void lw_text_add(lw_text *text, const char *string) {
  lw_text_add_bytes(text, string, strlen(string));
}

void lw_text_addf(lw_text *text, const char *format, ...) {
  va_list arguments;
  va_start(arguments, format);
  va_list again;
  va_copy(again, arguments);
  char shortest[256];
  int length = lw_print_list(shortest, sizeof shortest, format, arguments);
  if (length < 0) {
    text->failed = true;
  } else if ((size_t)length < sizeof shortest) {
    lw_text_add_bytes(text, shortest, (size_t)length);
  } else if (make_room(text, (size_t)length)) {
    lw_print_list(text->data + text->length, (size_t)length + 1, format, again);
    text->length += (size_t)length;
  }
  va_end(again);
  va_end(arguments);
}

void lw_text_clear(lw_text *text) {
  text->length = 0;
  if (text->data != NULL) {
    text->data[0] = '\0';
  }
}

void lw_text_free(lw_text *text) {
  free(text->data);
  *text = (lw_text){0};
}

bool lw_cell_runs(const char *cell) {
  double number;
  return cell[0] != '\0' && strchr("=+-@", cell[0]) != NULL && !lw_number_read(cell, strlen(cell), &number);
}
