/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECKS_SITUATION_H
#define LOWWALL_CHECKS_SITUATION_H

#include "stage.h"

/* What one situation is going to be. How to add one: a line in LW_SITUATIONS, a lw_plan_ function in a file
 * situation_*.c of its own, a line in the list of situations.c; what it changes of the wall beyond the water
 * behind it goes into lw_situation_wall. */
typedef struct lw_situation_plan {
  lw_situation_name name;
  lw_situation_kind kind;
  bool decides;
  const char *why;
  double water_depth_m;
  lw_actions actions;
  double seismic_horizontal, seismic_vertical; /* both 0: no earthquake */
} lw_situation_plan;

/* Each fills in its plan, which has the water of the site and the load on the cap already; false when the
 * wall is not checked in it. */
typedef bool (*lw_plan)(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan);
bool lw_plan_drained(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan);
bool lw_plan_blocked(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan);
bool lw_plan_storm(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan);
bool lw_plan_sitting(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan);
bool lw_plan_leaning(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan);
bool lw_plan_earthquake(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan);
bool lw_plan_trench(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan);
bool lw_plan_wind(const lw_wall *wall, const lw_tables *tables, lw_situation_plan *plan);

/* The wall as it stands in a situation: the water behind it, what is dug away in front, and the strengths of
 * the ground as the format takes them in situations of that kind. */
void lw_situation_wall(const lw_wall *wall, const lw_format *format, const lw_situation *situation,
                       lw_wall *now, const lw_working *working);

/* The same for a copy of the wall, as it is or as it stood in another situation: none changes parts or
 * outline. */
void lw_situation_change(const lw_wall *wall, const lw_format *format, const lw_situation *situation,
                         lw_wall *now, const lw_working *working);

/* What a trench in front takes away from the support of the wall. */
void lw_trench_open(lw_wall *now);
/* The posts of a fence behind push the ground. */
void lw_wind_blow(lw_wall *now);

/* A base, a pad, a joint by its number, or a cap. */
typedef struct lw_contact_name {
  lw_at at;
  int joint;
} lw_contact_name;

/* One contact alone under a plan, for a search: its checks, and its stage or joint; nothing else of the
 * situation is filled in. */
void lw_situation_contact(const lw_wall *wall, const lw_format_family *family, const lw_situation_plan *plan,
                          const lw_contact_name *only, lw_situation *situation);

/* Run every plan on the wall; situations->count says how many there are. */
void lw_situations_follow(const lw_wall *wall, const lw_tables *tables, const lw_situation_plan *plan,
                          lw_situations *situations, const lw_working *working);

#endif
