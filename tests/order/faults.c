/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>

#define TRIANGLE "run 1 length=4 m;turn 1 angle=90 deg;run 2 length=2 m"
#define SQUARE \
  "run 1 length=2 m;run 2 length=2 m;run 3 length=2 m;run 4 length=2 m;turn 1 angle=90 deg;turn 2 angle=90 " \
  "deg;turn 3 angle=90 deg"

/* A plan that cannot be is a fault with its name, never a list. */
Test(order, a_plan_that_cannot_be_is_a_fault) {
  const struct {
    const char *items;
    lw_fault_slug slug;
  } rows[] = {
      {"run 1 length=-2 m", LW_FAULT_OUT_OF_RANGE},
      {"run 1 length=0 m", LW_FAULT_OUT_OF_RANGE},
      {"run 1 length=4", LW_FAULT_NO_UNIT},
      {"run 1 length=4 kg", LW_FAULT_WRONG_UNIT},
      {"run 1 length=4 m;barrow volume=60 kg", LW_FAULT_WRONG_UNIT},
      {"run 1 length=4 m;half unit=perhaps", LW_FAULT_UNKNOWN_WORD},
      {"run 1 length=4 m;turn 1 angle=90 deg", LW_FAULT_CONTRADICTION},
      {"run 1 length=4 m;turn 2 angle=90 deg", LW_FAULT_CONTRADICTION},
      {"run 1 length=4 m;run 3 length=2 m", LW_FAULT_GAP_IN_NUMBERING},
      {TRIANGLE ";plan ends=closed", LW_FAULT_CONTRADICTION},
      {SQUARE ";turn 4 angle=60 deg", LW_FAULT_CONTRADICTION},
      {SQUARE ";ground fall=300 mm", LW_FAULT_CONTRADICTION},
      {SQUARE ";step 1 distance=1 m;step 1 courses=1", LW_FAULT_CONTRADICTION},
      {"run 1 length=4 m;run 1 radius=150 mm", LW_FAULT_CONTRADICTION},
      {"run 1 length=4 m;run 1 radius=0 m", LW_FAULT_OUT_OF_RANGE},
      {"run 1 length=4 m;run 1 radius=500 mm", LW_FAULT_CONTRADICTION},
      {"run 1 length=150 mm", LW_FAULT_CONTRADICTION},
      {"run 1 length=300 mm;turn 1 angle=90 deg;run 2 length=2 m;setback=80 mm", LW_FAULT_CONTRADICTION},
      {"run 1 length=4 m;step 1 distance=2 m;step 1 courses=0.5", LW_FAULT_OUT_OF_RANGE},
      {"run 1 length=4 m;step 1 distance=2 m;step 1 courses=1;ground fall=200 mm", LW_FAULT_CONTRADICTION},
      {"run 1 length=4 m;block tail length=500 mm", LW_FAULT_CONTRADICTION},
  };
  for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
    const lw_faults *faults = order_faults(rows[i].items);
    cr_expect(faults->fault[0].slug == rows[i].slug, "%s: %s", rows[i].items,
              lw_fault_slug_name(faults->fault[0].slug));
  }
}
