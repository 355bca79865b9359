/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECKS_SITUATION_RUN_H
#define LOWWALL_CHECKS_SITUATION_RUN_H

#include "situation.h"

enum {
  LW_PUSH_BASE = 0,
  LW_PUSH_PAD = 1,
  LW_PUSH_FIRST_JOINT = 2,
  LW_PUSH_MAX = LW_PUSH_FIRST_JOINT + LW_COURSE_MAX + 1
};

/* The courses above each joint, the one under the cap included, and the pushes on every contact. Situations
 * with the same water and soil share the pushes, all of them a wedge that only changes its size. */
typedef struct lw_pushes {
  int joint_count;
  lw_section above[LW_COURSE_MAX + 1];
  lw_push push[LW_PUSH_MAX];
  lw_wedge_known searched;
} lw_pushes;

/* only: the one contact that is asked for; NULL: every one. The joint under the cap is asked for as the
 * cap. */
bool lw_contact_asked(const lw_contact_name *only, lw_at at);
bool lw_joint_asked(const lw_contact_name *only, const lw_section *section, int joint);

/* What no situation changes: the stacks above the joints. */
void lw_pushes_begin(const lw_section *section, const lw_contact_name *only, lw_pushes *pushes);
/* The pushes on a wall as it stands in a situation. */
void lw_pushes_find(const lw_wall *wall, const lw_contact_name *only, lw_pushes *pushes);

/* One situation under one set of factors and one way of an earthquake: every contact loaded and checked.
 * Loads that may be absent are tried present and absent, and the graver answer of each check stays. */
typedef struct lw_situation_run {
  const lw_contact_name *only; /* NULL: every contact */
  const lw_wall *whole;        /* as built */
  const lw_wall *wall;         /* its strengths factored, and with the water of this situation */
  const lw_check_context *context;
  const lw_pushes *pushes;
  lw_situation *situation;
  lw_factors factors; /* in hand */
  const lw_actions *actions;
  int next;           /* check of the variant in hand */
  bool any;
  lw_check gravest; /* under this set, and the factors it came about with */
  lw_factors of_gravest;
} lw_situation_run;

void lw_situation_check(lw_situation_run *run, const lw_actions *actions);
/* The stages that the reports show: with all loads there, under the factors of the gravest check. */
void lw_situation_record(const lw_situation_run *run, const lw_actions *actions);

#endif
