/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REMEDIES_CHANGES_H
#define LOWWALL_REMEDIES_CHANGES_H

#include <lowwall/result.h>

#include "typed.h"

/* Values to be tried: from + step, from + 2 step ... from + most x step. What is told of a value found is
 * told_from + told_sign x value. most 0: this wall has nothing to change so. */
typedef struct lw_range {
  double from, step;
  int most;
  double told_from, told_sign;
} lw_range;

/* A wall to be changed: as it was run, and its case, in which an earlier change may be typed already. */
typedef struct lw_changing {
  const lw_result *now;
  const lw_case *c;
} lw_changing;

/* A change that a builder can buy or do. */
typedef struct lw_change {
  const char *slug;
  const char *tells; /* format of a sentence with the value in it */
  lw_kind kind;      /* of that value */
  int decimals;      /* that it is told with; of a length 3: in millimetres */
  bool wavers;       /* more of it need not help more */
  lw_range (*range)(const lw_result *now);
  /* Whether a wall with this value is still the wall asked for; NULL: with every value. */
  bool (*same_job)(const lw_result *now, double value);
  /* Put the items that make it so, and what must follow them; false when this case cannot be changed so. */
  bool (*type)(const lw_changing *wall, double value, lw_typed *typed);
} lw_change;

extern const lw_change lw_change_deeper;      /* blocks */
extern const lw_change lw_change_wider;       /* the base of a section */
extern const lw_change lw_change_lower;       /* by whole courses, or steps of a section */
extern const lw_change lw_change_setback;     /* of each course */
extern const lw_change lw_change_filled;      /* the hollows of hollow blocks */
extern const lw_change lw_change_drain;       /* in stone that leads water to it */
extern const lw_change lw_change_wider_stone; /* where there is a way out that no water reaches */
extern const lw_change lw_change_filter;      /* where the ways out count as one for want of it */
extern const lw_change lw_change_stone;       /* crushed rock as wide as the wedge */
extern const lw_change lw_change_soil;        /* kept lower below the top */
extern const lw_change lw_change_pad;         /* wider */
extern const lw_change lw_change_load;        /* every load behind at least so far */

/* A size as it is sold or built: the one in metres, or the nearest to it in inches. */
typedef struct lw_built {
  double metric_m, us_m;
} lw_built;
double lw_change_built(lw_units units, lw_built step);
/* The largest multiple of a step that is no more than a value, and the least that is no less. */
double lw_change_steps_below(double value, double step);
double lw_change_steps_above(double value, double step);
/* How many steps lead from one value to another. */
int lw_change_count(double from, double to, double step);
/* The row of the stone that fills the wedge; NULL when the tables have none. */
const lw_soil_row *lw_change_stone_row(const lw_tables *tables);

#endif
