/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "work.h"

#include <math.h>
#include <stdarg.h>

#include "base/print.h"
#include "laying.h"

/* The order of work, with the points at which to stop and look before something is covered up. Common
 * practice throughout; the figures are those of the wall and of tables/ordering.csv. */

static void add(lw_order *order, bool hold, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 3, 4)))
#endif
    ;

static void add(lw_order *order, bool hold, const char *format, ...) {
  if (order->work_count >= LW_WORK_MAX) return;
  lw_work_step *step = &order->work[order->work_count++];
  step->hold = hold;
  va_list arguments;
  va_start(arguments, format);
  lw_print_list(step->text, sizeof step->text, format, arguments);
  va_end(arguments);
}

static void ground(const lw_laying *laying, const lw_case *c) {
  lw_order *order = laying->order;
  add(order, true,
      "Before anything: what the headline asks for is settled, and buried services are located.");
  add(order, false,
      "Set a datum peg outside the works, then the pegs, and check the distances between them.");
  add(order, false, "Dig to the levels given; take out all that is soft or black.");
  add(order, true,
      "STOP and look before the pad covers it: firm ground all along, no water, the soil that the sheet "
      "says.");
  if (c->pad_thickness.origin != LW_GIVEN) return;
  add(order, false, "Lay the pad, %.0f mm as compacted, in layers that the plate can compact.",
      c->pad_thickness.si * 1000.0);
  if (order->plan.step_count > 0)
    add(order, false, "At each step the lower pad runs %.0f mm under the upper one.",
        lw_known_value(laying->tables, LW_ORDERING_STEP_UNDER) * 1000.0);
  add(order, true, "STOP and look before the %s it: a heel leaves no mark, the level is right.",
      order->plan.solid ? "wall covers" : "blocks cover");
}

static void blocks(const lw_laying *laying) {
  lw_order *order = laying->order;
  double level = lw_known_value(laying->tables, LW_ORDERING_BASE_LEVEL_TOLERANCE);
  add(order, false, "Lay the lowest course to a string, level along and across to %.0f mm in a metre.",
      level * 1000.0);
  add(order, true,
      "STOP and look before the second course: the lowest course's line and level, and its front "
      "buried.");
  if (laying->plan->setback_m > 0.0)
    add(order, false,
        "Each course steps back %.0f mm; the top line then stands %.0f mm behind the base line.",
        laying->plan->setback_m * 1000.0, order->pegs.base_offset_m * 1000.0);
  if (laying->plan->setback_m > 0.0 && order->plan.step_count > 0)
    add(order, false,
        "Above a step of the base the lowest course, and its pad, stand %.0f mm behind the base line for "
        "each course that the base has risen: they lie on the same lean.",
        laying->plan->setback_m * 1000.0);
  add(order, false,
      "Lay from the corners and ends towards the middle, cuts there; fill never more than one course "
      "behind the blocks, in loose layers of at most %.0f mm.",
      lw_known_value(laying->tables, LW_ORDERING_SOIL_LAYER) * 1000.0);
}

static void solid(const lw_laying *laying) {
  lw_order *order = laying->order;
  double back = order->pegs.base_offset_m * 1000.0;
  add(order, false, "Build to strings from the base line to the top line, which stands %.0f mm %s it.",
      fabs(back), back < 0.0 ? "in front of" : "behind");
  add(order, false,
      "Concrete is cast as its design asks. Stone laid dry: the largest below, each on two, long ways into "
      "the wall, the middle packed as it rises; fill "
      "never higher than the stone, in loose layers of at most %.0f mm.",
      lw_known_value(laying->tables, LW_ORDERING_SOIL_LAYER) * 1000.0);
}

/* The check's own distance: two figures for one thing are one too many. */
static void plant(lw_order *order, const lw_building *g) {
  const char *name = g->plant.name[0] != '\0' ? g->plant.name : "plant";
  if (!g->studied || !g->stand_off.keep_m.known)
    add(order, false, "No plant behind the wall at any distance: place stone by hand and leave it loose.");
  else if (g->stand_off.keep_m.value > 0.0)
    add(order, false, "Keep the %s %.2f m or more behind the newest course: a hand rammer nearer than that.",
        name, g->stand_off.keep_m.value);
}

static void finish(const lw_laying *laying, const lw_case *c) {
  lw_order *order = laying->order;
  if (order->pegs.pipe_known) {
    add(order, false, "Lay the pipe to a fall of 1 in %.0f.", 1.0 / fmax(order->pegs.pipe_fall, 1e-6));
    add(order, true,
        "STOP and look before stone covers it: pour water in, and see it come out at every outlet.");
  }
  if (c->stone_width.origin == LW_GIVEN && c->stone_width.si > 0.0)
    add(order, true,
        "STOP and look before soil covers it: the stone is clean, the cloth laps and folds over it.");
  if (order->has_cap)
    add(order, false, "Caps last: dry and brushed, from the corners, joints away from those below.");
  add(order, true, "Hand-over: photograph the wall with a scale and read its batter at three stations.");
  add(order, false,
      "Read again after the first big rain, after the first winter, then every year; at an alarm value "
      "empty the load, open the outlet, dig out the soil evenly from the top, then look for the "
      "cause. Never prop it from below while standing under it.");
}

void lw_order_work(const lw_laying *laying, const lw_result *result) {
  ground(laying, &result->given);
  (laying->plan->solid ? solid : blocks)(laying);
  plant(laying->order, &result->building);
  finish(laying, &result->given);
}
