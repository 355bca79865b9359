/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "file_names.h"

#include <stdlib.h>
#include <string.h>
#include <strings.h>

#include <lowwall/base.h>

/* Room for "row-2147483647-", "-row-2147483647-999999" and an ending. */
enum { STEM = LW_FILE_NAME - 48 };

static bool is_plain(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_';
}

/* One `-` for each run of other letters, none at the ends; dots within stay. */
static void fold_mark(const char *mark, char out[STEM]) {
  size_t used = 0;
  for (const char *c = mark; *c != '\0' && used + 1 < STEM; c++) {
    bool gap = !is_plain(*c) && *c != '.';
    if (used == 0 && (gap || *c == '.')) continue;
    if (gap && out[used - 1] == '-') continue;
    out[used++] = gap ? '-' : *c;
  }
  while (used > 0 && (out[used - 1] == '-' || out[used - 1] == '.')) used--;
  out[used] = '\0';
}

/* Names that some systems keep for devices, with any ending; and the one of the page before all. */
static bool is_kept(const char *stem) {
  static const char *const kept[] = {"con", "prn", "aux", "nul", "com", "lpt", "index"};
  size_t length = strcspn(stem, ".");
  for (size_t i = 0; i < sizeof kept / sizeof *kept; i++) {
    size_t of = strlen(kept[i]);
    bool same = length >= of && strncasecmp(stem, kept[i], of) == 0;
    bool port = length == of + 1 && of == 3 && stem[of] >= '0' && stem[of] <= '9';
    if (same && (length == of || port)) return true;
  }
  return false;
}

static unsigned folded(const char *name) {
  unsigned sum = 2166136261u;
  for (const char *c = name; *c != '\0'; c++) {
    unsigned char small = (unsigned char)(*c >= 'A' && *c <= 'Z' ? *c - 'A' + 'a' : *c);
    sum = (sum ^ small) * 16777619u;
  }
  return sum;
}

static bool is_taken(const lw_file_names *names, const char *name) {
  unsigned number = folded(name);
  for (size_t i = 0; i < names->count; i++)
    if (names->taken[i].folded == number && strcasecmp(names->taken[i].name, name) == 0) return true;
  return false;
}

static void take(lw_file_names *names, const char *name) {
  if (names->count == names->room) {
    size_t room = names->room ? 2 * names->room : 64;
    lw_file_name *more = realloc(names->taken, room * sizeof *more);
    names->failed = names->failed || !more;
    if (!more) return;
    names->taken = more;
    names->room = room;
  }
  lw_file_name *taken = &names->taken[names->count++];
  lw_print(taken->name, sizeof taken->name, "%s", name);
  taken->folded = folded(name);
}

void lw_file_names_make(lw_file_names *names, const char *mark, int row, const char *ending, char *out) {
  char stem[STEM], base[LW_FILE_NAME];
  fold_mark(mark, stem);
  if (stem[0] == '\0')
    lw_print(base, sizeof base, "row-%d", row);
  else if (is_kept(stem))
    lw_print(base, sizeof base, "row-%d-%s", row, stem);
  else
    lw_print(base, sizeof base, "%s", stem);
  lw_print(out, LW_FILE_NAME, "%s%s", base, ending);
  if (is_taken(names, out)) lw_print(out, LW_FILE_NAME, "%s-row-%d%s", base, row, ending);
  for (int i = 2; is_taken(names, out); i++)
    lw_print(out, LW_FILE_NAME, "%s-row-%d-%d%s", base, row, i, ending);
  take(names, out);
}

void lw_file_names_free(lw_file_names *names) {
  free(names->taken);
  *names = (lw_file_names){.count = 0};
}
