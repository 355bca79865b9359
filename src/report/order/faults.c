/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include <lowwall/report.h>

#include "base/amount.h"
#include "base/print.h"
#include "sheet/faults.h"

/* What would be right where runs, turns and steps make no plan: the cell, its item, and the words. */

static void add(lw_faults *faults, const lw_quantity *cell, const char *item, const char *wanted) {
  lw_cell_place place = {cell->row > 0 ? cell->row : 0, cell->column};
  lw_faults_add(faults, LW_FAULT_CONTRADICTION, place, item, "", "%s", wanted);
}

static void of_turn(const lw_case_order *items, const lw_plan_fault *fault, lw_faults *faults) {
  char item[32] = "turn n angle", wanted[240] = "";
  if (fault->kind == LW_PLAN_TURNS)
    lw_print(wanted, sizeof wanted, "turns that make one full turn; these and the curves make %.2f deg",
             fault->angle_rad * LW_DEG_PER_RAD);
  if (fault->kind == LW_PLAN_LAST_TURN)
    lw_print(wanted, sizeof wanted,
             "no turn after the last run of a plan with two ends, or `plan ends` closed");
  if (fault->kind == LW_PLAN_MITRE) {
    lw_print(item, sizeof item, "turn %d angle", fault->at + 1);
    lw_print(wanted, sizeof wanted,
             "a turn whose mitre leaves %.0f %% of a block of %s: at most %.0f deg with blocks so "
             "deep, a right angle, two lesser turns, or a curve",
             fault->share * 100.0, lw_millimetres(fault->units, fault->length_m).text,
             floor(fault->angle_rad * LW_DEG_PER_RAD));
  }
  add(faults, &items->turn[fault->at], item, wanted);
}

static void of_run(const lw_case_order *items, const lw_plan_fault *fault, lw_faults *faults) {
  char item[32], wanted[240] = "";
  lw_print(item, sizeof item, "run %d length", fault->at + 1);
  if (fault->kind == LW_PLAN_SHORT)
    lw_print(wanted, sizeof wanted,
             "a run at least half a block long in every course, the setbacks at its corners and ends taken "
             "off: make it longer, or the blocks shorter, or `setback` or `end setback` smaller");
  if (fault->kind == LW_PLAN_NO_ROOM)
    lw_print(wanted, sizeof wanted,
             "a run with room for the depth of the blocks at its corners or on its curve: make it longer, or "
             "its radius larger");
  if (fault->kind == LW_PLAN_CROSSES)
    lw_print(wanted, sizeof wanted,
             "a plan whose runs do not cross; run %d crosses run %d: look at its turns", fault->at + 1,
             fault->other + 1);
  add(faults, &items->run[fault->at].length, item, wanted);
}

static void of_runs(const lw_case_order *items, const lw_plan_fault *fault, lw_faults *faults) {
  char wanted[120] = "runs that close the plan";
  if (fault->kind == LW_PLAN_APART)
    lw_print(wanted, sizeof wanted, "runs that come back to their beginning; they end %s from it",
             lw_millimetres(fault->units, fault->length_m).text);
  add(faults, &items->run[fault->at].length, "run n length", wanted);
}

static void of_steps(const lw_case_order *items, const lw_plan_fault *fault, lw_faults *faults) {
  const lw_quantity *cell = fault->falls ? &items->ground_fall : &items->step[0].courses;
  const char *item = fault->falls ? "ground fall" : "step n courses";
  if (fault->kind == LW_PLAN_STEPS_HIGH)
    add(faults, cell, item, "steps that leave at least one course everywhere");
  else
    add(faults, cell, item,
        fault->falls ? "steps in place of a fall: a closed plan ends where it began"
                     : "steps up and down that end at the level of the beginning");
}

/* No cell is wrong: the whole is too large. */
static void of_size(const lw_case_order *items, const lw_plan_fault *fault, lw_faults *faults) {
  const lw_quantity *cell = &items->run[0].length;
  lw_cell_place place = {cell->row > 0 ? cell->row : 0, cell->column}, nowhere = {0, 0};
  if (fault->kind == LW_PLAN_LONG)
    lw_faults_add(faults, LW_FAULT_TOO_MANY, place, "run n length", "", "at most 4000 blocks in a course");
  else
    lw_faults_add(faults, LW_FAULT_TOO_MANY, nowhere, "run n length", "",
                  "fewer runs, courses or steps: at most %d rows of blocks", LW_ROW_MAX);
}

void lw_report_plan_fault(const lw_case_order *items, const lw_plan_fault *fault, lw_faults *faults) {
  switch (fault->kind) {
  case LW_PLAN_TURNS:
  case LW_PLAN_LAST_TURN:
  case LW_PLAN_MITRE: of_turn(items, fault, faults); break;
  case LW_PLAN_SHORT:
  case LW_PLAN_NO_ROOM:
  case LW_PLAN_CROSSES: of_run(items, fault, faults); break;
  case LW_PLAN_OPEN:
  case LW_PLAN_APART: of_runs(items, fault, faults); break;
  case LW_PLAN_STEP_OUTSIDE:
    add(faults, &items->step[fault->at].distance, "step n distance",
        "a step between the beginning and the end of the runs");
    break;
  case LW_PLAN_STEPS_ROUND:
  case LW_PLAN_STEPS_HIGH: of_steps(items, fault, faults); break;
  case LW_PLAN_LONG:
  case LW_PLAN_ROWS: of_size(items, fault, faults); break;
  }
}
