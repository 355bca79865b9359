/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_SAY_H
#define LOWWALL_CLI_SAY_H

#include <lowwall/sheet.h>

/* Exit statuses that are no verdict; `check` alone gives 3, 4 and 5 as well. */
enum { LW_EXIT_DONE = 0, LW_EXIT_OTHER = 1, LW_EXIT_BAD_INPUT = 2 };

/* What is wrong with the command line, on standard error. gives the exit status for bad options */
int lw_cli_refuse(const char *command, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 2, 3)))
#endif
    ;
/* What moves a cursor becomes `?`: names come from outside. */
void lw_cli_clean(char *text);

/* Whether a file's name has this ending, and something before it; no name has none. */
bool lw_cli_ends_in(const char *name, const char *ending);

/* The one of the names nearest to what stood there, or NULL. names ends with NULL */
const char *lw_cli_nearest(const char *stood, const char *const *names);

/* The faults, on standard error. gives the exit status for bad input */
int lw_cli_print_faults(const lw_faults *faults);

/* The tables in effect, on the heap; NULL after saying why, with the exit status to end with. */
lw_tables *lw_cli_tables(const char *directory, int *exit_status);

int lw_cli_no_memory(void);

/* Why a command came to nothing, where its options are well. gives the exit status */
int lw_cli_fail(const char *command, lw_status status, const lw_error *error);

#endif
