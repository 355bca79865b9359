/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "list.h"

#include <ctype.h>
#include <jansson.h>
#include <stdlib.h>
#include <string.h>

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

static json_t *value_of(const lw_list *list, const char *header, const char *cell) {
  double value;
  if (!is_number(list, header)) return json_string(cell);
  return lw_number_read(cell, strlen(cell), &value) ? json_real(value) : json_null();
}

static json_t *row_of(const lw_list *list, const lw_grid *grid, int row) {
  json_t *object = json_object();
  for (int i = 0; i < grid->columns && lw_grid_at(grid, 0, i)[0] != '\0'; i++) {
    const char *header = lw_grid_at(grid, 0, i);
    char key[64];
    key_of(header, key, sizeof key);
    json_object_set_new(object, key, value_of(list, header, lw_grid_at(grid, row, i)));
  }
  return object;
}

lw_status lw_list_json(const lw_list *list, const lw_grid *grid, lw_text *out) {
  json_t *array = json_array();
  for (int row = 1; row < grid->rows; row++) json_array_append_new(array, row_of(list, grid, row));
  char *dump = json_dumps(array, JSON_INDENT(2) | JSON_REAL_PRECISION(15));
  json_decref(array);
  if (dump == NULL) return LW_NO_MEMORY;
  lw_text_add(out, dump);
  lw_text_add(out, "\n");
  free(dump);
  return out->failed ? LW_NO_MEMORY : LW_OK;
}
