/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SHEET_DEFAULTS_H
#define LOWWALL_SHEET_DEFAULTS_H

#include <lowwall/sheet.h>

/* What completing asks of the table of items, gathered once: a schedule completes row after row. The safe
 * defaults, side by side, and the quantities that only one kind of wall has, which tell it. */
enum { LW_DEFAULTS_MAX = 192, LW_TELLING_MAX = 96 };
typedef struct lw_default_value {
  double likely;           /* of a quantity, for a case of that look */
  uint16_t offset, stride; /* into lw_case, and from one soil to the next */
  uint8_t had_by;          /* which walls have the item */
  bool choice;
  union {
    lw_quantity quantity;
    lw_choice choice;
  } as;
} lw_default_value;
typedef struct lw_telling {
  int count;
  uint16_t offset[LW_TELLING_MAX]; /* into lw_case, in the order of the vocabulary */
} lw_telling;
/* Of a soil that nobody weighed. */
typedef struct lw_default_weights {
  double moist_kn_per_m3, light_kn_per_m3, saturated_kn_per_m3;
} lw_default_weights;
typedef struct lw_defaults {
  int count;
  lw_default_value value[LW_DEFAULTS_MAX];
  lw_telling courses, section;
  lw_default_weights weights[2]; /* by look */
} lw_defaults;

/** Gather them from the table of items, and from the rows that stand in for an answer that is left out.
 *  in    tables   in effect */
void lw_defaults_gather(const lw_tables *tables, lw_defaults *defaults);

#endif
