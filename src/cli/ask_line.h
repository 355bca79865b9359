/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_ASK_LINE_H
#define LOWWALL_CLI_ASK_LINE_H

#include "ask_session.h"

/* What a line means. */
typedef enum lw_ask_heard {
  LW_HEARD_ANSWER,
  LW_HEARD_BACK,
  LW_HEARD_SKIP,
  LW_HEARD_WHY,
  LW_HEARD_STOP,
  LW_HEARD_METRIC,
  LW_HEARD_US,
  LW_HEARD_NOTHING
} lw_ask_heard;

enum { LW_ASK_LINE = 512 };
/* Read a line; its end is as `stop`. line: without blanks around it, what it does not print as `?` */
lw_ask_heard lw_ask_read(lw_ask_session *session, char line[LW_ASK_LINE]);

#endif
