/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "entry.h"
#include "complete_note.h"
#include "likely.h"
#include "said.h"

/* A case written as an upright sheet. A value is written in the item's own unit when reading that gives the
 * very same number again, else in the SI unit with all its digits: reading it changes nothing. */

/* The item's own unit, or for a value of the item's second kind that kind's; NULL: a pure number. */
static const lw_unit *unit_of(const lw_item *item, const lw_quantity *q) {
  if (q->kind == LW_KIND_NUMBER || q->kind == LW_KIND_COUNT || q->kind == LW_KIND_SHARE) {
    return NULL;
  }
  const lw_unit *own = lw_unit_find(q->kind, item->unit, strlen(item->unit));
  const char *si = lw_kind_unit(q->kind);
  return own != NULL ? own : lw_unit_find(q->kind, si, strlen(si));
}

static bool reads_back(const char *number, double factor, double si) {
  double read;
  return lw_number_read(number, strlen(number), &read) &&
         memcmp(&(double){read * factor}, &si, sizeof si) == 0;
}

/* The shortest digits that read back as the same number. */
static bool print_exactly(double si, double factor, char *out, size_t size) {
  for (int digits = 6; digits <= 17; digits++) {
    lw_print(out, size, "%.*g", digits, si / factor);
    if (reads_back(out, factor, si)) {
      return true;
    }
  }
  return false;
}

/* A given value exactly; any other is only a remark, and is rounded. */
static const char *print_quantity(const lw_item *item, const lw_quantity *q, char *number, size_t size) {
  const lw_unit *own = unit_of(item, q);
  double factor = own != NULL ? own->to_si : 1.0;
  const char *unit = own != NULL ? own->name : "";
  if (!lw_given(q)) {
    lw_print(number, size, "%.6g", q->si / factor);
  } else if (!print_exactly(q->si, factor, number, size)) {
    unit = lw_kind_unit(q->kind);
    lw_print(number, size, "%.17g", q->si);
  }
  return unit;
}

static void add_cell(lw_text *out, const char *cell) {
  bool plain = strpbrk(cell, ",;\"\t\r\n") == NULL && cell[0] != ' ';
  size_t length = strlen(cell);
  if (plain && (length == 0 || cell[length - 1] != ' ')) {
    lw_text_add(out, cell);
    return;
  }
  lw_text_add(out, "\"");
  for (const char *c = cell; *c != '\0'; c++) {
    lw_text_add_bytes(out, c, 1);
    if (*c == '"') {
      lw_text_add(out, "\"");
    }
  }
  lw_text_add(out, "\"");
}

static lw_origin print_value(const lw_item *item, int number, lw_case *c, char *value, size_t size,
                             const char **unit) {
  *unit = "";
  if (item->type == LW_ITEM_QUANTITY) {
    const lw_quantity *q = lw_item_quantity(item, number, c);
    bool more = q->origin == LW_GIVEN && q->table_row == LW_MORE_THAN;
    size_t before = more ? (size_t)lw_print(value, size, "more than ") : 0;
    if (q->origin != LW_ABSENT) {
      *unit = print_quantity(item, q, value + before, size - before);
    }
    return q->origin;
  }
  if (item->type == LW_ITEM_CHOICE) {
    const lw_choice *choice = lw_item_choice(item, number, c);
    lw_item_word(item, choice->value, value, size);
    return choice->origin;
  }
  const lw_words *words = lw_item_words(item, number, c);
  lw_print(value, size, "%s", words->text);
  return words->origin;
}

static void write_row(const char *name, const char *value, const char *unit, lw_text *out) {
  add_cell(out, name);
  lw_text_add(out, ",");
  add_cell(out, value);
  lw_text_addf(out, ",%s,\n", unit);
}

/* An answer that is no value. */
static void write_said(const lw_item *item, int number, const lw_case *c, lw_text *out) {
  char name[LW_ITEM_NAME_MAX], value[80];
  const lw_said *said = lw_said_of(item, number, c);
  if (said == NULL) return;
  lw_item_print_name(item, number, name, sizeof name);
  lw_said_print(item, said, value, sizeof value);
  write_row(name, value, "", out);
}

static void write_item(const lw_item *item, int number, lw_case *c, bool assumed, lw_text *out) {
  static const char *const origins[] = {"", "worked out", "from the table", "assumed"};
  char name[LW_ITEM_NAME_MAX];
  char value[LW_WORDS_MAX + 32];
  const char *unit;
  int row;
  lw_origin origin = print_value(item, number, c, value, sizeof value, &unit);
  lw_item_print_name(item, number, name, sizeof name);
  if (lw_entry_given(item, number, c, &row)) {
    write_row(name, value, unit, out);
  } else if (assumed && origin != LW_ABSENT) {
    char note[256];
    lw_print(note, sizeof note, "%s: %s = %s%s%s", origins[origin], name, value, unit[0] != '\0' ? " " : "",
             unit);
    lw_text_add(out, ",,,");
    add_cell(out, note);
    lw_text_add(out, "\n");
  }
}

static void write_likely(const lw_item *item, int number, const lw_case *c, lw_text *out) {
  char name[LW_ITEM_NAME_MAX];
  char value[LW_WORDS_MAX + 32];
  const lw_quantity *q = item->type == LW_ITEM_QUANTITY ? lw_item_likely(item, number, c) : NULL;
  if (q == NULL) {
    return;
  }
  const char *unit = print_quantity(item, q, value, sizeof value);
  lw_likely_print_name(item, number, name, sizeof name);
  write_row(name, value, unit, out);
}

static void write_both(const lw_item *item, int number, lw_case *c, bool assumed, lw_text *out) {
  write_said(item, number, c, out);
  write_item(item, number, c, assumed, out);
  write_likely(item, number, c, out);
}

void lw_sheet_write(const lw_case *c, bool assumed, lw_text *out) {
  lw_case copy = *c;
  lw_text_add(out, "item,value,unit,note\n");
  for (size_t i = 0; i < lw_item_count(); i++) {
    const lw_item *item = lw_item_at(i);
    /* The two coordinates of a point, and the values of a soil, stay together. */
    if (item->repeats > 0) {
      size_t last = i;
      while (last + 1 < lw_item_count() && lw_item_at(last + 1)->repeats == item->repeats &&
             lw_item_at(last + 1)->part == item->part) {
        last++;
      }
      for (int n = 1; n <= item->repeats; n++) {
        for (size_t k = i; k <= last; k++) {
          write_both(lw_item_at(k), n, &copy, assumed, out);
        }
      }
      i = last;
    } else {
      write_both(item, 0, &copy, assumed, out);
    }
  }
}
