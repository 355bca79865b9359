/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "items.h"
#include "tables/names.h"

/* The items that a name which is none may have meant: the one that it misspells, or those that have its words
 * but for one. */

enum { WORDS_MAX = 8, NAMES_MAX = 3, NONE = 1000, WORD_MISSED = 10, TYPING = 2 };

/* Words where they stand. */
typedef struct words {
  int count;
  const char *word[WORDS_MAX];
  size_t length[WORDS_MAX];
} words;

static words split(const char *name) {
  words w = {0};
  for (const char *at = name; *at != '\0' && w.count < WORDS_MAX;) {
    size_t length = strcspn(at, " ");
    if (length > 0 && *at != '#') {
      w.word[w.count] = at;
      w.length[w.count++] = length;
    }
    at += length + (at[length] == ' ' ? 1 : 0);
  }
  return w;
}

/* One of many is the same word: "outlet", "outlets". */
static bool same_word(const words *a, int i, const words *b, int k) {
  size_t shorter = a->length[i] < b->length[k] ? a->length[i] : b->length[k];
  size_t longer = a->length[i] + b->length[k] - shorter;
  const char *end = a->length[i] > b->length[k] ? a->word[i] + shorter : b->word[k] + shorter;
  bool ends = longer == shorter || (longer == shorter + 1 && shorter > 2 && *end == 's');
  return ends && memcmp(a->word[i], b->word[k], shorter) == 0;
}

static int missed(const words *of, const words *in) {
  int count = 0;
  for (int i = 0; i < of->count; i++) {
    bool there = false;
    for (int k = 0; k < in->count && !there; k++) there = same_word(of, i, in, k);
    count += there ? 0 : 1;
  }
  return count;
}

/* A word that the item lacks weighs more than one that was left out. NONE: more than one word is another, or
 * nothing is the same. */
static int apart(const words *stood, const char *name) {
  words item = split(name);
  int unknown = missed(stood, &item);
  if (unknown > 1 || unknown == stood->count) return NONE;
  return WORD_MISSED * unknown + missed(&item, stood);
}

/* A number in the name is put aside, so that "soil 1 frction angle" is near to its item. */
static int put_number_aside(char *folded) {
  int number = 0;
  for (char *c = folded; *c != '\0'; c++) {
    if (*c < '1' || *c > '9' || c == folded || c[-1] != ' ' || (c[1] != ' ' && c[1] != '\0')) continue;
    number = *c - '0';
    *c = '#';
  }
  return number > 0 ? number : 1;
}

static const lw_item *misspelt(const char *folded, int most) {
  const lw_item *nearest = NULL;
  for (size_t i = 0; i < lw_item_count(); i++) {
    int distance = lw_edit_distance(folded, lw_item_at(i)->name);
    if (distance >= most) continue;
    most = distance;
    nearest = lw_item_at(i);
  }
  return nearest;
}

typedef struct near {
  int count, apart[NAMES_MAX];
  const lw_item *item[NAMES_MAX];
} near;

/* Kept in order; of equal ones the earlier first. */
static void keep(near *n, const lw_item *item, int distance) {
  int at = n->count;
  while (at > 0 && distance < n->apart[at - 1]) at--;
  if (at >= NAMES_MAX) return;
  int last = n->count < NAMES_MAX ? n->count++ : NAMES_MAX - 1;
  for (int i = last; i > at; i--) n->item[i] = n->item[i - 1], n->apart[i] = n->apart[i - 1];
  n->item[at] = item;
  n->apart[at] = distance;
}

/* As many words wrong as in the nearest, no more. */
static near by_words(const char *folded) {
  words stood = split(folded);
  near n = {0};
  for (size_t i = 0; i < lw_item_count(); i++) {
    int distance = apart(&stood, lw_item_at(i)->name);
    if (distance < NONE) keep(&n, lw_item_at(i), distance);
  }
  while (n.count > 1 && n.apart[n.count - 1] / WORD_MISSED > n.apart[0] / WORD_MISSED) n.count--;
  return n;
}

bool lw_item_nearest(const char *stood, char *out, size_t size) {
  char folded[LW_ITEM_NAME_MAX], name[LW_ITEM_NAME_MAX];
  if (lw_fold(stood, strlen(stood), folded) == 0) return false;
  int number = put_number_aside(folded), most = 1 + (int)strlen(folded) / 3;
  near n = by_words(folded);
  bool words_known = n.count > 0 && n.apart[0] < WORD_MISSED;
  const lw_item *typed = misspelt(folded, (words_known ? 1 : TYPING) + 1);
  if (typed == NULL && n.count == 0) typed = misspelt(folded, most < 6 ? most : 6);
  bool sure = typed != NULL && (!words_known || n.item[0] == typed);
  if (sure) n.count = 0;
  if (typed != NULL) keep(&n, typed, 0);
  size_t used = (size_t)lw_print(out, size, n.count > 1 ? "the nearest are" : "the nearest is");
  for (int i = 0; i < n.count && used < size; i++) {
    lw_item_print_name(n.item[i], number, name, sizeof name);
    used += (size_t)lw_print(out + used, size - used, "%s \"%s\"",
                             i == 0            ? ""
                             : i + 1 < n.count ? ","
                                               : " and",
                             name);
  }
  return n.count > 0;
}
