/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "say.h"

#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/utf8.h"
#include "tables/fold.h"

/* What the command says on standard error. */

void lw_cli_clean(char *text) {
  lw_utf8_tame(text);
  lw_utf8_tame_ascii(text, '?');
}

int lw_cli_refuse(const char *command, const char *format, ...) {
  char said[1024];
  const char *space = command[0] != '\0' ? " " : "";
  va_list arguments;
  va_start(arguments, format);
  vsnprintf(said, sizeof said, format, arguments);
  va_end(arguments);
  lw_cli_clean(said);
  fprintf(stderr, "lowwall%s%s: %s\nlowwall help%s%s says what there is.\n", space, command, said, space,
          command);
  return LW_EXIT_BAD_INPUT;
}

const char *lw_cli_nearest(const char *stood, const char *const *names) {
  char folded[LW_FOLDED_MAX];
  lw_fold(stood, strlen(stood), folded);
  int best = 1 + (int)strlen(folded) / 2;
  const char *nearest = NULL;
  for (; *names != NULL; names++) {
    char other[LW_FOLDED_MAX];
    lw_fold(*names, strlen(*names), other);
    int distance = lw_edit_distance(folded, other);
    if (distance >= best) continue;
    best = distance;
    nearest = *names;
  }
  return nearest;
}

int lw_cli_print_faults(const lw_faults *faults) {
  lw_text text = {0};
  lw_faults_print(faults, &text);
  if (text.data != NULL) fwrite(text.data, 1, text.length, stderr);
  lw_text_free(&text);
  return LW_EXIT_BAD_INPUT;
}

int lw_cli_no_memory(void) {
  fputs("lowwall: no-memory: out of memory\n", stderr);
  return LW_EXIT_OTHER;
}

int lw_cli_fail(const char *command, lw_status status, const lw_error *error) {
  char said[sizeof error->text];
  if (status == LW_NO_MEMORY) return lw_cli_no_memory();
  lw_print(said, sizeof said, "%s", error->text);
  lw_cli_clean(said);
  fprintf(stderr, "lowwall %s: %s: %s\n", command, lw_status_slug(status), said);
  return LW_EXIT_OTHER;
}

lw_tables *lw_cli_tables(const char *directory, int *exit_status) {
  lw_tables *tables = malloc(sizeof *tables);
  lw_error error = {0};
  if (tables == NULL) {
    *exit_status = lw_cli_no_memory();
    return NULL;
  }
  lw_status status = lw_tables_read(directory, tables, &error);
  if (status == LW_OK) return tables;
  free(tables);
  fprintf(stderr, "lowwall: tables: %s: %s\n", lw_status_slug(status), error.text);
  *exit_status = status == LW_NO_MEMORY ? LW_EXIT_OTHER : LW_EXIT_BAD_INPUT;
  return NULL;
}

bool lw_cli_ends_in(const char *name, const char *ending) {
  size_t length = name != NULL ? strlen(name) : 0, tail = strlen(ending);
  return length > tail && strcmp(name + length - tail, ending) == 0;
}
