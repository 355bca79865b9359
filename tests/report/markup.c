/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "markup.h"

#include <stddef.h>
#include <string.h>

enum { DEEP = 64, NAME = 24 };

static bool entity(const char *at) {
  static const char *const names[] = {"&amp;", "&lt;", "&gt;", "&quot;"};
  for (size_t i = 0; i < sizeof names / sizeof *names; i++)
    if (strncmp(at, names[i], strlen(names[i])) == 0) return true;
  return false;
}

/* The end of a tag: its `>` outside of quotes; NULL: there is none. */
static const char *tag_end(const char *at) {
  bool quoted = false;
  for (; *at != '\0'; at++) {
    if (*at == '"') quoted = !quoted;
    if (*at == '<' && !quoted && at[1] != '\0') return NULL;
    if (*at == '>' && !quoted) return at;
  }
  return NULL;
}

bool markup_is_closed(const char *text) {
  char open[DEEP][NAME];
  int deep = 0;
  for (const char *at = text; *at != '\0'; at++) {
    if (*at == '&' && !entity(at)) return false;
    if (*at != '<') continue;
    const char *end = tag_end(at + 1);
    if (!end) return false;
    size_t length = strcspn(at + 1, " />");
    bool closing = at[1] == '/', alone = end[-1] == '/' || at[1] == '!' || strncmp(at, "<meta", 5) == 0;
    if (closing) {
      size_t named = (size_t)(end - at) - 2;
      if (deep == 0 || strlen(open[deep - 1]) != named || memcmp(open[deep - 1], at + 2, named) != 0)
        return false;
      deep--;
    } else if (!alone) {
      if (deep == DEEP || length >= NAME) return false;
      memcpy(open[deep], at + 1, length);
      open[deep++][length] = '\0';
    }
    at = end;
  }
  return deep == 0;
}
