/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/studies.h>

#include <math.h>
#include <string.h>

#include "load_cases/situations.h"
#include "standards/factor_set.h"
#include "tables/find.h"

/* The wall under every set of factors, side by side. */

static bool is_first_of_its_set(const lw_tables *tables, int index) {
  return lw_tables_factor_set(tables, tables->factor[index].factor_set) == index;
}

static void mark(const lw_tables *tables, const lw_factor_set *set, lw_factor_set_answer *answer) {
  for (int i = 0; i < tables->factor_count; i++) {
    const lw_factor_row *row = &tables->factor[i];
    if (!set->any || strcmp(row->factor_set, set->any->factor_set) != 0) continue;
    for (int kind = LW_USUAL; kind <= LW_EXTREME; kind++) {
      if (isnan(row->needs[kind])) continue;
      answer->memory = answer->memory || row->needs_seen[kind] == LW_MEMORY;
      answer->proposal = answer->proposal || row->needs_seen[kind] == LW_PROPOSAL;
    }
  }
}

static void mark_all(const lw_tables *tables, lw_factor_set_answer *answer) {
  lw_factor_set_family family;
  lw_factor_set_read(tables, answer->row->factor_set, &family);
  answer->part = family.set[0].part;
  answer->decides = true;
  for (int i = 0; i < family.count; i++) {
    answer->decides = answer->decides && !family.set[i].not_for_decisions;
    mark(tables, &family.set[i], answer);
  }
}

static void answer_of(const lw_situations *situations, lw_factor_set_answer *answer) {
  answer->stands = situations->stands;
  answer->governed = situations->governed;
  if (!answer->governed) return;
  const lw_situation *at = &situations->situation[situations->governing_situation];
  answer->situation = at->name;
  answer->kind = at->kind;
  answer->check = lw_situation_check(at, situations->governing_check);
}

void lw_factor_sets_compare(const lw_wall *wall, const lw_tables *tables, lw_factor_sets *factor_sets,
                            lw_situations *scratch) {
  lw_wall other = *wall;
  factor_sets->count = 0;
  for (int i = 0; i < tables->factor_count; i++) {
    if (!is_first_of_its_set(tables, i)) continue;
    lw_factor_set_answer *answer = &factor_sets->answer[factor_sets->count++];
    *answer = (lw_factor_set_answer){.row = &tables->factor[i]};
    mark_all(tables, answer);
    lw_print(other.factor_set, sizeof other.factor_set, "%s", answer->row->factor_set);
    lw_situations_run(&other, tables, LW_DETAIL_CHECKS, scratch);
    answer_of(scratch, answer);
  }
}
