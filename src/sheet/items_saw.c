/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "items.h"

/* How an order cuts and carries: halves, offcuts, saw, barrow, skip. */

static const lw_item items[] = {
    {.part = LW_ABOUT_ORDER,
     .name = "half unit",
     CHOICE(order.half_unit, "cut|sold"),
     .assumed = LW_HALF_CUT,
     .unit = "",
     .example = "sold",
     .means = "Whether half units can be bought. Unknown: they are cut, two from a whole one.",
     .question = ""},
    {.part = LW_ABOUT_ORDER,
     .name = "offcuts used",
     YES_NO(order.offcuts),
     .assumed = LW_NO,
     .unit = "",
     .example = "yes",
     .means =
         "Whether what is left of a cut block or cap is cut again; a mitred one is turned round for it and "
         "shows its rear. Unknown: each cut piece takes a whole one; the order says how many would be "
         "saved.",
     .question = ""},
    {.part = LW_ABOUT_ORDER,
     .name = "saw kerf",
     LENGTH(order.saw_kerf),
     RANGE(0.0, 0.02),
     .assumed = NAN,
     .unit = "mm",
     .example = "4 mm",
     .means = "Width that the saw takes; 0 where blocks are split. Unknown: the row of "
              "`lowwall list ordering`.",
     .question = ""},
    {.part = LW_ABOUT_ORDER,
     .name = "barrow mass",
     QUANTITY(LW_KIND_MASS, order.barrow_mass),
     RANGE(5.0, 2000.0),
     .assumed = NAN,
     .unit = "kg",
     .example = "80 kg",
     .means = "Most in one barrow. Unknown: the row of `lowwall list ordering`.",
     .question = ""},
    {.part = LW_ABOUT_ORDER,
     .name = "barrow volume",
     QUANTITY(LW_KIND_VOLUME, order.barrow_volume),
     RANGE(0.005, 2.0),
     .assumed = NAN,
     .unit = "L",
     .example = "60 L",
     .means = "Loose, in one barrow. Unknown: the row of `lowwall list ordering`.",
     .question = ""},
    {.part = LW_ABOUT_ORDER,
     .name = "skip volume",
     QUANTITY(LW_KIND_VOLUME, order.skip_volume),
     RANGE(0.1, 50.0),
     .assumed = NAN,
     .unit = "m3",
     .example = "4.5 m3",
     .means = "Loose, in one skip or one load of a truck. Unknown: the row of `lowwall list "
              "ordering`.",
     .question = ""},
};

const lw_item_group lw_items_saw = {items, sizeof items / sizeof *items};
