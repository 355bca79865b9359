/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SHEET_VALUES_H
#define LOWWALL_SHEET_VALUES_H

#include <math.h>

#include <lowwall/case.h>
#include <lowwall/tables.h>

/* What a case says, and what stands in for it where it says nothing. */

static inline double lw_si_or(const lw_quantity *q, double otherwise) {
  return q->origin == LW_ABSENT ? otherwise : q->si;
}

static inline bool lw_choice_is(const lw_choice *choice, int value) {
  return choice->origin != LW_ABSENT && choice->value == value;
}

/* Given, or what a row has that the sheet names. */
static inline bool lw_told(const lw_quantity *q) {
  return q->origin == LW_GIVEN || q->origin == LW_TABLE;
}

/* From the ground in front up to the soil behind. */
static inline double lw_held_m(const lw_case *c) {
  return fmax(lw_si_or(&c->wall.height, 0.0) - lw_si_or(&c->ground.soil_below_top, 0.0), 0.0);
}

/* A membrane stands between wall and soil. */
static inline bool lw_back_is_lined(const lw_case *c) {
  return lw_choice_is(&c->wall.back, LW_WALL_BACK_LINED) || lw_choice_is(&c->order.lining, LW_YES);
}

/* The row of the ground below, where its strength is the table's; NULL: it is given, or nobody names it. */
static inline const lw_soil_row *lw_footing_row(const lw_case *c, const lw_tables *tables) {
  const lw_quantity *angle = &c->ground.footing.friction;
  return angle->origin == LW_TABLE ? &tables->soil[angle->table_row] : NULL;
}

#endif
