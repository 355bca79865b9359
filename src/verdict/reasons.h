/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_VERDICT_REASONS_H
#define LOWWALL_VERDICT_REASONS_H

#include <lowwall/result.h>

#include "base/amount.h"

/* A verdict on its way: the answers so far, and why. Its reasons are the verdict's own from
 * LW_DETAIL_EVERYTHING on; before, only those that the headline may take, and given up with it. */
typedef struct lw_reaching {
  lw_detail detail;
  lw_verdict *verdict;
  lw_reasons *reasons;
  const lw_looks *looks; /* once the grade is known */
} lw_reaching;

/* A reason in the making: what is known of it before its sentence. */
typedef struct lw_because {
  lw_answer answer;
  lw_who who;
  lw_origin origin; /* of the value it rests on */
  const char *slug;
  const char *source;
  const char *left_out; /* the item of the sheet that would tell; NULL: none */
  bool again;           /* the slug may stand there several times: a row each */
} lw_because;

enum { LW_CLAUSE_MAX = 240 };

/* A new reason, for its text to be printed into; NULL when this slug stands there already, for the same
 * answer and at least as grave, when the same question is asked already, when there is no room, or, before
 * LW_DETAIL_EVERYTHING, when the headline cannot take it. Who must sign is raised all the same. A reason that
 * rests on an answer left out calls for the council, who has the question: never for an engineer. */
lw_verdict_reason *lw_reasons_new(lw_reaching *to, const lw_because *because);
/* The same with its sentence. */
void lw_reasons_add(lw_reaching *to, const lw_because *because, const char *text);

/* A reason that is a question: "The sheet leaves out service distance (How far is the nearest sewer?)." */
void lw_reasons_ask(lw_reaching *to, const char *slug, const char *source, const char *left_out);

/* The same as a clause, without its full stop: "the sheet leaves out ...". size: LW_CLAUSE_MAX will do. */
const char *lw_reasons_question(const char *left_out, char *out, size_t size);

/* "0.80": of all that a reason costs, printf's own way with a number is the most. */
typedef struct lw_digits {
  char text[32];
} lw_digits;
lw_digits lw_digits_of(double value, int decimals);
lw_digits lw_two_decimals(double value);

/* "0.80 m away", or "at a distance not known, so taken as 1.00 m", of a distance as it is said. */
typedef struct lw_away {
  char text[96];
} lw_away;
lw_away lw_reasons_away(const lw_quantity *q, const lw_amount *said);
/* The first reason for this answer, one that rests on known values before one that does not; NULL: none. */
const lw_verdict_reason *lw_reasons_first(const lw_reasons *reasons, lw_answer answer, lw_who who);

#endif
