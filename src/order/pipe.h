/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_PIPE_H
#define LOWWALL_ORDER_PIPE_H

#include "laying.h"

/* The levels of the drain pipe. */
void lw_order_pipe(const lw_laying *laying);

#endif
