/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_PUSH_GUARD_H
#define LOWWALL_BALANCE_PUSH_GUARD_H

#include "push.h"

/* What is wrong with a push that was found: a value that is no number, no push where soil stands that cannot
 * stand by itself, a wedge that disagrees. LW_REASON_NONE: nothing. */
lw_reason lw_push_doubt(const lw_wall *wall, const lw_ground *ground, const lw_stack *stack,
                        const lw_push *push);

#endif
