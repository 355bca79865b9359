/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "said.h"

#include <string.h>

/* An absent value keeps its row, and how it was answered in table_row: so it goes with the value where
 * schedules pack one. */
enum { ROW_OF_LESS = -3 };

bool lw_says_not_known(const char *text, size_t length) {
  static const char *const ways[] = {"unknown", "?", "don't know", "dont know", "not known"};
  static const char first[] = "?UuDdNn \t";
  char folded[LW_FOLDED_MAX];
  if (strchr(first, text[0]) == NULL || length >= LW_FOLDED_MAX || lw_fold(text, length, folded) == 0) {
    return false;
  }
  for (size_t i = 0; i < sizeof ways / sizeof *ways; i++) {
    if (strcmp(folded, ways[i]) == 0) {
      return true;
    }
  }
  return false;
}

/* The bytes of a word at the head of a text, and of the blanks behind it; 0: another word. */
static size_t head(const char *text, const char *word) {
  size_t length = strlen(word);
  for (size_t i = 0; i < length; i++) {
    char c = text[i] >= 'A' && text[i] <= 'Z' ? (char)(text[i] - 'A' + 'a') : text[i];
    if (c != word[i]) return 0;
  }
  return length + strspn(text + length, " \t");
}

lw_bound_word lw_says_bound(const char *text, size_t *before) {
  static const struct {
    const char *word;
    lw_bound_word bound;
  } ways[] = {{"more than ", LW_BOUND_MORE}, {"over ", LW_BOUND_MORE},        {">", LW_BOUND_MORE},
              {"less than ", LW_BOUND_LESS}, {"nearer than ", LW_BOUND_LESS}, {"<", LW_BOUND_LESS}};
  *before = 0;
  if (text[0] >= '0' && text[0] <= '9') return LW_BOUND_NONE;
  for (size_t i = 0; i < sizeof ways / sizeof *ways; i++) {
    *before = head(text, ways[i].word);
    if (*before > 0) return ways[i].bound;
  }
  return LW_BOUND_NONE;
}

/* Where it stands in the list; the count where it does not. */
static int find(size_t offset, const lw_case *c) {
  int i = 0;
  while (i < c->told.count && c->told.said[i].offset != offset) i++;
  return i;
}

static bool add(const lw_item *item, int number, lw_said_kind kind, double si, lw_case *c) {
  size_t offset = lw_item_offset(item, number);
  int at = find(offset, c);
  if (at >= LW_SAID_MAX) return false;
  if (at == c->told.count) c->told.count++;
  c->told.said[at] = (lw_said){.si = si, .kind = kind, .offset = (unsigned short)offset};
  return true;
}

bool lw_said_note(const lw_entry *entry, lw_said_kind kind, double si, lw_case *c) {
  void *value = lw_item_place(entry->item, entry->number, c);
  if (!add(entry->item, entry->number, kind, si, c)) return false;
  switch (entry->item->type) {
  case LW_ITEM_QUANTITY:
    *(lw_quantity *)value = (lw_quantity){.si = si,
                                          .row = entry->row,
                                          .column = entry->column,
                                          .table_row = kind == LW_SAID_LESS ? ROW_OF_LESS : -1};
    break;
  case LW_ITEM_CHOICE: *(lw_choice *)value = (lw_choice){.row = entry->row, .column = entry->column}; break;
  case LW_ITEM_WORDS: *(lw_words *)value = (lw_words){.row = entry->row, .column = entry->column}; break;
  }
  return true;
}

void lw_said_forget(const lw_item *item, int number, lw_case *c) {
  int at = find(lw_item_offset(item, number), c);
  if (at >= c->told.count) return;
  c->told.count--;
  for (int i = at; i < c->told.count; i++) c->told.said[i] = c->told.said[i + 1];
}

void lw_said_forget_idle(lw_case *c) {
  size_t from = offsetof(lw_case, officer), to = from + sizeof c->officer;
  int kept = 0;
  for (int i = 0; i < c->told.count; i++)
    if (c->told.said[i].offset >= from && c->told.said[i].offset < to) c->told.said[kept++] = c->told.said[i];
  c->told.count = kept;
}

typedef struct stands {
  lw_origin origin;
  int row;
} stands;

/* How a value stands in its case. */
static stands stands_of(const lw_item *item, int number, const lw_case *c) {
  const void *value = (const char *)c + lw_item_offset(item, number);
  const lw_quantity *q = value;
  const lw_choice *choice = value;
  const lw_words *words = value;
  if (item->type == LW_ITEM_QUANTITY) return (stands){q->origin, q->row};
  if (item->type == LW_ITEM_CHOICE) return (stands){choice->origin, choice->row};
  return (stands){words->origin, words->row};
}

const lw_said *lw_said_of(const lw_item *item, int number, const lw_case *c) {
  int at = find(lw_item_offset(item, number), c);
  const stands now = stands_of(item, number, c);
  bool given = now.origin == LW_GIVEN && now.row != LW_WORKED_OUT_ROW;
  return at < c->told.count && !given ? &c->told.said[at] : NULL;
}

void lw_said_print(const lw_item *item, const lw_said *said, char *out, size_t size) {
  char value[64];
  lw_item_say(item, said->si, value, sizeof value);
  lw_print(out, size, said->kind == LW_SAID_LESS ? "less than %s" : "not known", value);
}

void lw_said_unpacked(const lw_item *item, int number, lw_case *c) {
  const stands now = stands_of(item, number, c);
  if (now.origin != LW_ABSENT || now.row == 0) return;
  const lw_quantity *q = item->type == LW_ITEM_QUANTITY ? lw_item_quantity(item, number, c) : NULL;
  bool less = q != NULL && q->table_row == ROW_OF_LESS;
  (void)add(item, number, less ? LW_SAID_LESS : LW_SAID_NOT_KNOWN, less ? q->si : 0.0, c);
}
