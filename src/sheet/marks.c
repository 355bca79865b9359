/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "marks.h"

#include <stdlib.h>

enum { ROOM_FIRST = 1024 };

/* FNV-1a, its bits stirred once more so that any of them may choose the slot; never 0. */
static uint64_t hash_of(const char *mark) {
  uint64_t h = 14695981039346656037u;
  for (; *mark != '\0'; mark++) h = (h ^ (unsigned char)*mark) * 1099511628211u;
  h ^= h >> 32;
  h *= 0x9E3779B97F4A7C15u;
  h ^= h >> 29;
  return h == 0 ? 1 : h;
}

static bool put(uint64_t *slot, size_t room, uint64_t hash) {
  size_t at = (size_t)hash & (room - 1);
  while (slot[at] != 0 && slot[at] != hash) at = (at + 1) & (room - 1);
  bool there = slot[at] == hash;
  slot[at] = hash;
  return there;
}

static bool grow(lw_marks *marks) {
  size_t room = marks->room > 0 ? 2 * marks->room : ROOM_FIRST;
  uint64_t *slot = calloc(room, sizeof *slot);
  if (slot == NULL) return false;
  for (size_t i = 0; i < marks->room; i++) {
    if (marks->slot[i] != 0) (void)put(slot, room, marks->slot[i]);
  }
  free(marks->slot);
  marks->slot = slot;
  marks->room = room;
  return true;
}

lw_marked lw_marks_add(lw_marks *marks, const char *mark) {
  if (4 * (marks->count + 1) > 3 * marks->room && !grow(marks)) return LW_MARK_NO_MEMORY;
  if (put(marks->slot, marks->room, hash_of(mark))) return LW_MARK_TWICE;
  marks->count++;
  return LW_MARK_NEW;
}

void lw_marks_free(lw_marks *marks) {
  free(marks->slot);
  *marks = (lw_marks){0};
}
