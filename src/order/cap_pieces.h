/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_CAP_PIECES_H
#define LOWWALL_ORDER_CAP_PIECES_H

#include "pieces.h"

/** The caps of a run as they are laid: whole, cut or mitred, on the lowest face from the run's beginning.
 *  in    order   of lw_order_make
 *        run     0 to order->plan.run_count - 1
 *  out   piece   room for LW_PIECE_MAX
 *  gives how many; 0 without a cap */
int lw_order_cap_pieces(const lw_order *order, int run, lw_piece *piece);

#endif
