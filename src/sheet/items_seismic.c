/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "items.h"

static const lw_item items[] = {
    {.part = LW_ABOUT_SEISMIC,
     .name = "seismic horizontal",
     NUMBER(earthquake.horizontal),
     RANGE(0.0, 1.0),
     .assumed = 0.0,
     .unit = "",
     .example = "0.1",
     .means = "Horizontal earthquake coefficient, a share of weight. 0: no earthquake is looked at.",
     .question = ""},
    {.part = LW_ABOUT_SEISMIC,
     .name = "seismic vertical",
     NUMBER(earthquake.vertical),
     RANGE(-0.9, 0.9),
     .assumed = 0.0,
     .unit = "",
     .example = "0.05",
     .means = "Vertical earthquake coefficient. Up and down are both tried, whatever its sign.",
     .question = ""},
};

const lw_item_group lw_items_seismic = {items, sizeof items / sizeof *items};
