/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "replaced.h"

#include <stdio.h>
#include <string.h>

#include "base/hash.h"

/* What a reader is told of tables that were put in place of the built-in ones. A row of a table is one line:
 * no cell of ours holds a line's end. */

enum { SHOWN = 8 }; /* digits of the hash, as the pre-check shows them */

typedef struct lines {
  const char *at, *end;
} lines;

/* The next line without its end; false past the last. */
static bool next(lines *from, const char **line, size_t *length) {
  if (from->at >= from->end) return false;
  const char *newline = memchr(from->at, '\n', (size_t)(from->end - from->at));
  const char *stop = newline ? newline : from->end;
  *line = from->at;
  *length = (size_t)(stop - from->at);
  if (*length > 0 && (*line)[*length - 1] == '\r') --*length;
  from->at = newline ? newline + 1 : from->end;
  return true;
}

static lines lines_of(const lw_text *text) {
  const char *begin = text->data ? text->data : "";
  return (lines){begin, begin + text->length};
}

static bool has_line(const lw_text *text, const char *line, size_t length) {
  lines all = lines_of(text);
  const char *other;
  size_t other_length;
  while (next(&all, &other, &other_length))
    if (other_length == length && memcmp(other, line, length) == 0) return true;
  return false;
}

/* Rows of one that the other has not word for word. */
static int rows_missing(const lw_text *of, const lw_text *in) {
  lines all = lines_of(of);
  const char *line;
  size_t length;
  int missing = 0;
  while (next(&all, &line, &length)) missing += length > 0 && !has_line(in, line, length);
  return missing;
}

void lw_replaced_note(const char *name, const lw_text *file, const lw_text *built_in, char *note,
                      size_t size) {
  int added = rows_missing(file, built_in), gone = rows_missing(built_in, file);
  int changed = added > gone ? added : gone;
  size_t used = strlen(note);
  char hex[LW_HASH_HEX];
  lw_hash hash;
  lw_hash_start(&hash);
  lw_hash_add(&hash, file->data ? file->data : "", file->length);
  lw_hash_end(&hash, hex);
  snprintf(note + used, size - used, "%s%s.csv (%d row%s changed, hash %.*s)", used > 0 ? ", " : "", name,
           changed, changed == 1 ? "" : "s", SHOWN, hex);
}
