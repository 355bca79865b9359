/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_PRECHECK_FILE_NAMES_H
#define LOWWALL_REPORT_PRECHECK_FILE_NAMES_H

#include <stdbool.h>
#include <stddef.h>

/* Names of files in one folder, made of what people call their walls. */

enum { LW_FILE_NAME = 96 };

typedef struct lw_file_name {
  char name[LW_FILE_NAME];
  unsigned folded; /* a number of its letters, the same for small and capital ones */
} lw_file_name;

typedef struct lw_file_names {
  size_t count, room;
  lw_file_name *taken;
  bool failed; /* out of memory */
} lw_file_names;

/* A name that no other has, whatever the case of its letters: ASCII letters, digits, `-`, `_` and `.` within;
 * what else a mark has becomes `-`. So it has no folder in it, is never hidden, nor an old system's device.
 * A mark that says nothing, and one that folds to a name that is taken, take the row with them.
 *  in    mark     of the wall; "" where it has none
 *        ending   with its dot
 *  out   out      LW_FILE_NAME bytes */
void lw_file_names_make(lw_file_names *names, const char *mark, int row, const char *ending, char *out);
void lw_file_names_free(lw_file_names *names);

#endif
