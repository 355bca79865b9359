/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "symbols.h"

#include <assert.h>
#include <ctype.h>
#include <string.h>

#include "report/grid.h"

/* Which symbols a working uses, found in what was kept of it. */

/* A letter or a Greek one's name, and what hangs on it: "Ka", "B'", "phid2". */
static size_t word_length(lw_span text, size_t at) {
  size_t length = 0;
  while (at + length < text.length &&
         (isalnum((unsigned char)text.at[at + length]) || text.at[at + length] == '\''))
    length++;
  return length;
}

static int row_of(lw_symbol_part part, const char *word, size_t length) {
  for (int i = 0; lw_symbols[i].symbol != NULL; i++) {
    const lw_symbol *s = &lw_symbols[i];
    if ((s->parts & part) && strlen(s->symbol) == length && memcmp(s->symbol, word, length) == 0) return i;
  }
  return -1;
}

static void note_word(lw_symbols_used *used, lw_symbol_part part, const char *word, size_t length) {
  size_t letters = length;
  int row = row_of(part, word, length);
  while (letters > 1 && isdigit((unsigned char)word[letters - 1])) letters--;
  if (row < 0 && letters < length) {
    row = row_of(part, word, letters);
    used->numbered = used->numbered || row >= 0;
  }
  assert(row < LW_SYMBOLS_MAX);
  if (row >= 0) used->row[row] = true;
}

static char letter_at(lw_span text, size_t at) {
  return at < text.length ? text.at[at] : ' ';
}

/* "= " or a power behind it. */
static bool is_named(lw_span text, size_t end) {
  return letter_at(text, end) == '^' || (letter_at(text, end) == ' ' && letter_at(text, end + 1) == '=');
}

static bool after_function(lw_span text, size_t at) {
  return at >= 4 && (memcmp(text.at + at - 4, "cos ", 4) == 0 || memcmp(text.at + at - 4, "sin ", 4) == 0 ||
                     memcmp(text.at + at - 4, "tan ", 4) == 0);
}

/* The article, and the sign of a product, are no symbols. */
static bool is_word(lw_span text, size_t at, size_t length) {
  bool alone = length == 1 && (text.at[at] == 'a' || text.at[at] == 'x');
  return alone && !is_named(text, at + length) && !after_function(text, at);
}

/* Every word of a formula, or of the numbers put in. */
static void note_formula(lw_symbols_used *used, lw_symbol_part part, lw_span text) {
  for (size_t at = 0; at < text.length;) {
    size_t length = word_length(text, at);
    if (length > 0 && !is_word(text, at, length)) note_word(used, part, text.at + at, length);
    at += length > 0 ? length : 1;
  }
}

/* In a sentence those that it says a value or a formula of, and what stands in the formula. */
static void note_sentence(lw_symbols_used *used, lw_symbol_part part, lw_span text) {
  for (size_t at = 0; at < text.length;) {
    size_t length = word_length(text, at);
    bool value = length > 0 && letter_at(text, at + length) == ' ' && letter_at(text, at + length + 1) == '=';
    bool after = at >= 2 && text.at[at - 2] == '=';
    if (length > 0 && (value || after)) note_word(used, part, text.at + at, length);
    at += length > 0 ? length : 1;
  }
}

static void note_head(lw_symbols_used *used, lw_symbol_part part, const lw_kept *row) {
  lw_grid grid = {.columns = LW_GRID_COLUMNS};
  if (row->kind == LW_KEPT_NUMBERS) {
    note_formula(used, part, row->text);
    return;
  }
  for (int i = 0; i < LW_GRID_COLUMNS; i++) {
    lw_span words = lw_grid_cell(&grid, row, i).words;
    note_word(used, part, words.at, words.length);
  }
}

/* As the pressures write it, maybe behind another heading. */
static bool heads_loads(const lw_kept *entry) {
  static const char heading[] = "Loads at a distance, level pushes";
  size_t length = sizeof heading - 1, whole = entry->text.length;
  return whole >= length && memcmp(entry->text.at + whole - length, heading, length) == 0;
}

void lw_symbols_note(lw_symbols_used *used, lw_symbol_part of, lw_span entries) {
  lw_kept entry;
  lw_symbol_part part = of;
  while (lw_kept_next(&entries, &entry)) {
    bool heads = entry.kind == LW_KEPT_PART || entry.kind == LW_KEPT_HEADING;
    if (heads) part = of == LW_SYMBOLS_PUSH && heads_loads(&entry) ? LW_SYMBOLS_LOADS : of;
    lw_lead lead = lw_kept_lead(&entry);
    bool step = lead == LW_LEAD_STEP || lead == LW_LEAD_MORE;
    if (lw_kept_heads(&entry))
      note_head(used, part, &entry);
    else if (entry.kind == LW_KEPT_SAY && step) {
      note_formula(used, part, entry.prefix);
      note_formula(used, part, entry.text);
    } else if (entry.kind == LW_KEPT_SAY || entry.kind == LW_KEPT_PART)
      note_sentence(used, part, entry.text);
  }
}

/* The first row of a symbol tells all of its meanings that are used. */
static void put_symbol(const lw_page *page, const lw_symbols_used *used, int first) {
  char prefix[24];
  lw_text line = {0};
  lw_print(prefix, sizeof prefix, "  %-7s", lw_symbols[first].symbol);
  for (int i = first; lw_symbols[i].symbol && strcmp(lw_symbols[i].symbol, lw_symbols[first].symbol) == 0;
       i++)
    if (used->row[i]) lw_text_addf(&line, "%s%s", line.length > 0 ? "; " : "", lw_symbols[i].meaning);
  lw_page_say_text(page, prefix, &line);
}

static bool is_first(int row) {
  return row == 0 || strcmp(lw_symbols[row - 1].symbol, lw_symbols[row].symbol) != 0;
}

void lw_symbols_put(const lw_page *page, const lw_symbols_used *used) {
  lw_page_heading(page, "Symbols, as this working uses them");
  for (int i = 0; lw_symbols[i].symbol != NULL; i++)
    if (is_first(i)) put_symbol(page, used, i);
  if (used->numbered)
    lw_page_say(page, "  ", "A number behind a symbol is that of the layer, from the top, or of the round.");
}
