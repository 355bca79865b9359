/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_AS_H
#define LOWWALL_CLI_AS_H

#include <lowwall/report.h>

/* The option --as of the commands that print a page for people. */
typedef struct lw_cli_as {
  const char *given; /* NULL: it was not */
  lw_as as;
} lw_cli_as;

/* Take its value. false after saying what is wrong */
bool lw_cli_take_as(const char *command, const char *value, lw_cli_as *taken);
/* Whether it may stand beside another form, "--json", which NULL is not. false after saying no */
bool lw_cli_as_alone(const char *command, const lw_cli_as *taken, const char *beside);

/* Its line in the help. */
#define LW_CLI_AS_HELP \
  "  --as FORM           the same page as text, markdown or html; of one wall. Left out it is text\n"

/* The title of a document about a wall: the user's own, its mark, or what the page is. */
void lw_cli_title(const lw_result *result, const char *what, char *out, size_t size);

#endif
