/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_TEXT_ECHO_H
#define LOWWALL_REPORT_TEXT_ECHO_H

#include <lowwall/report.h>

/* What several forms of report say alike. */

/* A value of the case as its user would write it, and in the unit of its JSON key. */
typedef struct lw_echo {
  const lw_item *item;
  int number;
  lw_origin origin;
  int row, column;
  bool worked_out; /* from given items */
  bool likely;     /* the item's likely value, beside the one that decides */
  char name[64], key[80];
  char words[160]; /* "900 mm", "courses" */
  lw_number value; /* of a quantity, in `unit` */
  const char *unit;
  char source[LW_SOURCE_MAX]; /* of a value from a table; "" otherwise */
} lw_echo;

typedef void (*lw_echo_taker)(void *context, const lw_echo *echo);
/** Every item of the case that is there: given, from a table, assumed. */
void lw_echo_each(const lw_result *result, lw_echo_taker taker, void *context);

#endif
