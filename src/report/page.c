/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "page.h"

#include <ctype.h>
#include <stdarg.h>
#include <string.h>

#include "base/print.h"
#include "base/utf8.h"

enum { COLUMNS_LEAST = 40, LINE_MAX_BYTES = 2048 };

static const char *const tones[] = {[LW_TONE_PLAIN] = "",
                                    [LW_TONE_STRONG] = "\033[1m",
                                    [LW_TONE_GOOD] = "\033[32m",
                                    [LW_TONE_BAD] = "\033[1;31m"};

static void begin(const lw_page *page, lw_tone tone) {
  if (page->style.colour && tone != LW_TONE_PLAIN) lw_text_add(page->out, tones[tone]);
}

static void end(const lw_page *page, lw_tone tone) {
  if (page->style.colour && tone != LW_TONE_PLAIN) lw_text_add(page->out, "\033[0m");
}

static bool is_rest(char c) {
  return ((unsigned char)c & 0xC0) == 0x80;
}

/* Columns that bytes take on the screen. */
static int width_of(const char *bytes, size_t length) {
  int width = 0;
  for (size_t i = 0; i < length; i++) width += is_rest(bytes[i]) ? 0 : 1;
  return width;
}

/* What is not plain text is kept. */
static bool keep(const lw_page *page, lw_kept_kind kind, lw_tone tone, const char *prefix, const char *text) {
  if (!page->keeps) return false;
  lw_kept_add(page->out, kind, tone, prefix, text);
  return true;
}

void lw_page_blank(const lw_page *page) {
  if (!keep(page, LW_KEPT_BLANK, LW_TONE_PLAIN, "", "")) lw_text_add(page->out, "\n");
}

void lw_page_headline(const lw_page *page, lw_tone tone, const char *text) {
  if (!keep(page, LW_KEPT_HEADLINE, tone, "", text)) lw_page_tone(page, tone, "", text);
}

void lw_page_part(const lw_page *page, const char *title) {
  if (!keep(page, LW_KEPT_PART, LW_TONE_PLAIN, " ", title)) lw_page_say(page, " ", title);
}

void lw_page_heading(const lw_page *page, const char *title) {
  if (keep(page, LW_KEPT_HEADING, LW_TONE_STRONG, "", title)) return;
  lw_page_blank(page);
  begin(page, LW_TONE_STRONG);
  lw_text_add(page->out, title);
  end(page, LW_TONE_STRONG);
  lw_text_add(page->out, "\n");
}

static void indent(const lw_page *page, int width) {
  for (int i = 0; i < width; i++) lw_text_add(page->out, " ");
}

/* Bytes up to the next place where a line may end: a number keeps its unit, a value its name. */
static size_t piece_of(const char *text) {
  size_t length = strcspn(text, " ");
  bool number = length > 0 && text[length] == ' ' && isdigit((unsigned char)text[length - 1]);
  size_t unit = number ? lw_unit_written(text + length + 1) : 0;
  if (unit > 0) length += 1 + unit;
  length += strcspn(text + length, " ");
  bool named = isalpha((unsigned char)text[0]) && strncmp(text + length, " = ", 3) == 0;
  bool joins = named || (length == 1 && text[0] == '=' && text[1] == ' ');
  size_t next = length + (named ? 3 : 1);
  return joins ? next + piece_of(text + next) : length;
}

void lw_page_tone(const lw_page *page, lw_tone tone, const char *prefix, const char *text) {
  int columns = page->style.columns < COLUMNS_LEAST ? COLUMNS_LEAST : page->style.columns;
  int margin = width_of(prefix, strlen(prefix)), at = margin;
  bool first = true;
  if (keep(page, LW_KEPT_SAY, tone, prefix, text)) return;
  begin(page, tone);
  lw_text_add(page->out, prefix);
  while (*text != '\0') {
    size_t length = piece_of(text);
    int width = width_of(text, length);
    if (length > 0 && !first && at + 1 + width > columns) {
      lw_text_add(page->out, "\n");
      indent(page, margin);
      at = margin;
    } else if (length > 0 && !first) {
      lw_text_add(page->out, " ");
      at++;
    }
    lw_text_add_bytes(page->out, text, length);
    at += width;
    first = first && length == 0;
    text += length + (text[length] == ' ' ? 1 : 0);
  }
  end(page, tone);
  lw_text_add(page->out, "\n");
}

void lw_page_say(const lw_page *page, const char *prefix, const char *text) {
  lw_page_tone(page, LW_TONE_PLAIN, prefix, text);
}

void lw_page_say_text(const lw_page *page, const char *prefix, lw_text *text) {
  if (text->length > 0) lw_page_say(page, prefix, text->data);
  page->out->failed = page->out->failed || text->failed;
  lw_text_free(text);
}

void lw_page_sayf(const lw_page *page, const char *prefix, const char *format, ...) {
  char text[LINE_MAX_BYTES];
  va_list arguments;
  va_start(arguments, format);
  lw_print_list(text, sizeof text, format, arguments);
  va_end(arguments);
  lw_page_say(page, prefix, text);
}

static void put_line(const lw_page *page, lw_kept_kind kind, lw_tone tone, const char *text) {
  size_t length = strlen(text);
  if (keep(page, kind, tone, "", text)) return;
  while (length > 0 && text[length - 1] == ' ') length--;
  begin(page, tone);
  lw_text_add_bytes(page->out, text, length);
  end(page, tone);
  lw_text_add(page->out, "\n");
}

void lw_page_linef(const lw_page *page, lw_tone tone, const char *format, ...) {
  char text[LINE_MAX_BYTES];
  va_list arguments;
  va_start(arguments, format);
  lw_print_list(text, sizeof text, format, arguments);
  va_end(arguments);
  put_line(page, LW_KEPT_LINE, tone, text);
}

/* A column of words begins below, one of numbers ends below what stands above: as its conversion pads it. */
static char mark_of(const char *conversion) {
  bool begins = conversion[0] == '%' && strchr("-s.", conversion[1]) != NULL;
  return begins ? LW_CELL_BEGINS : LW_CELL_ENDS;
}

/* The format of a row for printf: where a cell begins, "|", stands its mark, or nothing in plain text. */
static void print_format(const char *format, bool marks, char *out, size_t size) {
  size_t used = 0;
  for (; *format != '\0' && used + 1 < size; format++) {
    if (*format != '|')
      out[used++] = *format;
    else if (marks)
      out[used++] = mark_of(format + 1);
  }
  out[used] = '\0';
}

static void put_row(const lw_page *page, lw_kept_kind kind, lw_tone tone, const char *format, va_list list) {
  char text[LINE_MAX_BYTES], printed[LINE_MAX_BYTES];
  print_format(format, page->keeps, printed, sizeof printed);
  lw_print_list(text, sizeof text, printed, list);
  put_line(page, kind, tone, text);
}

void lw_page_rowf(const lw_page *page, lw_tone tone, const char *format, ...) {
  va_list arguments;
  va_start(arguments, format);
  put_row(page, LW_KEPT_ROW, tone, format, arguments);
  va_end(arguments);
}

void lw_page_headf(const lw_page *page, const char *format, ...) {
  va_list arguments;
  va_start(arguments, format);
  put_row(page, LW_KEPT_HEAD, LW_TONE_PLAIN, format, arguments);
  va_end(arguments);
}

void lw_page_titledf(const lw_page *page, const char *format, ...) {
  va_list arguments;
  va_start(arguments, format);
  put_row(page, LW_KEPT_TITLED, LW_TONE_STRONG, format, arguments);
  va_end(arguments);
}

void lw_page_numbers(const lw_page *page, const char *row) {
  char text[LINE_MAX_BYTES];
  lw_print(text, sizeof text, "  %s", row);
  put_line(page, LW_KEPT_NUMBERS, LW_TONE_PLAIN, text);
}

/* The controls of terminals: below a blank, and in two bytes U+0080 to U+009F. */
static bool controls(const unsigned char *at, size_t length) {
  return (length == 1 && (at[0] < 0x20 || at[0] == 0x7F)) || (length == 2 && at[0] == 0xC2 && at[1] < 0xA0);
}

/* Most text is nothing else: taken character by character a garden bed's row is about 7 % dearer. */
static size_t plain_bytes(const unsigned char *at, size_t left) {
  size_t count = 0;
  while (count < left && at[count] >= 0x20 && at[count] < 0x7F) count++;
  return count;
}

void lw_text_clean(const char *text, char *out, size_t size) {
  size_t left = strlen(text), used = 0;
  const unsigned char *at = (const unsigned char *)text;
  while (left > 0) {
    size_t plain = plain_bytes(at, left), room = size - 1 - used;
    size_t taken = plain < room ? plain : room;
    memcpy(out + used, at, taken);
    used += taken;
    at += plain;
    left -= plain;
    if (left == 0 || taken < plain) break;
    size_t length = lw_utf8_length(at, left);
    bool bad = length == 0 || controls(at, length);
    size_t bytes = bad ? 1 : length;
    if (used + bytes >= size) break;
    if (bad)
      out[used] = '?';
    else
      memcpy(out + used, at, length);
    used += bytes;
    at += length == 0 ? 1 : length;
    left -= length == 0 ? 1 : length;
  }
  out[used] = '\0';
}

void lw_page_number(lw_number number, char *out, size_t size) {
  if (number.known && number.value < 1000.0)
    lw_number_print(out, size, number.value, 2);
  else
    lw_print(out, size, "%s", number.known ? ">999" : "-");
}
