/* SPDX-License-Identifier: GPL-3.0-or-later */
/* `lowwall list` prints each cell of each table, with the figures that a sentence quotes. popen is POSIX. */
#define _POSIX_C_SOURCE 200809L

#include <criterion/criterion.h>
#include <jansson.h>
#include <lowwall/tables.h>

#include <csv.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/canned.h"
#include "tables/quote.h"
#include "help.h"

enum { COLUMNS = 64 };

typedef struct reading {
  const char *table;
  const json_t *list;
  char header[COLUMNS][64];
  int row, column, cells;
} reading;

/* The n-th of an object: a column's key has its unit in other words. */
static const json_t *nth(json_t *object, int n) {
  void *at = json_object_iter(object);
  while (at && n-- > 0) at = json_object_iter_next(object, at);
  return at ? json_object_iter_value(at) : NULL;
}

/* A number is printed as one, an empty cell as null. */
static bool is_printed(const json_t *value, const char *cell) {
  if (cell[0] == '\0')
    return json_is_null(value) || (json_is_string(value) && json_string_value(value)[0] == '\0');
  if (json_is_string(value)) return strcmp(json_string_value(value), cell) == 0;
  if (json_is_boolean(value)) return strcmp(cell, json_is_true(value) ? "yes" : "no") == 0;
  return json_is_number(value) && json_number_value(value) == strtod(cell, NULL);
}

static void take_cell(void *text, size_t length, void *context) {
  reading *r = context;
  lw_text quoted = {0}, said = {0};
  char wrong[LW_QUOTE_MAX];
  (void)length;
  if (r->row == 0) {
    snprintf(r->header[r->column++], sizeof r->header[0], "%s", (const char *)text);
    return;
  }
  cr_assert_eq(lw_quote_all(tables_built_in(), text, &quoted, wrong), LW_OK);
  lw_canned_add_both(quoted.data ? quoted.data : "", &said);
  const json_t *value = nth(json_array_get(r->list, (size_t)r->row - 1), r->column);
  cr_expect(is_printed(value, said.data ? said.data : ""), "%s row %d, %s: \"%s\"", r->table, r->row + 1,
            r->header[r->column], (const char *)text);
  lw_text_free(&quoted);
  lw_text_free(&said);
  r->cells++;
  r->column++;
}

static void end_row(int ending, void *context) {
  reading *r = context;
  (void)ending;
  r->row++;
  r->column = 0;
}

static json_t *printed(const char *table) {
  char command[300];
  const char *program = getenv("LOWWALL");
  cr_assert_not_null(program);
  snprintf(command, sizeof command, "'%s' list %s --json", program, table);
  FILE *from = popen(command, "r");
  cr_assert_not_null(from);
  json_t *root = json_loadf(from, 0, NULL);
  pclose(from);
  cr_assert_not_null(root, "%s", command);
  return root;
}

Test(tables, every_cell_is_listed) {
  const char *name;
  int cells = 0;
  for (size_t i = 0; (name = lw_tables_name_at(i)) != NULL; i++) {
    lw_text text = {0};
    struct csv_parser parser;
    json_t *root = printed(name);
    reading r = {.table = name, .list = root};
    if (json_is_object(root)) r.list = json_object_get(root, "rows");
    cr_assert(json_is_array(r.list), "%s", name);
    cr_assert_eq(lw_tables_csv(NULL, name, &text, NULL), LW_OK);
    csv_init(&parser, CSV_STRICT | CSV_APPEND_NULL);
    csv_parse(&parser, text.data, text.length, take_cell, end_row, &r);
    csv_fini(&parser, take_cell, end_row, &r);
    csv_free(&parser);
    lw_text_free(&text);
    json_decref(root);
    cells += r.cells;
  }
  cr_expect_gt(cells, 8000);
}
