/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PLAN_H
#define LOWWALL_PLAN_H

#include <lowwall/case.h>

LW_PUBLIC_BEGIN

/* The plan of a wall: its face, run by run. X runs along run 1 and Y to the left of it, which is the soil's
 * side; a turn is positive towards the soil. Lengths are those of the face. A course is offset towards the
 * soil by its setbacks. */

/* Lists and what counts them stand side by side. */
/* clang-format off */
typedef struct lw_spot { double x_m, y_m; } lw_spot;

typedef struct lw_plan_run {
  double length_m;       /* on the face of the lowest course */
  double radius_m;       /* of that face; 0: straight; positive: centre on the soil's side */
  double turn_rad;       /* at its end */
  double from_m;         /* its beginning, along the plan */
  double heading_rad;    /* at its beginning */
  double cap_depth_m;
  lw_spot begin, end, centre;
} lw_plan_run;

typedef struct lw_plan_step { double at_m; int rise; } lw_plan_step;

typedef struct lw_plan {
  int run_count;
  lw_plan_run run[LW_RUN_MAX];
  bool closed, closed_told;      /* told: from the runs, not from the sheet */
  double length_m;               /* of all runs on the face of the lowest course */
  double module_m;               /* block length and joint gap */
  double gap_m, unit_m, tail_m, depth_m, base_depth_m, course_m, setback_m, end_setback_m, curve_gap_m;
  int base_courses, courses;
  bool solid;                    /* no blocks: two halves of its height stand for courses */
  int first_raised;              /* courses that the base lies above its lowest place at the beginning */
  int step_count;
  lw_plan_step step[LW_COURSE_MAX];
  bool falls;
  double fall_m;                 /* of the ground in front, beginning to end */
} lw_plan;

/* Why runs, turns and steps make no plan, or none that blocks can be laid to. */
typedef enum lw_plan_fault_kind {
  LW_PLAN_TURNS,        /* a closed plan's make no full turn: angle_rad instead */
  LW_PLAN_OPEN,         /* no turn closes it */
  LW_PLAN_APART,        /* a closed plan's end misses its beginning by length_m */
  LW_PLAN_LAST_TURN,    /* after the last run of a plan with two ends */
  LW_PLAN_SHORT,        /* less than half a block of a run is left in some course */
  LW_PLAN_NO_ROOM,      /* for the depth of the blocks */
  LW_PLAN_CROSSES,      /* a run crosses another */
  LW_PLAN_LONG,         /* more blocks in a course than there is room for */
  LW_PLAN_STEP_OUTSIDE, /* beyond the runs */
  LW_PLAN_STEPS_ROUND,  /* a closed plan does not end at the level where it began */
  LW_PLAN_STEPS_HIGH,   /* they leave no course somewhere */
  LW_PLAN_MITRE,        /* leaves less than a share of a block; angle_rad is the most that leaves it */
  LW_PLAN_ROWS          /* more rows than there is room for */
} lw_plan_fault_kind;

typedef struct lw_plan_fault {
  lw_plan_fault_kind kind;
  int at, other;         /* run or step, from 0 */
  double angle_rad, length_m, share;   /* of a mitre: length of a block, share that must be left */
  bool falls; lw_units units; /* its steps are those of falling ground; what its reader measures in */
} lw_plan_fault;
/* clang-format on */

LW_PUBLIC_END

#endif
