/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <stdio.h>
#include <stdlib.h>

#include "../validation.h"

/* Print docs/validation.md as it would be now. Run from the top level. */
int main(void) {
  lw_text text = {0};
  validation_write(&text);
  size_t written = text.failed ? 0 : fwrite(text.data, 1, text.length, stdout);
  bool whole = !text.failed && written == text.length && fflush(stdout) == 0;
  lw_text_free(&text);
  return whole ? EXIT_SUCCESS : EXIT_FAILURE;
}
