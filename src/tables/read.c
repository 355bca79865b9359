/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "embedded.h"
#include "folder.h"
#include "replaced.h"
#include "shape.h"

#include <stdlib.h>
#include <string.h>

static lw_status no_memory(lw_error *error) {
  return lw_error_set(error, LW_NO_MEMORY, LW_REASON_NONE, "out of memory");
}

static lw_status add_embedded(const char *name, lw_text *text, lw_error *error) {
  for (size_t i = 0; i < lw_embedded_table_count; i++) {
    const lw_embedded *table = &lw_embedded_tables[i];
    if (strcmp(table->name, name) != 0) continue;
    lw_text_add_bytes(text, (const char *)table->bytes, table->length);
    return text->failed ? no_memory(error) : LW_OK;
  }
  return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NONE, "there is no table %.60s", name);
}

static lw_status add_table(const char *directory, const char *name, lw_text *text, lw_error *error) {
  bool found = false;
  lw_status status = directory ? lw_folder_read(directory, name, text, &found, error) : LW_OK;
  return status != LW_OK || found ? status : add_embedded(name, text, error);
}

lw_status lw_tables_csv(const char *directory, const char *name, lw_text *text, lw_error *error) {
  if (!lw_shape_find(name, strlen(name)))
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NONE, "there is no table %.60s", name);
  lw_status status = directory ? lw_folder_check(directory, error) : LW_OK;
  return status == LW_OK ? add_table(directory, name, text, error) : status;
}

/* A table that a directory holds is remembered as such. */
static lw_status note_replaced(const char *directory, const char *name, lw_tables *tables, lw_error *error) {
  lw_text file = {0}, built_in = {0};
  bool found = false;
  lw_status status = lw_folder_read(directory, name, &file, &found, error);
  if (status == LW_OK && found) status = add_embedded(name, &built_in, error);
  if (status == LW_OK && found)
    lw_replaced_note(name, &file, &built_in, tables->replaced, sizeof tables->replaced);
  lw_text_free(&file);
  lw_text_free(&built_in);
  return status;
}

static lw_status read_all(const char *directory, lw_tables *tables, lw_error *error) {
  lw_status status = directory ? lw_folder_check(directory, error) : LW_OK;
  lw_text text = {0};
  const lw_shape *shape;
  for (size_t i = 0; status == LW_OK && (shape = lw_shape_at(i)) != NULL; i++) {
    lw_text_clear(&text);
    status = add_table(directory, shape->name, &text, error);
    const char *bytes = text.data ? text.data : "";
    if (status == LW_OK) status = lw_shape_read(shape, bytes, text.length, tables, error);
    if (status == LW_OK && directory) status = note_replaced(directory, shape->name, tables, error);
  }
  lw_text_free(&text);
  if (status == LW_OK) status = lw_tables_link(tables, error);
  return status == LW_OK ? lw_tables_check(tables, error) : status;
}

/* Read beside and copied when all is well, so that a failure leaves the caller's tables as they were. */
lw_status lw_tables_read(const char *directory, lw_tables *tables, lw_error *error) {
  lw_tables *fresh = calloc(1, sizeof *fresh);
  if (!fresh) return no_memory(error);
  lw_status status = read_all(directory, fresh, error);
  if (status == LW_OK) *tables = *fresh;
  free(fresh);
  return status;
}
