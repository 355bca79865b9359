/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_STANDARDS_FACTORS_H
#define LOWWALL_STANDARDS_FACTORS_H

#include "factor_set.h"

/* The factors of a set, on strengths, on resistances and on what acts. */

/* Favourable or unfavourable, source by source: what the same wall is tried under. */
typedef struct lw_leaning {
  bool heavy;       /* weight of the wall unfavourable */
  bool soil_heavy;  /* weight of soil on it unfavourable: with the wall, unless its factors are its own */
  bool pushes_less; /* thrust and water favourable */
  bool no_variable; /* loads behind are missing; those on the wall are tried without elsewhere */
  bool heel_loaded; /* the load behind presses on the heel as well */
} lw_leaning;
enum { LW_LEANINGS = 32 };

/* By what a resistance is multiplied: times over divided by. */
double lw_factor_set_times(const lw_factor_set *factor_set, lw_situation_kind kind, lw_factor divides,
                           lw_factor times);
/* Whether the set divides or multiplies anything in this kind of situation: its values are design values. */
bool lw_factor_set_is_partial(const lw_factor_set *factor_set, lw_situation_kind kind);
/* Whether two kinds of situation have the same strengths of the ground. */
bool lw_factor_set_same_ground(const lw_factor_set *factor_set, lw_situation_kind a, lw_situation_kind b);
/* Divide the strengths of a ground by the set's material factors, and put the factor of variable actions on
 * what pushes the ground level: the one place where that happens. working may be NULL. */
void lw_factor_set_weaken(const lw_factor_set *factor_set, lw_situation_kind kind, const lw_wall *wall,
                          lw_ground *ground, const lw_working *working);
/* What the strength of the soil that pushes is multiplied by: a set may mobilize a share of it, and the
 * search for a factor on every wedge divides it. */
double lw_factor_set_mobilized(const lw_factor_set *factor_set, lw_situation_kind kind,
                               const lw_method *method);
/* Whether the set's factor of sliding is one on the strength of every wedge. */
bool lw_factor_set_on_every_wedge(const lw_factor_set *factor_set, lw_situation_kind kind);
/* Mobilize it, in a ground whose contacts are to be loaded: slips and a wall under construction take it
 * whole. */
void lw_factor_set_mobilize(const lw_factor_set *factor_set, lw_situation_kind kind, const lw_wall *wall,
                            lw_ground *ground, const lw_working *working);
/* The factors on what acts; out: up to LW_LEANINGS that differ, the usual first. gives how many */
int lw_factor_set_on_actions(const lw_factor_set *factor_set, const lw_load_case *load_case,
                             const lw_wall *wall, lw_factors factors[LW_LEANINGS]);

#endif
