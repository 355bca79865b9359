/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_PRECHECK_FILE_H
#define LOWWALL_CLI_PRECHECK_FILE_H

#include "one_wall.h"

/* Whether a pre-check, as a file, is what lowwall makes of the sheet attached to it. gives the exit status */
int lw_precheck_verify_file(const lw_wall_asked *asked, const char *name);

#endif
