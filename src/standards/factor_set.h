/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_STANDARDS_FACTOR_SET_H
#define LOWWALL_STANDARDS_FACTOR_SET_H

#include <lowwall/checks.h>

#include "tables/known.h"

/* One set of factors, looked up once. */
typedef struct lw_factor_set {
  const lw_factor_row *any; /* one of its rows, for its name and title; NULL when it has none */
  const lw_factor_row *row[LW_FACTOR_COUNT];
  bool has_factors;       /* some row divides or multiplies by more or less than 1 */
  bool not_for_decisions; /* its numbers are from memory, or a proposal: its row says which */
  double on_every_wedge;  /* divides every strength while a factor of sliding is searched; 0: no search */
  bool part;              /* chosen alone though it is one of the sets that its code asks for together */
} lw_factor_set;

/* A set of factors and those that it includes: all must hold. The first is its own. */
enum { LW_SETS_MAX = 1 + LW_FORMAT_PARTS_MAX };
typedef struct lw_factor_set_family {
  int count;
  lw_factor_set set[LW_SETS_MAX];
} lw_factor_set_family;

void lw_factor_set_read(const lw_tables *tables, const char *name, lw_factor_set_family *family);
/* The one set that a row is of; without a row a set that asks for nothing. */
void lw_factor_set_read_of(const lw_tables *tables, const lw_factor_row *row, lw_factor_set *factor_set);
/* The value of a row for a kind of situation: the usual one where it has none for that kind. */
lw_number lw_factor_value(const lw_factor_row *row, lw_situation_kind kind);
/* The row that asks in a kind of situation: that of doubtful ground, where there is a doubt and it asks
 * more. */
const lw_factor_row *lw_factor_set_row(const lw_factor_set *factor_set, lw_factor need, lw_factor doubted,
                                       lw_doubt doubt, lw_situation_kind kind);
/* The value of a quantity of a set; `otherwise` where the set has none. */
double lw_factor_set_or(const lw_factor_set *factor_set, lw_factor need, lw_situation_kind kind,
                        double otherwise);
/* Whether the set asks for anything at all. */
bool lw_factor_set_asks(const lw_factor_set *factor_set);
bool lw_factor_set_passive_off_push(const lw_factor_set *factor_set, const lw_method *method);
/* A set that must not decide never says that a check holds. */
void lw_factor_set_restrain(const lw_factor_set *factor_set, lw_check *check);

#endif
