/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_ASK_PRINT_H
#define LOWWALL_CLI_ASK_PRINT_H

#include "report/page.h"
#include "ask_session.h"

/* A page of the terminal that is put together first. */
lw_page lw_ask_page(const lw_ask_session *session, lw_text *out);
/* Print what is whole, and free it. */
void lw_ask_flush(lw_ask_session *session, lw_text *text);
/* One paragraph. */
void lw_ask_say(lw_ask_session *session, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 2, 3)))
#endif
    ;

#endif
