/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_LINES_H
#define LOWWALL_ORDER_LINES_H

#include "parts.h"

/* What the lines of an order are taken off from. */
typedef struct lw_taking {
  lw_laying *laying;
  const lw_case *c;
  const lw_case_order *o;
  const lw_tables *tables;
  double rear_m; /* of the lowest course, behind its face */
  double stone_m, pad_m, pad_front_m, pad_rear_m, bedding_m, high_m, embedded_m;
  double raised_m; /* the base above its lowest place, on the mean of the length */
  int free_ends;
} lw_taking;

/* A new line, what is ordered worked out from its net; NULL: no allowance. */
lw_order_line *lw_line_put(const lw_taking *t, const lw_order_line *line, const lw_quantity *allowance);
/* Blocks, halves, handed units and caps with their adhesive. */
void lw_lines_units(const lw_taking *t);
/* What is dug, and what comes in its place: pad, bedding, stone, pipe, soil, lining. */
void lw_lines_ground(const lw_taking *t);
/* Trips of a barrow that is full by volume or by mass, whichever takes more. */
int lw_barrows(const lw_taking *t, double loose_m3, double mass_kg);

/* Whole ones that a number of pieces comes to. */
static inline double lw_pieces_up(double pieces) {
  return ceil(pieces - 1e-9);
}

#endif
