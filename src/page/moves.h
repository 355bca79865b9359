/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PAGE_MOVES_H
#define LOWWALL_PAGE_MOVES_H

#include "request.h"

/* What a finger may move and see the ratios follow: height, depth of the blocks, water. What must follow each
 * follows, as it does of a remedy. */

/** Move the wall as the request says: "move": {"height": 0.7}, in metres.
 *  in    scratch   a result to run in
 *  gives LW_OK, c moved or left as it is where nothing is asked · LW_FAULTS */
lw_status lw_request_move(lw_request *asked, lw_case *c, lw_result *scratch);

/** Under the key "handles": which of them this wall has, and between which values. */
void lw_reply_put_handles(json_t *object, const lw_result *result);

#endif
