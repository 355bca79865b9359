/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_PIECES_H
#define LOWWALL_ORDER_PIECES_H

#include <lowwall/order.h>

/* What is seen of a row from the front, piece by piece. */
typedef enum lw_piece_kind {
  LW_PIECE_WHOLE,
  LW_PIECE_HALF,
  LW_PIECE_CUT,
  LW_PIECE_MITRED,
  LW_PIECE_HANDED,
  LW_PIECE_HEAD /* the end of the other run's block at a corner */
} lw_piece_kind;
typedef struct lw_piece {
  lw_piece_kind kind;
  double from_m, to_m; /* on the lowest face, from the beginning of the stretch */
  double length_m;     /* of the piece itself at its face */
} lw_piece;
enum { LW_PIECE_MAX = LW_ROW_UNITS + 10 };

/** What is seen of a row: the layout that the counts were made of, piece by piece.
 *  in    order   of lw_order_make
 *        row     0 to order->row_count - 1
 *  out   piece   room for LW_PIECE_MAX
 *  gives how many
 *  note  1 What the other run hides at an inside corner is left out. A piece that a ring's beginning parts
 *          is given as two. */
int lw_order_pieces(const lw_order *order, int row, lw_piece *piece);

#endif
