/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_ORDER_SUPPORT_H
#define TESTS_ORDER_SUPPORT_H

#include <lowwall/report.h>

#include "../checks/random_wall.h"

/** The order of a wall of blocks 400 x 200 x 200 mm, three courses, dry and touching, with the items
 *  ("item=value;item=value") besides. It lasts until the next call. */
const lw_order *order_of(const char *items);
/* Of a solid wall 1.2 m from foot to top, 0.2 m of it in the ground, 18 kN/m3; items give its widths. */
const lw_order *order_of_solid(const char *items);
/* The same, or NULL where the plan is one that nobody can build. */
const lw_order *order_try(const char *items);
/** The result that the last order was made from. */
const lw_result *order_result(void);
/** The faults of an order that cannot be made. */
const lw_faults *order_faults(const char *items);

const lw_tables *order_tables(void);

const lw_order_line *order_line(const lw_order *order, const char *slug);
const lw_order_note *order_note(const lw_order *order, const char *slug);

/** All pieces of a kind over all courses. */
typedef struct order_pieces {
  int whole, half, closer, left, right, mitred;
} order_pieces;
order_pieces order_all(const lw_order *order);

/** A random number in [low, high), the same sequence in every run. */
double order_random(double low, double high);

#endif
