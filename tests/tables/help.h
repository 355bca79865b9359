/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_TABLES_HELP_H
#define TESTS_TABLES_HELP_H

#include <lowwall/tables.h>

/* A directory of its own for one test, gone at its end. */
typedef struct table_directory {
  char path[64];
} table_directory;

void table_directory_make(table_directory *directory);
/** Write text as the file `name` in it. */
void table_directory_write(const table_directory *directory, const char *name, const char *bytes,
                           size_t length);
void table_directory_remove(const table_directory *directory);

/** The built-in CSV text of a table with its first `was` replaced by `is`; to be freed. */
char *table_with(const char *name, const char *was, const char *is);

/** Read with one file replaced.
 *  gives the status; error and tables as lw_tables_read leaves them */
lw_status table_read_with(const char *file, const char *bytes, size_t length, lw_tables *tables,
                          lw_error *error);

/** The built-in tables, read once a process. */
const lw_tables *tables_built_in(void);

#endif
