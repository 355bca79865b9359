/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_PUSH_PARTS_H
#define LOWWALL_BALANCE_PUSH_PARTS_H

#include "push.h"

/* Divide a thrust among those whose it is: no arm leaves the plane, and the parts make up thrust and
 * moment. */
void lw_push_divide(lw_push *push);

#endif
