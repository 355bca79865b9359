/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "list.h"

#include <ctype.h>
#include <string.h>

#include "report/json/set.h"
#include "tables/shape.h"

/* Is the column one of numbers? Of a published table its shape says so. */
static bool is_number(const lw_list *list, const char *header) {
  const lw_shape *shape = list->make == NULL ? lw_shape_find(list->name, strlen(list->name)) : NULL;
  if (shape == NULL) return list->numbers != NULL && lw_tables_listed(list->numbers, header);
  for (size_t i = 0; i < shape->column_count; i++)
    if (strcmp(shape->columns[i].header, header) == 0)
      return shape->columns[i].type == LW_COLUMN_NUMBER || shape->columns[i].type == LW_COLUMN_INTEGER;
  return false;
}

/* "friction_angle [deg]" becomes "friction_angle_deg", "unit_weight [kN/m3]" "unit_weight_kn_per_m3". */
static void key_of(const char *header, char *out, size_t size) {
  size_t used = 0;
  for (const char *c = header; *c != '\0' && used + 6 < size; c++) {
    if (*c == ' ' || *c == '[') {
      if (used > 0 && out[used - 1] != '_') out[used++] = '_';
    } else if (*c == '/') {
      memcpy(out + used, "_per_", 5);
      used += 5;
    } else if (*c != ']') {
      out[used++] = (char)tolower((unsigned char)*c);
    }
  }
  out[used] = '\0';
}

static void set_value(json_t *object, const char *key, const char *cell, bool number) {
  lw_number value = {0};
  value.known = number && lw_number_read(cell, strlen(cell), &value.value);
  if (number)
    lw_json_set_real(object, key, value);
  else
    lw_json_set_text(object, key, cell);
}

static void add_row(json_t *array, const lw_list *list, const lw_grid *grid, int row) {
  json_t *object = lw_json_entry(array);
  for (int i = 0; i < grid->columns && lw_grid_at(grid, 0, i)[0] != '\0'; i++) {
    const char *header = lw_grid_at(grid, 0, i);
    char key[64];
    key_of(header, key, sizeof key);
    set_value(object, key, lw_grid_at(grid, row, i), is_number(list, header));
  }
}

lw_status lw_list_json(const lw_list *list, const lw_grid *grid, lw_text *out) {
  enum { INDENT = 2 };
  json_t *array = json_array();
  for (int row = 1; row < grid->rows; row++) add_row(array, list, grid, row);
  return lw_json_write_exact(array, INDENT, out);
}
