/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _XOPEN_SOURCE 700
#include <stdio.h>
#include <string.h>
#include <unistd.h>

#include "tables/fold.h"
#include "ask_line.h"
#include "ask_print.h"

/* Words that are no answer, folded. */
static const struct {
  const char *word;
  lw_ask_heard said;
} WORDS[] = {{"back", LW_HEARD_BACK}, {"b", LW_HEARD_BACK},        {"skip", LW_HEARD_SKIP},
             {"s", LW_HEARD_SKIP},    {"?", LW_HEARD_WHY},         {"why", LW_HEARD_WHY},
             {"help", LW_HEARD_WHY},  {"stop", LW_HEARD_STOP},     {"quit", LW_HEARD_STOP},
             {"q", LW_HEARD_STOP},    {"metric", LW_HEARD_METRIC}, {"us", LW_HEARD_US}};

/* gives false at the end of the input. What does not fit is left out */
static bool read_line(char line[LW_ASK_LINE]) {
  size_t used = 0;
  int c;
  while ((c = getc(stdin)) != EOF && c != '\n')
    if (used + 1 < LW_ASK_LINE) line[used++] = c == '\0' ? '?' : (char)c;
  line[used] = '\0';
  return c != EOF || used > 0;
}

static void trim(char *line) {
  size_t before = strspn(line, " \t\r"), length = strlen(line);
  while (length > before && strchr(" \t\r", line[length - 1])) length--;
  memmove(line, line + before, length - before);
  line[length - before] = '\0';
}

/* So that a page that is kept can be read. */
static void say_back(lw_ask_session *session, const char *line) {
  lw_text out = {0};
  lw_text_addf(&out, "%s\n", line);
  lw_ask_flush(session, &out);
}

lw_ask_heard lw_ask_read(lw_ask_session *session, char line[LW_ASK_LINE]) {
  char folded[LW_FOLDED_MAX];
  if (session->ended || session->no_memory || session->not_written || !read_line(line)) {
    session->ended = true;
    return LW_HEARD_STOP;
  }
  trim(line);
  lw_cli_clean(line);
  if (isatty(STDIN_FILENO) != 1) say_back(session, line);
  if (line[0] == '\0') return LW_HEARD_NOTHING;
  lw_fold(line, strlen(line), folded);
  for (size_t i = 0; i < sizeof WORDS / sizeof *WORDS; i++)
    if (strcmp(folded, WORDS[i].word) == 0) return WORDS[i].said;
  if (strcmp(folded, "d") == 0) lw_print(line, LW_ASK_LINE, "not known");
  return LW_HEARD_ANSWER;
}
