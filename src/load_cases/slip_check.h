/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_SLIP_CHECK_H
#define LOWWALL_LOAD_CASES_SLIP_CHECK_H

#include "balance/weigh.h"
#include "slip/outdone.h"

/* What the checks of the ground are for. A slip is searched only as far as it may be told. */
typedef enum lw_ground_aim {
  LW_GROUND_LEAST,     /* what any check has at least: see lw_least */
  LW_GROUND_GOVERNING, /* that, and what governs */
  LW_GROUND_ALL        /* every check, to the end */
} lw_ground_aim;

/* A check of the ground as a whole in one load case, beside what the situations have so far. */
typedef struct lw_ground_try {
  const lw_check_context *context;
  lw_ground_aim aim;
  double governing;           /* the ratio of what governs so far; INFINITY: nothing does, or it has none */
  bool falls_short;           /* and it falls short */
  double least;               /* that any check has so far: see lw_least; INFINITY: none has a number */
  lw_slip_searched *searched; /* in this wall so far */
} lw_ground_try;

typedef struct lw_ground_check {
  lw_check check; /* begun by who asks for it */
  bool searched;  /* a slip was, and is there */
  lw_slip slip;
  bool light; /* with every weight as it is favourable */
  bool bare;  /* with none of the cohesion that is paired with the clay's angle, which was the worse */
  lw_number bare_has;   /* what it has so; known where such a cohesion counts and that was searched */
  lw_number bare_needs; /* what is asked of it so; not known: nothing is */
} lw_ground_check;

/* gives whether there is anything to check */
typedef bool (*lw_make_ground_check)(const lw_ground_try *try, lw_ground_check *made);

/* A slip of wall and ground together. */
bool lw_check_slip(const lw_ground_try *try, lw_ground_check *made);
/* A bed sliding down the slope it stands on. */
bool lw_check_bed(const lw_ground_try *try, lw_ground_check *made);

bool lw_slip_looked_for(const lw_wall *wall);
/* How deep below the top water stands behind for a slip. */
double lw_slip_water_depth(const lw_wall *wall, const lw_situation *situation);
/* Strengths and water of a situation, as slips take them. */
lw_load_case lw_slip_load_case(const lw_wall *wall, const lw_factor_set *factor_set,
                               const lw_situation *situation);

/** How a bed's slide down the slope that it stands on was found.
 *  in    situation   as run; nothing is written where it has no such check */
void lw_situation_bed_write(const lw_wall *wall, const lw_tables *tables, const lw_situation *situation,
                            const lw_working *working);

#endif
