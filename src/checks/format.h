/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECKS_FORMAT_H
#define LOWWALL_CHECKS_FORMAT_H

#include <lowwall/checks.h>

/* One set of factors, looked up once. */
typedef struct lw_format {
  const lw_format_row *any; /* one of its rows, for its name and title; NULL when it has none */
  const lw_format_row *row[LW_NEED_COUNT];
  bool has_factors; /* some row divides or multiplies by more or less than 1 */
  bool from_memory; /* its numbers are, and not for decisions */
  double on_every_wedge; /* divides every strength while a factor of sliding is searched; 0: no search */
  bool part;        /* chosen alone though it is one of the sets that its code asks for together */
} lw_format;

/* A format and the sets that it includes: all must hold. The first is its own. */
enum { LW_SETS_MAX = 6 };
typedef struct lw_format_family {
  int count;
  lw_format set[LW_SETS_MAX];
} lw_format_family;

/* Favourable or unfavourable, source by source: what the same wall is tried under. */
typedef struct lw_leaning {
  bool heavy;       /* weight of the wall unfavourable */
  bool soil_heavy;  /* weight of soil on it unfavourable: with the wall, unless its factors are its own */
  bool pushes_less; /* thrust and water favourable */
  bool no_variable; /* loads behind are missing; those on the wall are tried without elsewhere */
  bool heel_loaded; /* the load behind presses on the heel as well */
} lw_leaning;
enum { LW_LEANINGS = 32 };

void lw_format_read(const lw_tables *tables, const char *name, lw_format_family *family);
/* The one set that a row is of; without a row a set that asks for nothing. */
void lw_format_read_of(const lw_tables *tables, const lw_format_row *row, lw_format *format);
/* The value of a row for a kind of situation: the usual one where it has none for that kind. */
lw_number lw_format_value(const lw_format_row *row, lw_situation_kind kind);
/* By what a resistance is multiplied: times over divided by. */
double lw_format_times(const lw_format *format, lw_situation_kind kind, lw_need divides, lw_need times);
/* Whether the set divides or multiplies anything in this kind of situation: its values are design values. */
bool lw_format_is_partial(const lw_format *format, lw_situation_kind kind);
/* Whether the set asks for anything at all. */
bool lw_format_asks(const lw_format *format);
/* Whether two kinds of situation have the same strengths of the ground. */
bool lw_format_same_ground(const lw_format *format, lw_situation_kind a, lw_situation_kind b);
/* Divide the strengths by the format's material factors, and put the factor of variable actions on what
 * pushes the ground level: the one place where that happens. working may be NULL. */
void lw_format_apply(const lw_format *format, lw_situation_kind kind, lw_wall *wall,
                     const lw_working *working);
/* What the strength of the soil that pushes is multiplied by: a set may mobilize a share of it, and the
 * search for a factor on every wedge divides it. */
double lw_format_mobilized(const lw_format *format, lw_situation_kind kind, const lw_method *method);
/* Whether the set's factor of sliding is one on the strength of every wedge. */
bool lw_format_on_every_wedge(const lw_format *format, lw_situation_kind kind);
/* Mobilize it, in a wall whose contacts are to be loaded: slips and the building of a wall take it whole. */
void lw_format_mobilize(const lw_format *format, lw_situation_kind kind, lw_wall *wall,
                        const lw_working *working);
/* Put the set's factors on the weights, the water and the loads of a cross-section. One source, one factor:
 * weight that drives and weight that holds are both unfavourable, or (light) both favourable. */
void lw_format_weigh_ground(const lw_format *format, lw_situation_kind kind, bool light,
                            lw_slip_ground *ground);
/* Whether the two differ. */
bool lw_format_weighs_twice(const lw_format *format, lw_situation_kind kind);
/* The factors on what acts; out: up to LW_LEANINGS that differ, the usual first. gives how many */
int lw_format_factors(const lw_format *format, lw_situation_kind kind, const lw_wall *wall,
                      lw_factors factors[LW_LEANINGS]);
bool lw_format_passive_off_push(const lw_format *format, const lw_method *method);
/* A set that must not decide never says that a check holds. */
void lw_format_restrain(const lw_format *format, lw_check *check);

#endif
