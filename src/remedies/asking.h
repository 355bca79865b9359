/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REMEDIES_ASKING_H
#define LOWWALL_REMEDIES_ASKING_H

#include <lowwall/result.h>

/* How much better the verdict is: by exit status, then by the margin, then by the least that any check has,
 * which tells walls apart whose resultant is outside, then by what still calls for the same. */
typedef struct lw_asking_gain {
  int exit, stands, reasons;
  double ratio, least;
} lw_asking_gain;

/* The unknown answers whose favourable value would change the verdict, the one that changes it most first. */
typedef struct lw_asking_search {
  int at;
  lw_asking_gain gain[LW_ASKING_MAX];
} lw_asking_search;

void lw_asking_begin(lw_asking_search *search, lw_result *result);
/* Try one answer more. gives false when all were tried; tried: whether the wall was run for it. */
bool lw_asking_next(lw_asking_search *search, lw_result *result, lw_result *scratch, bool *tried);

#endif
