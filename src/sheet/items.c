/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "items.h"

#include <ctype.h>
#include <string.h>

const lw_item_group *const lw_item_groups[LW_ITEM_GROUPS] = {
    &lw_items_site,         &lw_items_officer, &lw_items_fence, &lw_items_wall,
    &lw_items_wet,          &lw_items_ground,  &lw_items_load,  &lw_items_seismic,
    &lw_items_construction, &lw_items_method,  &lw_items_order, &lw_items_saw};

const char *lw_item_part_words(lw_item_part part) {
  static const char *const words[] = {
#define LW_ITEM_PART_WORDS(name, words) words,
      LW_ITEM_PARTS(LW_ITEM_PART_WORDS)
#undef LW_ITEM_PART_WORDS
  };
  return words[part];
}

size_t lw_item_count(void) {
  size_t count = 0;
  for (size_t g = 0; g < LW_ITEM_GROUPS; g++) {
    count += lw_item_groups[g]->count;
  }
  return count;
}

int lw_item_word_count(const lw_item *item) {
  int count = 1;
  for (const char *at = item->words; *at != '\0'; at++) {
    count += *at == '|' ? 1 : 0;
  }
  return count;
}

const lw_item *lw_item_at(size_t index) {
  for (size_t g = 0; g < LW_ITEM_GROUPS; g++) {
    if (index < lw_item_groups[g]->count) {
      return &lw_item_groups[g]->item[index];
    }
    index -= lw_item_groups[g]->count;
  }
  return NULL;
}

/* The number in "soil 12 name", and where its digits stand; 0 when the second word is none. */
static int find_number(const char *folded, size_t *begin, size_t *end) {
  const char *space = strchr(folded, ' ');
  if (space == NULL || !isdigit((unsigned char)space[1])) {
    return 0;
  }
  size_t i = (size_t)(space - folded) + 1;
  *begin = i;
  int number = 0;
  for (; isdigit((unsigned char)folded[i]); i++) {
    number = number < 100000 ? number * 10 + (folded[i] - '0') : number;
  }
  *end = i;
  return folded[i] == ' ' ? number : 0;
}

static const lw_item *find_folded(const char *pattern) {
  for (size_t g = 0; g < LW_ITEM_GROUPS; g++) {
    for (size_t i = 0; i < lw_item_groups[g]->count; i++) {
      if (strcmp(lw_item_groups[g]->item[i].name, pattern) == 0) {
        return &lw_item_groups[g]->item[i];
      }
    }
  }
  return NULL;
}

const lw_item *lw_item_find(const char *name, size_t length, int *number) {
  char folded[LW_ITEM_NAME_MAX];
  size_t begin;
  size_t end;
  *number = 0;
  if (lw_fold(name, length, folded) == 0 || strchr(folded, '#') != NULL) {
    return NULL;
  }
  int found = find_number(folded, &begin, &end);
  if (found > 0) {
    folded[begin] = '#';
    memmove(folded + begin + 1, folded + end, strlen(folded + end) + 1);
  }
  const lw_item *item = find_folded(folded);
  *number = item != NULL ? found : 0;
  return item;
}

void lw_item_print_name(const lw_item *item, int number, char *out, size_t size) {
  const char *mark = strchr(item->name, '#');
  if (mark == NULL) {
    lw_print(out, size, "%s", item->name);
  } else if (number == 0) {
    lw_print(out, size, "%.*sn%s", (int)(mark - item->name), item->name, mark + 1);
  } else {
    lw_print(out, size, "%.*s%d%s", (int)(mark - item->name), item->name, number, mark + 1);
  }
}

static const char *key_unit(lw_kind kind) {
  switch (kind) {
  case LW_KIND_LENGTH: return "_m";
  case LW_KIND_ANGLE: return "_deg";
  case LW_KIND_PRESSURE: return "_kpa";
  case LW_KIND_LINE_LOAD: return "_kn_per_m";
  case LW_KIND_FORCE: return "_kn";
  case LW_KIND_UNIT_WEIGHT: return "_kn_per_m3";
  case LW_KIND_MASS: return "_kg";
  case LW_KIND_MOMENT: return "_knm_per_m";
  case LW_KIND_POST_MOMENT: return "_knm";
  case LW_KIND_VOLUME: return "_m3";
  case LW_KIND_AREA: return "_m2";
  case LW_KIND_ANGLE_OR_SHARE: return "_deg";
  case LW_KIND_NUMBER:
  case LW_KIND_COUNT:
  case LW_KIND_SHARE: return "";
  }
  return "";
}

void lw_item_print_key(const lw_item *item, int number, char *out, size_t size) {
  char name[LW_ITEM_NAME_MAX];
  lw_item_print_name(item, number, name, sizeof name);
  for (char *c = name; *c != '\0'; c++) {
    *c = *c == ' ' ? '_' : *c;
  }
  lw_print(out, size, "%s%s", name, item->type == LW_ITEM_QUANTITY ? key_unit(item->kind) : "");
}

const lw_item *lw_item_in(const lw_item_group *group, size_t offset, int *number) {
  for (size_t i = 0; i < group->count; i++) {
    const lw_item *item = &group->item[i];
    bool repeated = item->repeats > 0;
    size_t end = repeated ? item->offset + item->stride * (size_t)item->repeats : item->offset + 1;
    if (offset < item->offset || offset >= end) {
      continue;
    }
    if (!repeated || (offset - item->offset) % item->stride == 0) {
      *number = repeated ? 1 + (int)((offset - item->offset) / item->stride) : 0;
      return item;
    }
  }
  return NULL;
}

const lw_item *lw_item_at_offset(size_t offset, int *number) {
  const lw_item *item = NULL;
  for (size_t g = 0; g < LW_ITEM_GROUPS && item == NULL; g++) {
    item = lw_item_in(lw_item_groups[g], offset, number);
  }
  return item;
}

lw_quantity *lw_item_quantity(const lw_item *item, int number, lw_case *c) {
  return lw_item_place(item, number, c);
}

lw_choice *lw_item_choice(const lw_item *item, int number, lw_case *c) {
  return lw_item_place(item, number, c);
}

lw_words *lw_item_words(const lw_item *item, int number, lw_case *c) {
  return lw_item_place(item, number, c);
}

void lw_item_copy(const lw_item *item, int number, const lw_case *from, lw_case *to) {
  size_t offset = lw_item_offset(item, number);
  lw_item_copy_value(item, (char *)to + offset, (const char *)from + offset);
}

/* Beyond its range: a count is whole, and a share is at most 1. */
static bool fits_kind(lw_kind of_item, lw_kind kind, double si) {
  if (of_item == LW_KIND_COUNT) return !(fabs(si - round(si)) > 0.0);
  if (of_item == LW_KIND_ANGLE_OR_SHARE) return kind == LW_KIND_ANGLE || (kind == LW_KIND_SHARE && si <= 1.0);
  return true;
}

bool lw_item_takes_value(const lw_item *item, lw_kind kind, double si) {
  bool share = item->kind == LW_KIND_ANGLE_OR_SHARE && kind == LW_KIND_SHARE;
  return si >= item->low && (share || si <= item->high) && fits_kind(item->kind, kind, si);
}
