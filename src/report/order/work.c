/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "words.h"

#include <math.h>

#include "base/print.h"

/* The order of work in sentences. Common practice throughout. */

/* %.0f is the step's own length in millimetres, where it has one. */
static const char *const WORK[LW_WORK_COUNT] = {
    [LW_WORK_SETTLED] =
        "Before anything: what the headline asks for is settled, and buried services are located.",
    [LW_WORK_DATUM] =
        "Set a datum peg outside the works, then the pegs, and check the distances between them.",
    [LW_WORK_DIG] = "Dig to the levels given; take out all that is soft or black.",
    [LW_WORK_LOOK_AT_DIG] =
        "STOP and look before anything covers it: firm ground all along, no water, the soil that the sheet "
        "says.",
    [LW_WORK_PAD] = "Lay the pad, %.0f mm as compacted, in layers that the plate can compact.",
    [LW_WORK_PAD_AT_STEPS] = "At each step the lower pad runs %.0f mm under the upper one.",
    [LW_WORK_FIRST_COURSE] =
        "Lay the lowest course to a string, level along and across to %.0f mm in a metre.",
    [LW_WORK_LOOK_AT_FIRST] =
        "STOP and look before the second course: the lowest course's line and level, and its front "
        "buried.",
    [LW_WORK_COURSES] =
        "Lay from the corners and ends towards the middle, cuts there; fill never more than one course "
        "behind the blocks, in loose layers of at most %.0f mm.",
    [LW_WORK_SOLID_FILL] =
        "Concrete is cast as its design asks. Stone laid dry: the largest below, each on two, long ways into "
        "the wall, the middle packed as it rises; fill "
        "never higher than the stone, in loose layers of at most %.0f mm.",
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

const char *lw_work_words(const lw_order *order, const lw_work_step *step, const char *plant,
                          char out[LW_ORDER_SENTENCE]) {
  double setback = order->plan.setback_m * 1000.0, back = order->setting_out.base_offset_m * 1000.0;
  switch (step->kind) {
  case LW_WORK_LOOK_AT_PAD:
    lw_print(out, LW_ORDER_SENTENCE,
             "STOP and look before the %s it: a heel leaves no mark, the level is right.",
             order->plan.solid ? "wall covers" : "blocks cover");
    break;
  case LW_WORK_SETBACK:
    lw_print(out, LW_ORDER_SENTENCE,
             "Each course steps back %.0f mm; the top line then stands %.0f mm behind the base line.",
             setback, back);
    break;
  case LW_WORK_SETBACK_AT_STEPS:
    lw_print(
        out, LW_ORDER_SENTENCE,
        "Above a step of the base the lowest course, and its pad, stand %.0f mm behind the base line for "
        "each course that the base has risen: they lie on the same lean.",
        setback);
    break;
  case LW_WORK_SOLID:
    lw_print(out, LW_ORDER_SENTENCE,
             "Build to strings from the base line to the top line, which stands %.0f mm %s it.", fabs(back),
             back < 0.0 ? "in front of" : "behind");
    break;
  case LW_WORK_PLANT:
    lw_print(out, LW_ORDER_SENTENCE,
             "Keep the %s %.2f m or more behind the newest course: a hand rammer nearer than that.",
             plant[0] != '\0' ? plant : "plant", step->length_m);
    break;
  case LW_WORK_PIPE:
    lw_print(out, LW_ORDER_SENTENCE, "Lay the pipe to a fall of 1 in %.0f.",
             1.0 / fmax(order->setting_out.pipe_fall, 1e-6));
    break;
  default: lw_print(out, LW_ORDER_SENTENCE, WORK[step->kind], step->length_m * 1000.0);
  }
  return out;
}
