/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_OUTPUT_H
#define LOWWALL_CLI_OUTPUT_H

#include <stdbool.h>
#include <stdio.h>

#include <lowwall/base.h>

/* Output that is there as a whole or not at all: a file is written beside its place and put there at the end.
 * What goes wrong is said once, on standard error. */
typedef struct lw_output {
  FILE *file;
  const char *name;      /* as the user wrote it; NULL: standard output */
  char *target, *beside; /* NULL: written directly, as to a terminal, pipe or device */
  bool failed;
} lw_output;

/* Begin. name NULL or "-" is standard output. false when it cannot be */
bool lw_output_open(lw_output *output, const char *name);
/* Refuse to open what exists as a file already. */
bool lw_output_open_new(lw_output *output, const char *name);
/* Is the output a table of a folder of tables that is in use? Neither need be there. */
bool lw_output_is_table(const char *output, const char *directory);
/* true as long as all is well */
bool lw_output_add(lw_output *output, const lw_text *text);
/* End; without keep a file is thrown away. gives false when something went wrong, then or before */
bool lw_output_close(lw_output *output, bool keep);

/* Say that a file or a folder was not written; NULL is standard output. gives the exit status */
int lw_output_not_written(const char *name, const char *why);
/* What the system says, with the cure where it is plain. */
const char *lw_output_why(int error);

/* The whole of it at once. gives the exit status, done if all is well; frees the text */
int lw_output_write(const char *name, lw_text *text, int done);
int lw_output_write_new(const char *name, lw_text *text, int done);
/* A page of help, to standard output. gives the exit status */
int lw_output_print(const char *page);

#endif
