/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_TEXT_RESTS_ON_H
#define LOWWALL_REPORT_TEXT_RESTS_ON_H

#include <lowwall/result.h>

/* A source that a value or an answer of this wall rests on. */
typedef struct lw_rest {
  const char *source; /* may be empty */
  lw_seen seen;
  bool marked;  /* false: the place that names it does not say whether it was read, and seen means nothing */
  bool decides; /* false: of a situation that is only printed */
} lw_rest;
typedef void (*lw_rest_each)(void *context, const lw_rest *rest);

/** All of them in their order, some of them more than once: for the page, the JSON and whoever lists them. */
void lw_rests_each(const lw_result *result, lw_rest_each each, void *context);

#endif
