/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ask_print.h"

#include <errno.h>
#include <stdarg.h>
#include <stdio.h>

#include "base/print.h"

lw_page lw_ask_page(const lw_ask_session *session, lw_text *out) {
  return (lw_page){.out = out,
                   .style = {.columns = LW_SCREEN_COLUMNS},
                   .units = session->asking.us ? LW_UNITS_US : LW_UNITS_METRIC};
}

/* What is not whole is not printed, nor anything after it. */
void lw_ask_flush(lw_ask_session *session, lw_text *text) {
  session->no_memory = session->no_memory || text->failed;
  if (!session->no_memory && !session->not_written) {
    errno = 0;
    bool cut = text->length > 0 && fwrite(text->data, 1, text->length, stdout) < text->length;
    if (cut || fflush(stdout) != 0) session->not_written = errno != 0 ? errno : EIO;
  }
  lw_text_free(text);
}

void lw_ask_say(lw_ask_session *session, const char *format, ...) {
  char words[600];
  lw_text out = {0};
  const lw_page page = lw_ask_page(session, &out);
  va_list arguments;
  va_start(arguments, format);
  lw_print_list(words, sizeof words, format, arguments);
  va_end(arguments);
  lw_page_say(&page, "", words);
  lw_ask_flush(session, &out);
}
