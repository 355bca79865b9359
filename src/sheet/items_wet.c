/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "items.h"

/* What comes one day: a storm, and somebody who digs in front. Neither is assumed. */
static const lw_item items[] = {
    {.part = LW_ABOUT_WET,
     .name = "storm rain",
     LENGTH(water.storm_rain),
     RANGE(0.0, 2.0),
     .assumed = NAN,
     .unit = "mm",
     .example = "50 mm",
     .means = "Rain of one storm on the bed itself, to see how high it lifts the water in a bed that cannot "
              "drain; left out, no storm is looked at.",
     .question = ""},
    {.part = LW_ABOUT_WET,
     .name = "drainable porosity",
     SHARE(water.drainable_porosity),
     RANGE(0.01, 0.6),
     .assumed = NAN,
     .unit = "",
     .example = "15 %",
     .means = "Share of the moist soil's volume that rain can still fill. Unknown: the least of the soils "
              "named behind, 0.1 for one not named.",
     .question = ""},
    {.part = LW_ABOUT_WET,
     .name = "trench depth",
     LENGTH(ground.trench_depth),
     RANGE(0.0, 20.0),
     .assumed = NAN,
     .unit = "mm",
     .example = "400 mm",
     .means = "Of a trench that is to be dug in front, below the ground there; left out, there is none.",
     .question = ""},
    {.part = LW_ABOUT_WET,
     .name = "trench distance",
     LENGTH(ground.trench_distance),
     RANGE(0.0, 1000.0),
     .assumed = NAN,
     .unit = "mm",
     .example = "600 mm",
     .means = "From the toe to the near edge of that trench. Unknown: right at the toe.",
     .question = ""},
};

const lw_item_group lw_items_wet = {items, sizeof items / sizeof *items};
