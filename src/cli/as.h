/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_AS_H
#define LOWWALL_CLI_AS_H

#include <lowwall/report.h>

/* The option --as of the commands that print a page for people. */
typedef struct lw_cli_as {
  const char *given; /* NULL: it was not */
  lw_as as;
} lw_cli_as;

#define LW_OPTION_AS(where) \
  { "as", .text = (where), .words = "text, markdown or html" }

/* The form that was given; of --csv, --json and --as one at most. false after saying so */
bool lw_cli_take_as(const char *command, bool csv, bool json, lw_cli_as *taken);

/* Its line in the help. */
#define LW_CLI_AS_HELP \
  "  --as FORM           the same page as text, markdown or html; of one wall. Left out it is text\n"

/* The title of a document about a wall: the user's own, its mark, or what the page is. */
void lw_cli_title(const lw_result *result, const char *what, char *out, size_t size);

#endif
