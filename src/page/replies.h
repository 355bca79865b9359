/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PAGE_REPLIES_H
#define LOWWALL_PAGE_REPLIES_H

#include "request.h"

/* One function a request; docs/page.md says what each takes and gives. */

lw_status lw_reply_start(lw_request *asked);
lw_status lw_reply_sheet(lw_request *asked);
lw_status lw_reply_items(lw_request *asked);
lw_status lw_reply_check(lw_request *asked);
lw_status lw_reply_advice(lw_request *asked);
lw_status lw_reply_draw(lw_request *asked);
lw_status lw_reply_order(lw_request *asked);
lw_status lw_reply_pegs(lw_request *asked);
lw_status lw_reply_report(lw_request *asked);
lw_status lw_reply_working(lw_request *asked);
lw_status lw_reply_precheck(lw_request *asked);
lw_status lw_reply_questions(lw_request *asked);
lw_status lw_reply_answer(lw_request *asked);
lw_status lw_reply_take_back(lw_request *asked);
lw_status lw_reply_picture(lw_request *asked);

#endif
