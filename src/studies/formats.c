/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/studies.h>

#include <math.h>
#include <string.h>

#include "load_cases/situations.h"
#include "standards/format.h"
#include "tables/find.h"

/* The wall under every set of factors, side by side. */

static bool is_first_of_its_set(const lw_tables *tables, int index) {
  return lw_tables_format_index(tables, tables->format[index].format) == index;
}

static void mark(const lw_tables *tables, const lw_format *set, lw_format_answer *answer) {
  for (int i = 0; i < tables->format_count; i++) {
    const lw_format_row *row = &tables->format[i];
    if (!set->any || strcmp(row->format, set->any->format) != 0) continue;
    for (int kind = LW_USUAL; kind <= LW_EXTREME; kind++) {
      if (isnan(row->needs[kind])) continue;
      answer->memory = answer->memory || row->needs_seen[kind] == LW_MEMORY;
      answer->proposal = answer->proposal || row->needs_seen[kind] == LW_PROPOSAL;
    }
  }
}

static void mark_all(const lw_tables *tables, lw_format_answer *answer) {
  lw_format_family family;
  lw_format_read(tables, answer->row->format, &family);
  answer->part = family.set[0].part;
  answer->decides = true;
  for (int i = 0; i < family.count; i++) {
    answer->decides = answer->decides && !family.set[i].from_memory;
    mark(tables, &family.set[i], answer);
  }
}

static void answer_of(const lw_situations *situations, lw_format_answer *answer) {
  answer->stands = situations->stands;
  answer->governed = situations->governed;
  if (!answer->governed) return;
  const lw_situation *at = &situations->situation[situations->governing_situation];
  answer->situation = at->name;
  answer->kind = at->kind;
  answer->check = lw_situation_check(at, situations->governing_check);
}

void lw_formats_compare(const lw_wall *wall, const lw_tables *tables, lw_formats *formats,
                        lw_situations *scratch) {
  lw_wall other = *wall;
  formats->count = 0;
  for (int i = 0; i < tables->format_count; i++) {
    if (!is_first_of_its_set(tables, i)) continue;
    lw_format_answer *answer = &formats->answer[formats->count++];
    *answer = (lw_format_answer){.row = &tables->format[i]};
    mark_all(tables, answer);
    lw_print(other.format, sizeof other.format, "%s", answer->row->format);
    lw_situations_run(&other, tables, LW_DETAIL_CHECKS, scratch);
    answer_of(scratch, answer);
  }
}
