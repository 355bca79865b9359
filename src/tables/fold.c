/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "fold.h"

#include <string.h>

static int is_blank(char c) {
  return c == ' ' || c == '\t' || c == '-' || c == '_';
}

static char lower(char c) {
  return c >= 'A' && c <= 'Z' ? (char)(c - 'A' + 'a') : c;
}

size_t lw_fold(const char *name, size_t length, char out[LW_FOLDED_MAX]) {
  size_t used = 0;
  for (size_t i = 0; i < length && used + 1 < LW_FOLDED_MAX; i++) {
    if (!is_blank(name[i]))
      out[used++] = lower(name[i]);
    else if (used > 0 && out[used - 1] != ' ')
      out[used++] = ' ';
  }
  if (used > 0 && out[used - 1] == ' ') used--;
  out[used] = '\0';
  return used;
}

bool lw_fold_listed(const char *words, const char *folded) {
  while (words[0] != '\0') {
    char word[LW_FOLDED_MAX];
    size_t span = strcspn(words, "|");
    lw_fold(words, span, word);
    if (strcmp(word, folded) == 0) return true;
    words += span + (words[span] == '|');
  }
  return false;
}

static int least(int a, int b) {
  return a < b ? a : b;
}

int lw_edit_distance(const char *a, const char *b) {
  int rows[3][LW_FOLDED_MAX + 1] = {{0}};
  int m = (int)strlen(a), n = (int)strlen(b);
  for (int j = 0; j <= n; j++) rows[0][j] = j;
  for (int i = 1; i <= m; i++) {
    int *now = rows[i % 3];
    const int *before = rows[(i + 2) % 3], *earlier = rows[(i + 1) % 3];
    now[0] = i;
    for (int j = 1; j <= n; j++) {
      now[j] = least(before[j - 1] + (a[i - 1] != b[j - 1]), least(before[j], now[j - 1]) + 1);
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
        now[j] = least(now[j], earlier[j - 2] + 1);
    }
  }
  return rows[m % 3][n];
}
