/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "names.h"

/* The rows that code asks for by name. */

static const struct {
  lw_list list;
  const char *slug;
} KNOWN[LW_KNOWN_COUNT] = {
#define LW_KNOWN_CLEARANCE(name, slug) [LW_CLEARANCE_##name] = {LW_LIST_CLEARANCES, slug},
#define LW_KNOWN_THRESHOLD(name, slug) [LW_THRESHOLD_##name] = {LW_LIST_THRESHOLDS, slug},
#define LW_KNOWN_CONDITION(name, slug) [LW_CONDITION_##name] = {LW_LIST_CONDITIONS, slug},
#define LW_KNOWN_LOAD(name, slug) [LW_LOAD_OF_##name] = {LW_LIST_LOADS, slug},
    LW_CLEARANCES(LW_KNOWN_CLEARANCE) LW_THRESHOLDS(LW_KNOWN_THRESHOLD) LW_CONDITIONS(LW_KNOWN_CONDITION)
        LW_LOADS_ASKED(LW_KNOWN_LOAD)
#undef LW_KNOWN_CLEARANCE
#undef LW_KNOWN_THRESHOLD
#undef LW_KNOWN_CONDITION
#undef LW_KNOWN_LOAD
};

void lw_known_link(lw_tables *tables) {
  for (int i = 0; i < LW_KNOWN_COUNT; i++)
    tables->known[i] = (short)lw_names_exactly(tables, KNOWN[i].list, KNOWN[i].slug);
}

const char *lw_known_slug(lw_known_row row) {
  return KNOWN[row].slug;
}

const lw_load_row *lw_known_load(const lw_tables *tables, lw_known_row row) {
  int i = tables->known[row];
  return i < 0 ? NULL : &tables->load[i];
}

const lw_condition_row *lw_known_condition(const lw_tables *tables, lw_known_row row) {
  int i = tables->known[row];
  return i < 0 ? NULL : &tables->condition[i];
}

const lw_clearance_row *lw_known_clearance(const lw_tables *tables, lw_known_row row) {
  int i = tables->known[row];
  return i < 0 ? NULL : &tables->clearance[i];
}

const lw_threshold_row *lw_known_threshold(const lw_tables *tables, lw_known_row row) {
  int i = tables->known[row];
  return i < 0 ? NULL : &tables->threshold[i];
}
