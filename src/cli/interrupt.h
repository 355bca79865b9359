/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_INTERRUPT_H
#define LOWWALL_CLI_INTERRUPT_H

#include <stdbool.h>

/* What an interrupt (^C, a closed terminal, kill) must not leave behind: a file half written, a line half
 * drawn. The program still ends by the signal, as whoever sent it expects. */

/* Once, by main. */
void lw_interrupt_watch(void);
/* mkstemp; from then on an interrupt takes the file away. gives the handle, -1 when it cannot be */
int lw_interrupt_make_file(char *path);
/* The file is in its place, or away. */
void lw_interrupt_forget_file(void);
/* Whether the line of standard error that the cursor is in has to be wiped out. */
void lw_interrupt_wipe_line(bool wipe);

#endif
