/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_BOND_H
#define LOWWALL_ORDER_BOND_H

#include "laying.h"

/* Fill each row the way that gives the stretch its best bond. */
void lw_bond_choose(const lw_laying *laying);

#endif
