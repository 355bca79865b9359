/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_PRECHECK_INDEX_H
#define LOWWALL_REPORT_PRECHECK_INDEX_H

#include <lowwall/result.h>

/* The page before the pre-checks of many walls: which they are, and who must see each, the gravest first. */

typedef enum lw_index_group {
  LW_INDEX_NOT_CHECKED, /* its row has faults: nobody can say anything of it */
  LW_INDEX_ENGINEER,
  LW_INDEX_COUNCIL,
  LW_INDEX_BUILDER,
  LW_INDEX_GROUPS
} lw_index_group;

typedef struct lw_index_entry {
  lw_index_group group;
  lw_grade grade;
  int row; /* of the schedule */
  char mark[LW_WORDS_MAX], title[LW_WORDS_MAX];
  char file[128];    /* the pre-check beside the index; "" where there is none */
  size_t what, does; /* of the words: what it is; whether it stands, or its faults */
  size_t why;        /* why they must see it who must */
} lw_index_entry;

typedef struct lw_precheck_index {
  size_t count, room;
  lw_index_entry *entry;
  lw_text words;
  bool failed; /* out of memory */
} lw_precheck_index;

/** One wall more: a result, or a row with faults.
 *  in    row    of the schedule
 *        file   name beside the index: letters, digits, -, _ and . only */
void lw_precheck_index_add(lw_precheck_index *index, const lw_result *result, int row, const char *file);
void lw_precheck_index_add_faults(lw_precheck_index *index, const lw_case *c, int row,
                                  const lw_faults *faults);

/** The page, readable and printable without style. Sorts the entries.
 *  in    schedule   its name; tables  whose replaced ones are named
 *  gives LW_OK · LW_NO_MEMORY */
lw_status lw_precheck_index_html(lw_precheck_index *index, const char *schedule, const lw_tables *tables,
                                 lw_text *out);
void lw_precheck_index_free(lw_precheck_index *index);

#endif
