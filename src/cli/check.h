/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_CHECK_H
#define LOWWALL_CLI_CHECK_H

#include "as.h"
#include "one_wall.h"

/* What `lowwall check` was asked. */
typedef struct lw_check_asked {
  lw_wall_asked wall;
  bool full, working, json;
  bool every_joint;                         /* --working=all */
  bool all_formats;                         /* --format all */
  bool likely;                              /* the columns by likely values, of every row */
  const char *format, *jobs_given, *joints; /* as given, or NULL */
  lw_cli_as as;
  int jobs; /* threads for a schedule, from 1 */
} lw_check_asked;

/* Many walls, a row each. The wall's input holds the first block. gives the exit status */
int lw_check_schedule(const lw_check_asked *asked, lw_one_wall *wall);

#endif
