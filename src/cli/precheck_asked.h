/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_PRECHECK_ASKED_H
#define LOWWALL_CLI_PRECHECK_ASKED_H

#include "one_wall.h"

/* What `lowwall precheck` was asked for. */
typedef struct lw_precheck_asked {
  lw_wall_asked wall;
  const char *paper, *verify, *date, *as;
  bool folder, html; /* a file a wall of a schedule; as HTML rather than PDF */
} lw_precheck_asked;

/* The pages of the wall's result, which has been run, as the bytes of a file.
 *  out   hash   LW_HASH_HEX bytes
 *        out    appended to; to be freed by the caller either way
 *  gives LW_OK · LW_NO_MEMORY · LW_NO_SOLUTION where the build makes no PDF */
lw_status lw_precheck_bytes(const lw_precheck_asked *asked, lw_one_wall *wall, char *hash, lw_text *out,
                            lw_error *error);

/* A file a wall and an index; the wall's input holds the first block. gives the exit status */
int lw_precheck_folder(const lw_precheck_asked *asked, lw_one_wall *wall);

#endif
