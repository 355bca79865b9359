/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "recompute.h"

#include <criterion/criterion.h>

#include <ctype.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "report/working/symbols.h"
#include "tables/titles.h"

/* What a working explains at its end, held against what it prints, by a reading of its own. */

enum { MOST = 300, BYTES = 40 };

typedef struct explained {
  int count;
  char name[MOST][BYTES];
  bool met[MOST];
} explained;

/* "  Ka      what it is": the names below a heading, up to a blank line. */
static void read_list(const char *wall, const char *page, const char *heading, explained *all) {
  const char *line = strstr(page, heading);
  cr_assert_not_null(line, "%s: no %s", wall, heading);
  all->count = 0;
  for (line = recompute_next(line + 1); *line != '\n' && *line != '\0'; line = recompute_next(line)) {
    size_t length = strcspn(line + 2, " \n");
    bool note = strncmp(line, "  A number behind ", 18) == 0;
    if (strspn(line, " ") != 2 || note) continue;
    cr_assert(all->count < MOST && length < BYTES, "%s", wall);
    snprintf(all->name[all->count], BYTES, "%.*s", (int)length, line + 2);
    const char *words = line + 2 + length + strspn(line + 2 + length, " ");
    cr_expect(strcspn(words, "\n") > 2, "%s: %s is not explained", wall, all->name[all->count]);
    for (int i = 0; i < all->count; i++)
      cr_expect_str_neq(all->name[i], all->name[all->count], "%s explains %s twice", wall, all->name[i]);
    all->met[all->count++] = false;
  }
}

static int find(const explained *all, const char *name) {
  for (int i = 0; i < all->count; i++)
    if (strcmp(all->name[i], name) == 0) return i;
  return -1;
}

/* Without the number of its layer, where it is not explained with it. */
static void expect_explained(const char *wall, explained *all, const char *symbol, const char *line) {
  char name[BYTES];
  snprintf(name, sizeof name, "%s", symbol);
  size_t length = strlen(name);
  while (find(all, name) < 0 && length > 1 && isdigit((unsigned char)name[length - 1])) name[--length] = '\0';
  int at = find(all, name);
  cr_expect(at >= 0, "%s: %s is not explained: %.60s", wall, symbol, line);
  if (at >= 0) all->met[at] = true;
}

static size_t name_length(const char *at) {
  size_t length = 0;
  if (!isalpha((unsigned char)at[0])) return 0;
  while (isalnum((unsigned char)at[length]) || at[length] == '\'') length++;
  return length;
}

/* One of few letters, or with a capital, a figure or a Greek name in it: words of a sentence are longer. */
static bool is_symbol(const char *name) {
  static const char *const LONG[] = {"gamma", "phi", "phid", "phim", "rho", "psi",  "omega",  "gsat",  "mub",
                                     "muj",   "has", "shn",  "hsn",  "Mhw", "qnet", "dgamma", "igamma"};
  static const char *const WORDS[] = {"it", "of", "is", "as", "at", "to", "in", "by", "on", "x", "pi"};
  for (size_t i = 0; i < sizeof WORDS / sizeof *WORDS; i++)
    if (strcmp(name, WORDS[i]) == 0) return false;
  for (size_t i = 0; i < sizeof LONG / sizeof *LONG; i++)
    if (strcmp(name, LONG[i]) == 0) return true;
  return strlen(name) <= 2 || (strlen(name) <= 4 && strpbrk(name + 1, "0123456789'") != NULL);
}

/* Whatever stands before " = " and a number, and what a line begins with before " = ". */
static void hold_line(const char *wall, explained *all, const char *line) {
  const char *end = line + strcspn(line, "\n");
  for (const char *at = line; at < end;) {
    char name[BYTES];
    size_t length = name_length(at);
    if (length == 0) {
      at++;
      continue;
    }
    const char *past = at + length;
    bool begins = at == line + strspn(line, " ") && at > line;
    bool value = strncmp(past, " = ", 3) == 0 && (isdigit((unsigned char)past[3]) || past[3] == '-');
    bool step = begins && strncmp(past + strspn(past, " "), "= ", 2) == 0;
    snprintf(name, sizeof name, "%.*s", (int)(length < BYTES ? length : BYTES - 1), at);
    if (step || (value && is_symbol(name))) expect_explained(wall, all, name, line);
    at = past;
  }
}

/* The heads of the tables whose columns are symbols. */
static void hold_head(const char *wall, explained *all, const char *line) {
  static const char *const HEADS[] = {"depth ", "x ", "D ", "height "};
  const char *at = line + strspn(line, " "), *end = line + strcspn(line, "\n");
  bool head = false;
  for (size_t i = 0; i < sizeof HEADS / sizeof *HEADS; i++)
    head = head || strncmp(at, HEADS[i], strlen(HEADS[i])) == 0;
  if (!head || at < line + 4 || memchr(line, '=', (size_t)(end - line)) != NULL) return;
  for (; at < end; at += strcspn(at, " \n"), at += strspn(at, " ")) {
    char name[BYTES];
    size_t length = name_length(at);
    snprintf(name, sizeof name, "%.*s", (int)(length < BYTES ? length : BYTES - 1), at);
    bool ends = strncmp(at + length, "  ", 2) == 0 || at[length] == '\n', x = strcmp(name, "x") == 0;
    if (length > 0 && ends && (is_symbol(name) || x)) expect_explained(wall, all, name, line);
  }
}

/* Whether a name stands anywhere in the text, as a whole word. */
static bool stands(const char *from, const char *end, const char *name) {
  size_t length = strlen(name);
  for (const char *at = strstr(from, name); at != NULL && at < end; at = strstr(at + 1, name)) {
    bool begins = !isalnum((unsigned char)at[-1]);
    size_t rest = length + strspn(at + length, "0123456789");
    if (begins && !isalnum((unsigned char)at[rest]) && at[rest] != '\'') return true;
  }
  return false;
}

static void hold_keys(const char *wall, const char *page) {
  const char *list = strstr(page, "\nSources (docs/sources.md");
  cr_assert_not_null(list);
  for (const char *line = recompute_next(list + 1); *line != '\0'; line = recompute_next(line)) {
    char key[BYTES], begin[BYTES + 8];
    if (strspn(line, " ") != 2) continue;
    snprintf(key, sizeof key, "%.*s", (int)strcspn(line + 2, " "), line + 2);
    const char *title = lw_source_title(key);
    cr_expect(title != NULL && strstr(line, title) != NULL, "%s: %s is not explained", wall, key);
    snprintf(begin, sizeof begin, "\n  %s ", key);
    const char *first = strstr(list, begin);
    cr_expect(first + 1 == line, "%s explains %s twice", wall, key);
  }
}

void recompute_symbols(const char *wall, const char *page) {
  static explained all;
  const char *from = strstr(page, "\nWorking, for"), *end = strstr(page, "\nNot checked\n");
  read_list(wall, page, "\nSymbols, as this working uses them\n", &all);
  for (const char *line = recompute_next(from + 1); line < end; line = recompute_next(line)) {
    hold_line(wall, &all, line);
    hold_head(wall, &all, line);
  }
  for (int i = 0; i < all.count; i++)
    cr_expect(all.met[i] || stands(from, end, all.name[i]), "%s explains %s, which it does not use", wall,
              all.name[i]);
  hold_keys(wall, page);
}

/* A symbol has its rows together, and in each part one meaning. */
Test(recompute, symbols_have_one_meaning_in_a_part) {
  int count = 0;
  for (int i = 0; lw_symbols[i].symbol != NULL; i++, count++) {
    cr_expect(lw_symbols[i].parts != 0 && lw_symbols[i].meaning[0] != '\0', "%s", lw_symbols[i].symbol);
    for (int k = 0; k < i; k++) {
      if (strcmp(lw_symbols[k].symbol, lw_symbols[i].symbol) != 0) continue;
      cr_expect_eq(lw_symbols[k].parts & lw_symbols[i].parts, 0, "%s means two things", lw_symbols[i].symbol);
      cr_expect_str_neq(lw_symbols[k].meaning, lw_symbols[i].meaning, "%s", lw_symbols[i].symbol);
      cr_expect_str_eq(lw_symbols[i - 1].symbol, lw_symbols[i].symbol, "%s stands apart",
                       lw_symbols[i].symbol);
    }
  }
  cr_expect(count > 200 && count < LW_SYMBOLS_MAX, "%d rows", count);
}
