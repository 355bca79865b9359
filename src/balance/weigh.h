/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_WEIGH_H
#define LOWWALL_BALANCE_WEIGH_H

#include "standards/factor_set.h"
#include "place.h"

/* What the checks of one load case share. */
typedef struct lw_check_context {
  const lw_wall *wall;
  const lw_factor_set *factor_set;
  const lw_load_case *load_case;
  const lw_place *place; /* NULL: of the ground as a whole */
} lw_check_context;

/* A check on a contact: its numbers and whether it holds, and its steps where a recorder takes them. */
typedef lw_check (*lw_make_check)(const lw_check_context *context, const lw_free_body *body,
                                  const lw_working *working);

/* The program itself went wrong, as lw_check_faulty has it of what cannot be shown. */
bool lw_reason_is_faulty(lw_reason reason);

lw_number lw_known(double value);
/* has, needs, ratio and whether it holds, from demand and resistance. */
void lw_check_weigh(lw_check *check, const lw_factor_row *row, lw_situation_kind kind);
/* ratio and whether it holds, from has and needs; both are known, and more than nothing is asked. */
void lw_check_compare(lw_check *check);
/* A check at the place of its context that still wants its numbers; without a free body it cannot be
 * shown. */
lw_check lw_check_begin(const lw_check_context *context, const lw_free_body *body, lw_check_kind kind,
                        const char *unit);
/* Nothing pushes: it holds, whatever is asked. */
void lw_check_no_demand(lw_check *check, const lw_factor_row *row, lw_situation_kind kind);
/* What the check has, from demand and resistance; false where nothing pushes. Where a factor on every
 * strength is in hand, that is what it has: with it on all of them what holds comes to the demand, be both
 * next to nothing. */
bool lw_check_find_has(const lw_check_context *context, lw_check *check);
/* The last line of a check's working. */
void lw_check_tell_has(const lw_check *check, const char *formula, const lw_working *working);
/* A check that has no answer, and why. */
void lw_check_not_shown(lw_check *check, lw_reason reason);

/** True where the program itself went wrong: a value is no number, soil has no push, or formula and wedge
 *  disagree. No verdict survives such a check, in whichever situation it stands. */
bool lw_check_faulty(const lw_check *check);

/** True when a is graver than b, by what a reader should see first: a fault of the program, what falls short,
 *  then what cannot be shown, then the lesser ratio; where nothing is asked, or of two checks of a kind that
 *  overturn, the lesser has; what does not count comes last. */
bool lw_check_graver(const lw_check *a, const lw_check *b);

#endif
