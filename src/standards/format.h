/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_STANDARDS_FORMAT_H
#define LOWWALL_STANDARDS_FORMAT_H

#include <lowwall/checks.h>

#include "tables/known.h"

/* One set of factors, looked up once. */
typedef struct lw_format {
  const lw_format_row *any; /* one of its rows, for its name and title; NULL when it has none */
  const lw_format_row *row[LW_NEED_COUNT];
  bool has_factors;      /* some row divides or multiplies by more or less than 1 */
  bool from_memory;      /* its numbers are, and not for decisions */
  double on_every_wedge; /* divides every strength while a factor of sliding is searched; 0: no search */
  bool part;             /* chosen alone though it is one of the sets that its code asks for together */
} lw_format;

/* A format and the sets that it includes: all must hold. The first is its own. */
enum { LW_SETS_MAX = 1 + LW_FORMAT_PARTS_MAX };
typedef struct lw_format_family {
  int count;
  lw_format set[LW_SETS_MAX];
} lw_format_family;

void lw_format_read(const lw_tables *tables, const char *name, lw_format_family *family);
/* The one set that a row is of; without a row a set that asks for nothing. */
void lw_format_read_of(const lw_tables *tables, const lw_format_row *row, lw_format *format);
/* The value of a row for a kind of situation: the usual one where it has none for that kind. */
lw_number lw_format_value(const lw_format_row *row, lw_situation_kind kind);
/* The same of a quantity of a set; `otherwise` where the set has none. */
double lw_format_or(const lw_format *format, lw_need need, lw_situation_kind kind, double otherwise);
/* Whether the set asks for anything at all. */
bool lw_format_asks(const lw_format *format);
bool lw_format_passive_off_push(const lw_format *format, const lw_method *method);
/* A set that must not decide never says that a check holds. */
void lw_format_restrain(const lw_format *format, lw_check *check);

#endif
