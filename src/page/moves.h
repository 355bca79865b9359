/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PAGE_MOVES_H
#define LOWWALL_PAGE_MOVES_H

#include "request.h"

/* What a finger may move and see the ratios follow: height, depth of the blocks, water. What must follow each
 * follows, as it does of a remedy. */

/** Move the wall as the request says: "move": {"height": 0.7}, one handle and where to, in metres.
 *  in    now   the wall as it stands, run
 *  out   c     the case of that wall, as read: moved
 *  gives LW_OK · LW_FAULTS, c half moved */
lw_status lw_request_move(lw_request *asked, const lw_result *now, lw_case *c);

/** Under the key "handles": which of them this wall has, and between which values. */
void lw_reply_put_handles(json_t *object, const lw_result *result);

#endif
