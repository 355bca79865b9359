/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _XOPEN_SOURCE 700
#include "help.h"

#include <criterion/criterion.h>

#include <dirent.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

void table_directory_make(table_directory *directory) {
  snprintf(directory->path, sizeof directory->path, "%s", P_tmpdir "/lowwall-tables-XXXXXX");
  cr_assert_not_null(mkdtemp(directory->path));
}

void table_directory_write(const table_directory *directory, const char *name, const char *bytes,
                           size_t length) {
  char path[160];
  snprintf(path, sizeof path, "%s/%s", directory->path, name);
  FILE *file = fopen(path, "wb");
  cr_assert_not_null(file);
  cr_assert_eq(fwrite(bytes, 1, length, file), length);
  cr_assert_eq(fclose(file), 0);
}

void table_directory_remove(const table_directory *directory) {
  DIR *open = opendir(directory->path);
  cr_assert_not_null(open);
  const struct dirent *entry;
  while ((entry = readdir(open)) != NULL) {
    char path[400];
    snprintf(path, sizeof path, "%s/%s", directory->path, entry->d_name);
    if (entry->d_name[0] != '.' && unlink(path) != 0) rmdir(path);
  }
  closedir(open);
  rmdir(directory->path);
}

char *table_with(const char *name, const char *was, const char *is) {
  lw_text text = {0};
  cr_assert_eq(lw_tables_csv(NULL, name, &text, NULL), LW_OK);
  const char *at = strstr(text.data, was);
  cr_assert_not_null(at, "%s.csv holds no \"%s\"", name, was);
  lw_text changed = {0};
  lw_text_add_bytes(&changed, text.data, (size_t)(at - text.data));
  lw_text_add(&changed, is);
  lw_text_add(&changed, at + strlen(was));
  lw_text_free(&text);
  cr_assert(!changed.failed);
  return changed.data;
}

lw_status table_read_with(const char *file, const char *bytes, size_t length, lw_tables *tables,
                          lw_error *error) {
  table_directory directory;
  table_directory_make(&directory);
  table_directory_write(&directory, file, bytes, length);
  lw_status status = lw_tables_read(directory.path, tables, error);
  table_directory_remove(&directory);
  return status;
}

const lw_tables *tables_built_in(void) {
  static lw_tables tables;
  if (tables.soil_count == 0) cr_assert_eq(lw_tables_read(NULL, &tables, NULL), LW_OK);
  return &tables;
}
