/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SHEET_MARKS_H
#define LOWWALL_SHEET_MARKS_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

/* The marks of a schedule, to find one that is there twice: 64 bits of each, in a table that doubles. Of a
 * million marks two that differ are taken for one with a chance of one in forty million. */
typedef struct lw_marks {
  uint64_t *slot; /* 0: empty */
  size_t room, count;
} lw_marks;

typedef enum lw_marked { LW_MARK_NEW, LW_MARK_TWICE, LW_MARK_NO_MEMORY } lw_marked;

lw_marked lw_marks_add(lw_marks *marks, const char *mark);
void lw_marks_free(lw_marks *marks);

#endif
