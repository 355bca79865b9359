/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_FORMATS_H
#define LOWWALL_FORMATS_H

#include <lowwall/checks.h>

LW_PUBLIC_BEGIN

/* One wall under one set of factors: what governs there. */
typedef struct lw_format_answer {
  const lw_format_row *row;      /* the first of the set: its name and title */
  lw_holds stands;               /* by the checks alone; never LW_HOLDS for what must not decide */
  bool governed;                 /* a check governs, and what follows is about it */
  lw_situation_name situation;
  lw_situation_kind kind;
  lw_check check;
  bool part;                     /* another set includes it: by itself it decides nothing */
  bool decides;                  /* false: from memory, not for decisions */
  bool memory, proposal;         /* some number of the set, or of those it includes, is */
} lw_format_answer;

/* Every set of tables/formats.csv, in the order of the table. */
typedef struct lw_formats {
  int count;
  lw_format_answer answer[LW_FORMAT_ROWS];
} lw_formats;

/** The same wall under every set of factors on file.
 *  in    wall      as lw_wall_build made it; its own format does not matter
 *        tables    in effect
 *  out   formats   filled
 *        scratch   situations to run in; what they hold afterwards is the last set's */
void lw_formats_compare(const lw_wall *wall, const lw_tables *tables, lw_formats *formats,
                        lw_situations *scratch);

LW_PUBLIC_END

#endif
