/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cells.h"

#include <string.h>

#include "base/utf8.h"
#include "faults.h"

static bool has_fault(lw_cells *cells, const char *text, size_t length) {
  lw_fault_slug slug;
  const char *wanted;
  if (length > LW_CELL_MAX) {
    slug = LW_FAULT_CELL_TOO_LONG;
    wanted = "at most 4096 bytes; is a quotation mark left open?";
  } else if (memchr(text, '\0', length) != NULL) {
    slug = LW_FAULT_NUL_BYTE;
    wanted = "the file saved as CSV in UTF-8, as plain text";
  } else if (!lw_is_utf8(text, length)) {
    slug = LW_FAULT_NOT_UTF8;
    wanted = "the file saved as CSV in UTF-8";
  } else {
    return false;
  }
  char stood[64] = "";
  if (slug != LW_FAULT_NOT_UTF8) {
    lw_print(stood, sizeof stood, "%.40s", text);
  }
  lw_faults_add(cells->faults, slug, (lw_cell_place){cells->row, cells->column}, "", stood, "%s", wanted);
  return true;
}

static void take_cell(void *bytes, size_t length, void *data) {
  lw_cells *cells = data;
  char *text = bytes;
  cells->column++;
  /* Most cells are nothing else. */
  bool plain = length <= LW_CELL_MAX && lw_utf8_is_plain(text, length);
  bool faulty = !plain && has_fault(cells, text, length);
  if (!plain && !faulty) {
    lw_utf8_tame(text);
    length = strlen(text);
  }
  cells->cell(cells->context, faulty ? NULL : text, length, cells->row, cells->column);
}

/* Every end of line comes here, those of blank rows too; the LF of a CR LF ends nothing of its own. */
static void take_row_end(int end, void *data) {
  lw_cells *cells = data;
  bool second_half = end == '\n' && cells->last_end == '\r' && cells->column == 0;
  cells->last_end = end;
  if (second_half) {
    return;
  }
  cells->row_end(cells->context, cells->row, cells->column);
  cells->row++;
  cells->column = 0;
}

char lw_cells_separator(const char *bytes, size_t length) {
  bool quoted = false;
  for (size_t i = 0; i < length; i++) {
    char c = bytes[i];
    quoted = c == '"' ? !quoted : quoted;
    if (!quoted && (c == ',' || c == ';' || c == '\t')) {
      return c;
    }
    if (!quoted && (c == '\n' || c == '\r') && i > 0 && bytes[i - 1] != '\n' && bytes[i - 1] != '\r') {
      return ',';
    }
  }
  return '\0';
}

void lw_cells_open(lw_cells *cells) {
  cells->parsing = false;
  cells->stopped = false;
  cells->row = 1;
  cells->column = 0;
  cells->last_end = 0;
  cells->head_length = 0;
  cells->comma_is_decimal = false;
  csv_init(&cells->parser, CSV_STRICT | CSV_STRICT_FINI | CSV_APPEND_NULL | CSV_REPALL_NL);
}

static void stop(lw_cells *cells, lw_fault_slug slug, const char *wanted) {
  cells->stopped = true;
  lw_faults_add(cells->faults, slug, (lw_cell_place){cells->row, cells->column + 1}, "", "", "%s", wanted);
}

static void parse(lw_cells *cells, const char *bytes, size_t length) {
  while (length > 0 && !cells->stopped) {
    size_t part = length < LW_CELL_MAX ? length : LW_CELL_MAX;
    if (csv_parse(&cells->parser, bytes, part, take_cell, take_row_end, cells) != part) {
      bool memory = csv_error(&cells->parser) != CSV_EPARSE;
      stop(cells, memory ? LW_FAULT_CELL_TOO_LONG : LW_FAULT_QUOTING,
           memory ? "a shorter cell: memory ran out"
                  : "a quotation mark only around a whole cell, doubled inside it");
    } else if (cells->parser.entry_pos > LW_CELL_STOP) {
      stop(cells, LW_FAULT_CELL_TOO_LONG,
           "at most 4096 bytes; reading stopped here. Is a quotation mark left open?");
    }
    bytes += part;
    length -= part;
  }
}

/* Two bytes a character, as a spreadsheet saves "Unicode text": by its byte-order mark, or by the NUL in its
 * first character, of which a header has none. */
static bool is_utf16(const lw_cells *cells) {
  const char *head = cells->head;
  if (cells->head_length < 2) return false;
  bool marked = memcmp(head, "\xFF\xFE", 2) == 0 || memcmp(head, "\xFE\xFF", 2) == 0;
  return marked || (head[0] == '\0') != (head[1] == '\0');
}

/* Once the separator is known: set it, drop a byte-order mark, and parse what was held back. */
static void begin(lw_cells *cells, char separator) {
  cells->parsing = true;
  cells->comma_is_decimal = separator == ';' || separator == '\t';
  csv_set_delim(&cells->parser, (unsigned char)(separator == '\0' ? ',' : separator));
  if (is_utf16(cells)) {
    stop(cells, LW_FAULT_UTF16, "the file saved anew as CSV in UTF-8, not as Unicode text");
    return;
  }
  size_t mark = cells->head_length >= 3 && memcmp(cells->head, "\xEF\xBB\xBF", 3) == 0 ? 3 : 0;
  parse(cells, cells->head + mark, cells->head_length - mark);
}

void lw_cells_feed(lw_cells *cells, const char *bytes, size_t length) {
  while (!cells->parsing && length > 0) {
    cells->head[cells->head_length++] = *bytes++;
    length--;
    char separator = lw_cells_separator(cells->head, cells->head_length);
    if (separator != '\0' || cells->head_length == LW_CELLS_HEAD) {
      begin(cells, separator);
    }
  }
  parse(cells, bytes, length);
}

void lw_cells_finish(lw_cells *cells) {
  if (!cells->parsing) {
    begin(cells, '\0');
  }
  if (cells->stopped) {
    return;
  }
  if (csv_fini(&cells->parser, take_cell, take_row_end, cells) != 0) {
    stop(cells, LW_FAULT_QUOTING, "the quotation mark that opens this cell closed");
  }
}

void lw_cells_close(lw_cells *cells) {
  csv_free(&cells->parser);
}
