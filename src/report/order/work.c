/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "words.h"

#include <math.h>
#include <string.h>

#include "base/amount.h"
#include "base/print.h"

/* The order of work in sentences. Common practice throughout. */

/* %s is the step's own length, where it has one. */
static const char *const WORK[LW_WORK_COUNT] = {
    [LW_WORK_SETTLED] =
        "Before anything: what the headline asks for is settled, and buried services are located.",
    [LW_WORK_DATUM] =
        "Set a datum peg outside the works, then the pegs, and check the distances between them.",
    [LW_WORK_DIG] = "Dig to the levels given; take out all that is soft or black.",
    [LW_WORK_LOOK_AT_DIG] =
        "STOP and look before anything covers it: firm ground all along, no water, the soil that the sheet "
        "says.",
    [LW_WORK_PAD] = "Lay the pad, %s as compacted, in layers that the plate can compact.",
    [LW_WORK_PAD_AT_STEPS] = "At each step the lower pad runs %s under the upper one.",
    [LW_WORK_FIRST_COURSE] = "Lay the lowest course to a string, level along and across to %s.",
    [LW_WORK_LOOK_AT_FIRST] =
        "STOP and look before the second course: the lowest course's line and level, and its front "
        "buried.",
    [LW_WORK_COURSES] =
        "Lay from the corners and ends towards the middle, cuts there; fill never more than one course "
        "behind the blocks, in loose layers of at most %s.",
    [LW_WORK_SOLID_FILL] =
        "Concrete is cast as its design asks. Stone laid dry: the largest below, each on two, long ways into "
        "the wall, the middle packed as it rises; fill "
        "never higher than the stone, in loose layers of at most %s.",
    [LW_WORK_NO_PLANT] = "No plant behind the wall at any distance: place stone by hand and leave it loose.",
    [LW_WORK_LOOK_AT_PIPE] =
        "STOP and look before stone covers it: pour water in, and see it come out at every outlet.",
    [LW_WORK_LOOK_AT_STONE] =
        "STOP and look before soil covers it: the stone is clean, the cloth laps and folds over it.",
    [LW_WORK_LOOK_AT_FILTER] = "STOP and look before soil covers it: the stone is clean, the filter's layers "
                               "are whole and not mixed.",
    [LW_WORK_LOOK_AT_BARE_STONE] = "STOP and look before soil covers it: the stone is clean.",
    [LW_WORK_CAPS] = "Caps last: dry and brushed, from the corners, joints away from those below.",
    [LW_WORK_HAND_OVER] =
        "Hand-over: photograph the wall with a scale and read its batter at three stations.",
    [LW_WORK_READ_AGAIN] =
        "Read again after the first big rain, after the first winter, then every year; at an alarm value "
        "empty the load, open the outlet, dig out the soil evenly from the top, then look for the "
        "cause. Never prop it from below while standing under it.",
};

/* "3 mm in a metre", or as much in the four feet of a level. */
static lw_amount level_words(lw_units units, double in_a_metre_m) {
  static const double FOUR_FEET_M = 4.0 * LW_FOOT_M;
  lw_amount words = lw_millimetres(units, units == LW_UNITS_US ? in_a_metre_m * FOUR_FEET_M : in_a_metre_m);
  size_t used = strlen(words.text);
  lw_print(words.text + used, sizeof words.text - used, units == LW_UNITS_US ? " in 4 ft" : " in a metre");
  return words;
}

const char *lw_work_words(const lw_order *order, const lw_work_step *step, const char *plant,
                          char out[LW_ORDER_SENTENCE]) {
  double back = order->setting_out.base_offset_m;
  const lw_amount setback = lw_millimetres(order->units, order->plan.setback_m);
  switch (step->kind) {
  case LW_WORK_LOOK_AT_PAD:
    lw_print(out, LW_ORDER_SENTENCE,
             "STOP and look before the %s it: a heel leaves no mark, the level is right.",
             order->plan.solid ? "wall covers" : "blocks cover");
    break;
  case LW_WORK_SETBACK:
    lw_print(out, LW_ORDER_SENTENCE,
             "Each course steps back %s; the top line then stands %s behind the base line.", setback.text,
             lw_millimetres(order->units, back).text);
    break;
  case LW_WORK_SETBACK_AT_STEPS:
    lw_print(out, LW_ORDER_SENTENCE,
             "Above a step of the base the lowest course, and its pad, stand %s behind the base line for "
             "each course that the base has risen: they lie on the same lean.",
             setback.text);
    break;
  case LW_WORK_SOLID:
    lw_print(out, LW_ORDER_SENTENCE,
             "Build to strings from the base line to the top line, which stands %s %s it.",
             lw_millimetres(order->units, fabs(back)).text, back < 0.0 ? "in front of" : "behind");
    break;
  case LW_WORK_PLANT:
    lw_print(out, LW_ORDER_SENTENCE,
             "Keep the %s %s or more behind the newest course: a hand rammer nearer than that.",
             plant[0] != '\0' ? plant : "plant", lw_metres(order->units, step->length_m, 2).text);
    break;
  case LW_WORK_PIPE:
    lw_print(out, LW_ORDER_SENTENCE, "Lay the pipe to a fall of 1 in %.0f.",
             1.0 / fmax(order->setting_out.pipe_fall, 1e-6));
    break;
  case LW_WORK_FIRST_COURSE:
    lw_print(out, LW_ORDER_SENTENCE, WORK[step->kind], level_words(order->units, step->length_m).text);
    break;
  default:
    lw_print(out, LW_ORDER_SENTENCE, WORK[step->kind], lw_millimetres(order->units, step->length_m).text);
  }
  return out;
}
