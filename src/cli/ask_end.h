/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_ASK_END_H
#define LOWWALL_CLI_ASK_END_H

#include "ask_session.h"

/* The first screen of the wall, and what to do next. */
void lw_ask_show_end(lw_ask_session *session, bool stopped);

#endif
