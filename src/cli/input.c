/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "input.h"

#include <errno.h>
#include <string.h>

#include "sheet/faults.h"
#include "say.h"

/* Room for every item there is, each in a cell as long as a cell may be, and for a cell that is far too long:
 * a reader that sees it whole names it. Who pipes a device into lowwall is stopped here. */
#define SHEET_MAX ((size_t)16 * 1024 * 1024)

static lw_status unreadable(lw_faults *faults, const char *wanted) {
  lw_faults_add(faults, LW_FAULT_UNREADABLE, (lw_cell_place){0, 0}, "", "", "%s", wanted);
  return LW_FAULTS;
}

static lw_status because(const lw_input *input, lw_faults *faults, int reason) {
  char wanted[160];
  if (reason == ENOMEM) return LW_NO_MEMORY;
  lw_print(wanted, sizeof wanted, "%s; the system says: %s", input->wanted ? input->wanted : "a sheet",
           strerror(reason));
  return unreadable(faults, wanted);
}

lw_status lw_input_next(lw_input *input, lw_faults *faults) {
  errno = 0;
  input->length = fread(input->block, 1, sizeof input->block, input->file);
  return ferror(input->file) ? because(input, faults, errno) : LW_OK;
}

lw_status lw_input_open(lw_input *input, const char *name, lw_faults *faults) {
  lw_print(faults->file, sizeof faults->file, "%.127s", name);
  lw_cli_clean(faults->file);
  input->file = strcmp(name, "-") == 0 ? stdin : fopen(name, "rb");
  return input->file != NULL ? lw_input_next(input, faults) : because(input, faults, errno);
}

lw_status lw_input_rest(lw_input *input, lw_text *text, lw_faults *faults) {
  lw_status status = LW_OK;
  while (status == LW_OK && input->length > 0) {
    lw_text_add_bytes(text, input->block, input->length);
    if (text->failed) return LW_NO_MEMORY;
    if (text->length > SHEET_MAX) return unreadable(faults, "a sheet of at most 16 MB");
    status = lw_input_next(input, faults);
  }
  return status;
}

void lw_input_close(lw_input *input) {
  if (input->file != NULL && input->file != stdin) fclose(input->file);
  input->file = NULL;
}
