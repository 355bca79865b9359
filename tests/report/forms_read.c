/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "forms_read.h"

#include <criterion/criterion.h>

#include <ctype.h>
#include <stdlib.h>
#include <string.h>

#include "markup.h"

static void add_blank(lw_text *words) {
  if (words->length > 0 && words->data[words->length - 1] != ' ') lw_text_add(words, " ");
}

/* A character of a word, or a blank between two; a word that is a dash alone goes. */
static void add(lw_text *words, char c) {
  bool blank = c == ' ' || c == '\n';
  if (!blank) {
    lw_text_add_bytes(words, &c, 1);
    return;
  }
  bool dash = words->length > 0 && words->data[words->length - 1] == '-' &&
              (words->length == 1 || words->data[words->length - 2] == ' ');
  if (dash) words->data[--words->length] = '\0';
  add_blank(words);
}

void forms_read_text(const char *text, lw_text *words) {
  for (; *text != '\0'; text++) add(words, *text);
  add(words, ' ');
}

static size_t entity(const char *at, char *c) {
  static const struct {
    const char *name;
    char c;
  } ALL[] = {{"&amp;", '&'}, {"&lt;", '<'}, {"&gt;", '>'}, {"&quot;", '"'}};
  for (size_t i = 0; i < sizeof ALL / sizeof *ALL; i++) {
    *c = ALL[i].c;
    if (strncmp(at, ALL[i].name, strlen(ALL[i].name)) == 0) return strlen(ALL[i].name);
  }
  return 0;
}

bool forms_read_html(const char *html, lw_text *words) {
  const char *body = strstr(html, "<body>");
  char c;
  for (const char *at = body != NULL ? body : html; *at != '\0';) {
    size_t length = *at == '<' ? strcspn(at, ">") + 1 : *at == '&' ? entity(at, &c) : 1;
    if (length == 0) return false;
    add(words, *at == '<' ? ' ' : *at == '&' ? c : *at);
    at += length;
  }
  add(words, ' ');
  return true;
}

/* The marks at the beginning of a line that make a heading or an item of it; a number stays a word. */
static size_t line_marks(const char *line, lw_text *words) {
  size_t indent = strspn(line, " "), marks = strspn(line + indent, "#"), digits;
  if (marks > 0 && line[indent + marks] == ' ') return indent + marks + 1;
  if (strncmp(line + indent, "- ", 2) == 0) return indent + 2;
  digits = strspn(line + indent, "0123456789");
  if (digits == 0 || line[indent + digits] != '.' || line[indent + digits + 1] != ' ') return indent;
  for (size_t i = indent; i <= indent + digits; i++) add(words, line[i]);
  add(words, ' ');
  return indent + digits + 2;
}

/* The words of a line: no mark stands bare but two stars that open or close. */
static bool read_line(const char *at, const char *end, lw_text *words) {
  bool strong = false;
  char c;
  const char *number = at;
  while (number < end && isdigit((unsigned char)*number)) number++;
  bool counts = number > at && number < end && strchr(".)", *number) != NULL;
  if (counts && (number + 1 == end || number[1] == ' ')) return false;
  if (at < end && strchr("-+=", *at) != NULL) return false;
  while (at < end) {
    if (*at == '\\' && at + 1 < end && ispunct((unsigned char)at[1])) {
      add(words, at[1]);
      at += 2;
    } else if (strncmp(at, "**", 2) == 0) {
      strong = !strong;
      at += 2;
    } else if (*at == '&') {
      size_t length = entity(at, &c);
      if (length == 0) return false;
      add(words, c);
      at += length;
    } else if (strchr("\\`*_[]{}#|~$<>", *at) != NULL || strncmp(at, "://", 3) == 0) {
      return false;
    } else {
      add(words, *at++);
    }
  }
  add(words, '\n');
  return !strong;
}

/* The fence that opens or closes at a line; 0: none */
static size_t fence_at(const char *line) {
  size_t indent = strspn(line, " "), length = strspn(line + indent, "`");
  return length >= 3 ? length : 0;
}

bool forms_read_markdown(const char *markdown, lw_text *words) {
  size_t open = 0;
  for (const char *line = markdown; *line != '\0';) {
    const char *end = line + strcspn(line, "\n");
    size_t fence = fence_at(line);
    if (open > 0 && fence >= open && line[strspn(line, " ") + fence] == '\n') {
      open = 0;
    } else if (open > 0) {
      for (const char *at = line; at <= end; at++) add(words, at == end ? '\n' : *at);
    } else if (fence > 0) {
      open = fence;
    } else {
      const char *from = line + line_marks(line, words);
      if (!read_line(from, end, words)) return false;
    }
    line = *end == '\n' ? end + 1 : end;
  }
  add(words, ' ');
  return open == 0;
}

static int columns_of(const char *row, const char *end) {
  int columns = 0;
  for (const char *at = row; at < end; at++) {
    bool cell = strncmp(at, "<td", 3) == 0 || (strncmp(at, "<th", 3) == 0 && at[3] != 'e');
    const char *close = cell ? strchr(at, '>') : NULL, *span = cell ? strstr(at, "colspan=\"") : NULL;
    if (cell) columns += span != NULL && span < close ? (int)strtol(span + 9, NULL, 10) : 1;
  }
  return columns;
}

bool forms_rows_are_even(const char *html) {
  for (const char *table = strstr(html, "<table>"); table != NULL; table = strstr(table + 1, "<table>")) {
    const char *end = strstr(table, "</table>");
    int columns = 0;
    for (const char *row = strstr(table, "<tr"); row != NULL && row < end; row = strstr(row + 1, "<tr")) {
      int here = columns_of(row, strstr(row, "</tr>"));
      if (columns == 0) columns = here;
      if (here != columns || here == 0) return false;
    }
  }
  return true;
}

/* Where two differ, with what stands around it. */
static void expect_words(const char *name, const char *form, const lw_text *text, const lw_text *words) {
  size_t at = 0, before;
  while (at < text->length && at < words->length && text->data[at] == words->data[at]) at++;
  before = at < 40 ? at : 40;
  cr_expect(at == text->length && at == words->length, "%s: the text says \"%.90s\", the %s \"%.90s\"", name,
            text->data + at - before, form, words->data + at - before);
}

void forms_expect_same(const char *name, const char *text, const char *markdown, const char *html) {
  lw_text of_text = {0}, of_markdown = {0}, of_html = {0};
  forms_read_text(text, &of_text);
  cr_expect(forms_read_html(html, &of_html), "%s: an entity of its own", name);
  cr_expect(forms_read_markdown(markdown, &of_markdown), "%s: the Markdown has a bare mark after \"%s\"",
            name, of_markdown.length > 60 ? of_markdown.data + of_markdown.length - 60 : "");
  cr_expect(markup_is_closed(html), "%s: a tag is not closed", name);
  cr_expect(forms_rows_are_even(html), "%s: a row has other columns than its table", name);
  expect_words(name, "HTML", &of_text, &of_html);
  expect_words(name, "Markdown", &of_text, &of_markdown);
  lw_text_free(&of_text);
  lw_text_free(&of_markdown);
  lw_text_free(&of_html);
}
