/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

const lw_tables *sheet_test_tables(void) {
  static lw_tables tables;
  static bool read;
  lw_error error = {0};
  if (!read) {
    cr_assert(lw_tables_read(NULL, &tables, &error) == LW_OK, "%s", error.text);
    read = true;
  }
  return &tables;
}

lw_text sheet_test_file(const char *path) {
  lw_text text = {0};
  char part[4096];
  FILE *file = fopen(path, "rb");
  cr_assert(file != NULL, "%s", path);
  for (size_t got; (got = fread(part, 1, sizeof part, file)) > 0;) {
    lw_text_add_bytes(&text, part, got);
  }
  fclose(file);
  return text;
}

lw_status sheet_test_settled(const char *sheet, lw_case *c, lw_faults *faults) {
  memset(faults, 0, sizeof *faults);
  lw_status status = lw_sheet_read(sheet, strlen(sheet), c, faults);
  return status == LW_OK ? lw_case_complete(sheet_test_tables(), c, faults) : status;
}

lw_case sheet_test_case(const char *const *arguments) {
  lw_case c = {0};
  lw_faults faults = {0};
  for (int i = 0; arguments[i] != NULL; i++) {
    lw_sheet_override(arguments[i], i + 1, &c, &faults);
  }
  lw_case_complete(sheet_test_tables(), &c, &faults);
  lw_text text = {0};
  lw_faults_print(&faults, &text);
  cr_assert(faults.count == 0, "%s", text.data);
  return c;
}

static bool same_item(const lw_item *item, int number, lw_case *a, lw_case *b) {
  if (item->type == LW_ITEM_QUANTITY) {
    const lw_quantity *p = lw_item_quantity(item, number, a);
    const lw_quantity *q = lw_item_quantity(item, number, b);
    bool value = p->origin == LW_ABSENT || (memcmp(&p->si, &q->si, sizeof p->si) == 0 && p->kind == q->kind);
    return p->origin == q->origin && value;
  }
  if (item->type == LW_ITEM_CHOICE) {
    const lw_choice *p = lw_item_choice(item, number, a);
    const lw_choice *q = lw_item_choice(item, number, b);
    return p->origin == q->origin && p->value == q->value;
  }
  const lw_words *p = lw_item_words(item, number, a);
  const lw_words *q = lw_item_words(item, number, b);
  return p->origin == q->origin && strcmp(p->text, q->text) == 0;
}

static bool same_likely(const lw_item *item, int number, const lw_case *a, const lw_case *b) {
  const lw_quantity *p = lw_item_likely(item, number, a), *q = lw_item_likely(item, number, b);
  if (p == NULL || q == NULL) return p == q;
  return memcmp(&p->si, &q->si, sizeof p->si) == 0 && p->kind == q->kind && p->origin == q->origin;
}

bool sheet_test_same(const lw_case *a, const lw_case *b, char *difference, size_t size) {
  lw_case first = *a;
  lw_case second = *b;
  difference[0] = '\0';
  for (size_t i = 0; i < lw_item_count(); i++) {
    const lw_item *item = lw_item_at(i);
    for (int n = item->repeats > 0 ? 1 : 0; n <= item->repeats; n++) {
      if (!same_item(item, n, &first, &second)) {
        lw_item_print_name(item, n, difference, size);
        return false;
      }
      if (!same_likely(item, n, a, b)) {
        lw_print(difference, size, "likely value");
        return false;
      }
    }
  }
  return true;
}
