/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "recompute.h"

#include <criterion/criterion.h>

#include <ctype.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* A page from its first line to its last: each line is a step, a row of a table, or states something. */

enum { SHOWN_MAX = 8 };

const char *recompute_next(const char *line) {
  line += strcspn(line, "\n");
  return *line == '\n' ? line + 1 : line;
}

/* The number of a source is no number of the wall. */
static size_t source_length(const char *at) {
  bool is = at[0] == '[' && isupper((unsigned char)at[1]) && isupper((unsigned char)at[2]);
  return is ? strcspn(at, "]\n") : 0;
}

/* A unit in its metric name, so that a line is the same in either: what it was and what it is. */
static size_t put_unit(const char *line, char *out, size_t size) {
  static const char *const ALIKE[][2] = {{"lb/ft", "kN/m"}, {"psf", "kPa"}, {"pcf", "kN/m3"}, {"ft", "m"}};
  size_t length = line[0] == ' ' ? evaluate_unit(line + 1) : 0;
  out[0] = '\0';
  for (size_t i = 0; length > 0 && i < sizeof ALIKE / sizeof *ALIKE; i++)
    if (strlen(ALIKE[i][0]) == length && strncmp(line + 1, ALIKE[i][0], length) == 0) {
      snprintf(out, size, " %s", ALIKE[i][1]);
      return length + 1;
    }
  return 0;
}

/* Numbers become #, so that a line is the same of every wall; blanks run together, sources are left out. */
void recompute_key(const char *line, char *out, size_t size) {
  size_t used = 0;
  line += strspn(line, " ");
  while (*line != '\0' && *line != '\n' && used + 2 < size) {
    line += source_length(line);
    bool in_word = used > 0 && (isalpha((unsigned char)out[used - 1]) || out[used - 1] == '_');
    if (isdigit((unsigned char)*line) && !in_word) {
      char unit[16];
      line += strspn(line, "0123456789.");
      out[used++] = '#';
      line += put_unit(line, unit, sizeof unit);
      used += (size_t)snprintf(out + used, size - used, "%s", unit);
      if (used + 2 > size) used = size - 2;
    } else if (*line == ' ') {
      line += strspn(line, " ");
      out[used++] = ' ';
    } else {
      out[used++] = *line++;
    }
  }
  out[used] = '\0';
}

static int index_of(const recompute_kind *all, const char *key) {
  for (int i = 0; all[i].begins != NULL; i++)
    if (strncmp(key, all[i].begins, strlen(all[i].begins)) == 0) return i;
  return -1;
}

/* With RECOMPUTE=FILE every line that does not come out is noted there, the open ones too. */
static void note(const recompute *r, const char *line, const char *key, const char *why) {
  const char *path = getenv("RECOMPUTE"), *end = line;
  FILE *out = path != NULL ? fopen(path, "a") : NULL;
  if (out == NULL) return;
  for (int i = 0; i < 3; i++) end = recompute_next(end);
  fprintf(out, "%s\n  %s\n  %s\n%.*s", key, why, r->wall, (int)(end - line), line);
  fclose(out);
}

void recompute_fails(recompute *r, const char *line, const char *why) {
  char key[RECOMPUTE_KEY_MAX];
  recompute_key(line, key, sizeof key);
  note(r, line, key, why);
  int open = index_of(RECOMPUTE_OPEN, key);
  if (open < 0) open = index_of(RECOMPUTE_OPEN, r->under);
  if (open >= 0) {
    r->open[open] = true;
    return;
  }
  if (r->shown++ >= SHOWN_MAX) return;
  const char *end = line;
  for (int i = 0; i < 3; i++) end = recompute_next(end);
  cr_expect(false, "%s: %s\n%s\n%.*s", r->wall, why, key, (int)(end - line), line);
}

static bool has_digit(const char *key) {
  return strchr(key, '#') != NULL;
}

void recompute_states(recompute *r, const char *line) {
  char key[RECOMPUTE_KEY_MAX];
  recompute_key(line, key, sizeof key);
  if (!has_digit(key)) return;
  if (index_of(RECOMPUTE_STATED, key) >= 0)
    r->stated++;
  else
    recompute_fails(r, line, "neither computes nor is of a kind that states");
}

/* Headings stand at the margin or one column in; a check's lines stand below its name and a colon. */
static void note_heading(recompute *r, const char *line) {
  char key[RECOMPUTE_KEY_MAX];
  size_t length = strcspn(line, "\n");
  if (length > 0 && line[length - 1] == ':') r->said.count = 0;
  if (strspn(line, " ") > 1 || *line == '\n') return;
  recompute_key(line, key, sizeof key);
  r->said.count = 0;
  snprintf(r->under, sizeof r->under, "under: %.60s", key);
}

static const char US_HEADING[] = "\nWorking, for one foot run";

void recompute_page(recompute *r, const char *wall, const char *page) {
  const char *line = strstr(page, "\nWorking, for one ");
  const char *end = strstr(page, "\nNot checked\n");
  cr_assert(line != NULL && end != NULL, "%s has no working", wall);
  r->wall = wall;
  r->us = strncmp(line, US_HEADING, strlen(US_HEADING)) == 0;
  line = recompute_next(line + 1);
  while (line < end && *line != '\0') {
    note_heading(r, line);
    const char *past = recompute_table(r, line);
    if (past == NULL && recompute_is_step(line)) past = recompute_step(r, line);
    if (past == NULL) recompute_states(r, line);
    line = past != NULL ? past : recompute_next(line);
  }
}
