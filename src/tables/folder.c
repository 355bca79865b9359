/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Directories are listed by POSIX. */
#define _POSIX_C_SOURCE 200809L

#include "folder.h"
#include "shape.h"

#include <dirent.h>
#include <errno.h>
#include <stdio.h>
#include <string.h>

enum { FILE_CEILING = 4 * 1024 * 1024 };

static lw_status no_memory(lw_error *error) {
  return lw_error_set(error, LW_NO_MEMORY, LW_REASON_NONE, "out of memory");
}

/* Why the system would not open or read it. */
static lw_status not_read(const char *path, lw_error *error) {
  if (errno == ENOMEM) return no_memory(error);
  return lw_error_set(error, LW_NOT_READ, LW_REASON_NONE, "%.150s: %.60s", path, strerror(errno));
}

static lw_status read_stream(FILE *file, const char *path, lw_text *text, lw_error *error) {
  char chunk[8192];
  size_t got, before = text->length;
  while ((got = fread(chunk, 1, sizeof chunk, file)) > 0) {
    lw_text_add_bytes(text, chunk, got);
    if (text->failed) return no_memory(error);
    if (text->length - before > FILE_CEILING)
      return lw_error_set(error, LW_TOO_MANY, LW_REASON_NONE, "%.150s is larger than a table may be", path);
  }
  return ferror(file) ? not_read(path, error) : LW_OK;
}

/* A file that is not there is no error: found stays false and the built-in table serves. */
static lw_status read_file(const char *path, lw_text *text, bool *found, lw_error *error) {
  FILE *file = fopen(path, "rb");
  *found = file != NULL;
  if (!file && errno == ENOENT) return LW_OK;
  if (!file) return not_read(path, error);
  lw_status status = read_stream(file, path, text, error);
  fclose(file);
  return status;
}

lw_status lw_folder_read(const char *directory, const char *name, lw_text *text, bool *found,
                         lw_error *error) {
  lw_text path = {0};
  *found = false;
  lw_text_addf(&path, "%s/%s.csv", directory, name);
  lw_status status = path.failed ? no_memory(error) : read_file(path.data, text, found, error);
  lw_text_free(&path);
  return status;
}

/* The name of a CSV file without its ending; 0 for other files. */
static size_t stem_length(const char *file) {
  size_t length = strlen(file);
  return length > 4 && strcmp(file + length - 4, ".csv") == 0 ? length - 4 : 0;
}

/* A directory that was mistyped, or a file with a misspelt name, would silently leave the built-in tables. */
lw_status lw_folder_check(const char *directory, lw_error *error) {
  DIR *open = opendir(directory);
  if (!open) return not_read(directory, error);
  lw_status status = LW_OK;
  int tables = 0;
  const struct dirent *entry;
  while (status == LW_OK && (entry = readdir(open)) != NULL) {
    size_t stem = stem_length(entry->d_name);
    if (stem == 0 || entry->d_name[0] == '.') continue;
    tables++;
    if (!lw_shape_find(entry->d_name, stem))
      status = lw_error_set(error, LW_FAULTS, LW_REASON_NONE,
                            "%.60s is no table of lowwall: `lowwall list` prints their names", entry->d_name);
  }
  closedir(open);
  if (status == LW_OK && tables == 0)
    return lw_error_set(error, LW_NOT_READ, LW_REASON_NONE, "%.150s holds no table, such as limits.csv",
                        directory);
  return status;
}
