/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_FIT_YARD_H
#define LOWWALL_FIT_YARD_H

#include <lowwall/result.h>

/* The blocks that a yard sells, as the user wrote them down: a row a block. Prices are the user's own. */
enum { LW_YARD_MAX = 200 };

typedef struct lw_yard_block {
  char name[LW_WORDS_MAX];
  int row; /* of the list, from 1 */
  double price;
  double height_m, depth_m;
  bool setback_given; /* its lip or pin makes it: no other one is tried */
  lw_typed items;     /* its measures, as they are typed into a sheet */
} lw_yard_block;

typedef struct lw_yard {
  char currency[24]; /* "" when none is told */
  int count;
  lw_yard_block block[LW_YARD_MAX];
} lw_yard;

/* Read a CSV file: a header of name, length, height, depth, mass and price, and if need be currency or other
 * items of a block, each with its unit in brackets; a row a block.
 * faults holds the file's name. gives LW_OK · LW_FAULTS, each with its cell and what would be right */
lw_status lw_yard_read(const lw_tables *tables, const char *bytes, size_t length, lw_yard *yard,
                       lw_faults *faults);

/* The items of one block that a list may have a column of, in the order in which they are typed. */
enum { LW_YARD_ITEMS = 11 };
extern const char *const lw_yard_items[LW_YARD_ITEMS];

#endif
