/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "list.h"

#include <stdint.h>
#include <stdlib.h>
#include <string.h>

/* Words move while their text grows: until all are there a block holds where they begin, and one more. */
static const char *keep(lw_block_list *list, const char *words) {
  uintptr_t place = list->words.length + 1;
  lw_text_add_bytes(&list->words, words ? words : "", words ? strlen(words) : 0);
  lw_text_add_bytes(&list->words, "", 1);
  return (const char *)place;
}

static void take(void *context, const lw_block *block) {
  lw_block_list *list = context;
  if (list->count == list->room) {
    size_t room = list->room ? 2 * list->room : 256;
    lw_block *more = realloc(list->block, room * sizeof *more);
    list->failed = list->failed || !more;
    if (list->failed) return;
    list->block = more;
    list->room = room;
  }
  list->block[list->count++] = (lw_block){.kind = block->kind,
                                          .label = keep(list, block->label),
                                          .words = keep(list, block->words),
                                          .has = keep(list, block->has),
                                          .needs = keep(list, block->needs),
                                          .strong = block->strong};
}

static void settle(const lw_block_list *list, const char **words) {
  *words = list->words.data + ((uintptr_t)*words - 1);
}

lw_status lw_block_list_make(const lw_result *result, const char *hash, lw_block_list *list) {
  lw_precheck_each(result, hash, take, list);
  if (list->failed || list->words.failed) return LW_NO_MEMORY;
  for (size_t i = 0; i < list->count; i++) {
    settle(list, &list->block[i].label);
    settle(list, &list->block[i].words);
    settle(list, &list->block[i].has);
    settle(list, &list->block[i].needs);
  }
  return LW_OK;
}

void lw_block_list_free(lw_block_list *list) {
  free(list->block);
  lw_text_free(&list->words);
  *list = (lw_block_list){0};
}

size_t lw_block_list_last(const lw_block_list *list, size_t at) {
  if (list->block[at].kind != LW_BLOCK_HEADING || at + 1 == list->count) return at;
  size_t next = at + 1;
  while (next < list->count && list->block[next].kind != LW_BLOCK_HEADING) next++;
  bool checks = list->block[at + 1].kind == LW_BLOCK_COLUMNS;
  return checks || next == list->count ? next - 1 : at + 1;
}

static bool is_of_checks(const lw_block *block) {
  return block->kind == LW_BLOCK_COLUMNS || block->kind == LW_BLOCK_CHECK;
}

static bool is_fact(const lw_block *block) {
  bool line = block->kind == LW_BLOCK_LINE || block->kind == LW_BLOCK_HALF_LINE;
  return block->kind == LW_BLOCK_FACT || block->kind == LW_BLOCK_ITEM || line;
}

bool lw_block_list_same_table(const lw_block *a, const lw_block *b) {
  return (is_of_checks(a) && is_of_checks(b)) || (is_fact(a) && is_fact(b));
}
