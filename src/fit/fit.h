/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_FIT_FIT_H
#define LOWWALL_FIT_FIT_H

#include <lowwall/order.h>

#include "remedies/trial.h"
#include "yard.h"

/* The blocks of a yard tried in one wall. */
typedef enum lw_fit_kind {
  LW_FIT_LAID,    /* run and counted: see grade */
  LW_FIT_HEIGHT,  /* whole courses do not make the wall's height */
  LW_FIT_NO_PLAN, /* they cannot be laid to the plan */
  LW_FIT_FAULT    /* the sheet with this block is faulty */
} lw_fit_kind;

typedef struct lw_fit {
  const lw_yard_block *block;
  lw_fit_kind kind;
  lw_typed items; /* typed into the sheet as they stand they make this wall */

  /* of one that is laid */
  int courses;
  double setback_m, embedment_m;
  lw_grade grade;
  lw_who who;
  int exit_status;
  char headline[1280];
  lw_number ratio;             /* of the check that governs */
  char governs[80];            /* "sliding at base, outlet-blocked" */
  char nearest[LW_TRIAL_NAME]; /* the same for people; "" where nothing pushes */
  int whole;                   /* blocks to order, the order's allowance included */
  int other; /* halves, corner units and spare ones to order, each counted at the price of a block */
  double unit_mass_kg, mass_kg, cost;
  double lift_mass_kg; /* what one person should not lift again and again is more than that */

  /* of heights: the nearest that whole courses make, above the ground in front; 0 courses: none below */
  int courses_below;
  double below_m, above_m;

  lw_plan_fault plan;
  lw_fault fault;
} lw_fit;

/* What it is tried with: the sheet as it was read, nothing filled in, and its wall height when completed. */
typedef struct lw_fit_wall {
  const lw_tables *tables;
  const lw_case *read;
  double height_m;
  lw_units units; /* of the sheet's reader */
} lw_fit_wall;

/* Room to run in, too big for a stack. */
typedef struct lw_fit_room {
  lw_case c;
  lw_result now, then;
  lw_order order;
} lw_fit_room;

/* What the sheet lacks for an order, whatever the block. gives LW_OK · LW_FAULTS */
lw_status lw_fit_hold(const lw_fit_wall *wall, const lw_yard *yard, lw_fit_room *room, lw_faults *faults);

/* Every block of the yard in the wall: first those that hold, the cheapest first; then those that fall short,
 * the least grave first and of one grade the cheapest; then those that cannot be laid, as they are listed.
 * out   fit   yard->count of them
 * note  1 A block that brings its setback is tried with that one; else the sheet's is, and where the wall
 *         does not hold so, greater ones as lw_remedies_find tries them. */
void lw_fit_find(const lw_fit_wall *wall, const lw_yard *yard, lw_fit_room *room, lw_fit *fit);

#endif
