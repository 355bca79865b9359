/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_INPUT_H
#define LOWWALL_CLI_INPUT_H

#include <stdio.h>

#include <lowwall/sheet.h>

/* A sheet read in blocks, so that a schedule of any length needs the memory of one. */
enum { LW_INPUT_BLOCK = 64 * 1024 };

typedef struct lw_input {
  FILE *file;
  const char *wanted; /* what it should be, for faults; NULL: a sheet */
  char block[LW_INPUT_BLOCK];
  size_t length; /* of what stands in the block; 0 at the end */
} lw_input;

/* Open a file, or standard input for "-", and read the first block. Faults take the name and what is wrong.
 * gives LW_OK · LW_FAULTS */
lw_status lw_input_open(lw_input *input, const char *name, lw_faults *faults);
/* Read the next block. gives LW_OK, also at the end · LW_FAULTS */
lw_status lw_input_next(lw_input *input, lw_faults *faults);
/* Add the block and all that follows to a text.
 * gives LW_OK · LW_FAULTS, also when it is longer than a sheet may be · LW_NO_MEMORY */
lw_status lw_input_rest(lw_input *input, lw_text *text, lw_faults *faults);
void lw_input_close(lw_input *input);

#endif
