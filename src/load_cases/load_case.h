/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_LOAD_CASE_H
#define LOWWALL_LOAD_CASES_LOAD_CASE_H

#include "standards/factor_set.h"

/* A load case under a set of factors, as far as situation and set say: all loads there, no factor on what
 * acts, the ground not made yet. */
lw_load_case lw_load_case_begin(const lw_situation *situation, const lw_factor_set *factor_set);

/* The ground of a load case that has its water and its earthquake: what is dug and blown in its situation,
 * and the strengths as the set takes them there. working may be NULL. */
void lw_load_case_ground(const lw_wall *wall, const lw_factor_set *factor_set, lw_load_case *load_case,
                         const lw_working *working);
/* The same for a contact: with the share of the strengths that the set lets the pushing soil mobilize. Slips
 * and the building of a wall take them whole. */
void lw_load_case_mobilized(const lw_wall *wall, const lw_factor_set *factor_set, lw_load_case *load_case,
                            const lw_working *working);

/* The ways in which an earthquake may act: weight made lighter or heavier, wet ground with its water or the
 * water by itself. Without one there is a single way, which is none. gives how many; the first is shown */
enum { LW_WAYS = 4 };
int lw_load_case_ways(const lw_wall *wall, const lw_situation *situation, lw_seismic way[LW_WAYS]);

/** The load case that a check was made in.
 *  in    situation   that the check stands in
 *        check       for its name of a load case */
void lw_load_case_of(const lw_wall *wall, const lw_tables *tables, const lw_situation *situation,
                     const lw_check *check, lw_load_case *load_case);

#endif
