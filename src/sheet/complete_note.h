/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SHEET_COMPLETE_NOTE_H
#define LOWWALL_SHEET_COMPLETE_NOTE_H

#include "base/amount.h"
#include "defaults.h"
#include "items.h"

/* Completing a case: what is worked out, taken from a table or conditional is filled in first, part by part;
 * then every item of the table of items that is still absent, has a default and belongs to this wall. */
typedef struct lw_completing {
  const lw_tables *tables;
  const lw_defaults *defaults;
  lw_case *c;
  lw_faults *faults;
  int soil_count, load_count, point_count; /* as numbered on the sheet, without gaps */
  bool load_untold;                        /* nothing is said of what stands behind */
} lw_completing;

/* One millimetre: what the heights of a wall and its courses may differ by. */
#define LW_MILLIMETRE 0.001

/* Given by the user, not worked out by an earlier completing. */
static inline bool lw_given(const lw_quantity *q) {
  return q->origin == LW_GIVEN && q->row != LW_WORKED_OUT_ROW;
}

lw_quantity lw_assumed(lw_kind kind, double si);
lw_quantity lw_from_table(lw_kind kind, double si, int table_row);
/* Worked out: as good as given when all that it follows from is, else assumed. */
lw_quantity lw_worked_out(lw_kind kind, double si, bool from_given);

/* The safe default that a group of the table of items has for the item at this place of a case. */
double lw_default(const lw_item_group *group, size_t offset);

/* The fault of a name that no row has, with the nearest one. */
void lw_complete_unknown_row(lw_completing *s, const lw_words *words, const char *list);

/* A fault of the item at `where`, a lw_quantity, lw_choice or lw_words of the case. */
void lw_complete_fault(lw_completing *s, lw_fault_slug slug, const void *where, const char *wanted_format,
                       ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 4, 5)))
#endif
    ;
/* A value for a fault to ask for, in the sheet's units: see lw_exactly. */
lw_amount lw_complete_exactly(const lw_completing *s, lw_kind kind, double si, const char *metric_unit);
/* "55.56 kN/m3", what a block of a mass would weigh. */
lw_amount lw_complete_weight(lw_units units, double kn_per_m3);
/* An item that is needed; not reported when it, or the item `instead` of it, has a fault already. */
void lw_complete_missing(lw_completing *s, const void *where, const void *instead, const char *why);

#endif
