/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_ORDER_SCHEDULE_H
#define LOWWALL_CLI_ORDER_SCHEDULE_H

#include "order_wall.h"

/* Many walls, a row each; the wall's input holds the first block. gives the exit status */
int lw_order_schedule(const lw_order_asked *asked, lw_one_wall *wall, lw_order *order);

#endif
