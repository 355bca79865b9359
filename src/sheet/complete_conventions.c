/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "entry.h"
#include "complete.h"

/* A book's set of method items, by one word: each that the sheet leaves out is taken from the row. */

enum { ONE_MAX = 128 };

static void mark(const lw_item *item, lw_case *c, int table_row) {
  void *value = lw_item_place(item, 0, c);
  if (item->type == LW_ITEM_QUANTITY) {
    ((lw_quantity *)value)->origin = LW_TABLE;
    ((lw_quantity *)value)->table_row = table_row;
  } else if (item->type == LW_ITEM_CHOICE) {
    ((lw_choice *)value)->origin = LW_TABLE;
  } else {
    ((lw_words *)value)->origin = LW_TABLE;
  }
}

/* One `item=value` of the row. */
static void take(lw_completing *s, char *text, int table_row) {
  const lw_words *word = &s->c->method.conventions;
  char *equals = strchr(text, '=');
  lw_named named;
  int given;
  if (equals == NULL) {
    lw_complete_fault(s, LW_FAULT_UNKNOWN_ITEM, word, "items as in 'method uplift=0' in its row, not \"%s\"",
                      text);
    return;
  }
  *equals = '\0';
  if (!lw_entry_item(text, strlen(text), (lw_cell_place){word->row, word->column}, &named, s->faults)) return;
  const lw_item *item = named.item;
  if (lw_named_given(&named, s->c, &given)) return;
  if (item->part != LW_ABOUT_METHOD || named.likely) {
    lw_complete_fault(s, LW_FAULT_UNKNOWN_ITEM, word, "method items only in its row, not \"%s\"", text);
    return;
  }
  const char *value = equals + 1 + strspn(equals + 1, " ");
  lw_entry entry = {
      .item = item, .value = value, .length = strlen(value), .row = word->row, .column = word->column};
  int before = s->faults->count;
  lw_entry_store(&entry, s->c, s->faults);
  if (!lw_faults_more(s->faults, before)) mark(item, s->c, table_row);
}

void lw_complete_conventions(lw_completing *s) {
  const lw_words *word = &s->c->method.conventions;
  if (word->origin != LW_GIVEN) return;
  const lw_conventions_row *row = lw_tables_conventions(s->tables, word->text);
  if (row == NULL) {
    lw_complete_unknown_row(s, word, "conventions");
    return;
  }
  for (const char *at = row->items; *at != '\0';) {
    char one[ONE_MAX];
    at += strspn(at, " ;");
    size_t length = strcspn(at, ";");
    if (length > 0 && length < sizeof one) {
      memcpy(one, at, length);
      one[length] = '\0';
      take(s, one, (int)(row - s->tables->conventions));
    }
    at += length;
  }
}
