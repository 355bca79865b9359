/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_PAD_H
#define LOWWALL_BALANCE_PAD_H

#include "push.h"

/* The underside of the pad, or of the levelled bed, in one load case. working may be NULL. */
void lw_free_body_pad(const lw_wall *wall, const lw_load_case *load_case, const lw_push *push,
                      lw_free_body *body, const lw_working *working);

#endif
