/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_CHECK_H
#define LOWWALL_CLI_CHECK_H

#include "one_wall.h"

/* What `lowwall check` was asked. */
typedef struct lw_check_asked {
  lw_wall_asked wall;
  bool working, json;
  bool all_formats;                /* --format all */
  const char *format;              /* as given, or NULL */
  char format_item[128];
} lw_check_asked;

/* Many walls, a row each. The input holds its first block; header_faults those of the command line.
 * gives the exit status */
int lw_check_schedule(const lw_check_asked *asked, const lw_tables *tables, lw_input *input,
                      lw_faults *header_faults);

#endif
