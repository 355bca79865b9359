/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "as.h"

#include <string.h>

#include "say.h"

bool lw_cli_take_as(const char *command, const char *value, lw_cli_as *taken) {
  if (!lw_cli_take_once(command, "--as", value, &taken->given)) return false;
  for (int as = 0; as < LW_AS_COUNT; as++) {
    taken->as = (lw_as)as;
    if (strcmp(value, lw_as_slug(taken->as)) == 0) return true;
  }
  lw_cli_refuse(command, "bad-option: --as %.40s: text, markdown or html is wanted", value);
  return false;
}

bool lw_cli_as_alone(const char *command, const lw_cli_as *taken, const char *beside) {
  if (taken->given == NULL || beside == NULL) return true;
  lw_cli_refuse(command,
                "bad-option: --as is for what people read, and %s for programs; leave out one of them",
                beside);
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
