/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "as.h"

#include <string.h>

#include "say.h"

bool lw_cli_take_as(const char *command, bool csv, bool json, lw_cli_as *taken) {
  for (int as = 0; taken->given != NULL && as < LW_AS_COUNT; as++)
    if (strcmp(taken->given, lw_as_slug((lw_as)as)) == 0) taken->as = (lw_as)as;
  if (csv && json)
    lw_cli_refuse(command, "bad-option: --csv or --json, not both");
  else if (taken->given != NULL && (csv || json))
    lw_cli_refuse(command,
                  "bad-option: --as is for what people read, and %s for programs; leave out one of them",
                  csv ? "--csv" : "--json");
  else
    return true;
  return false;
}

void lw_cli_title(const lw_result *result, const char *what, char *out, size_t size) {
  const char *title = result->given.about.title.text, *mark = result->given.about.mark.text;
  const bool both = title[0] != '\0' && mark[0] != '\0';
  char words[2 * LW_WORDS_MAX + 8];
  lw_print(words, sizeof words, "%s%s%s", title, both ? " - " : "", mark);
  lw_print(out, size, "%s", words[0] != '\0' ? words : what);
  lw_cli_clean(out);
}
