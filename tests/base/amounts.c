/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <string.h>

#include "base/amount.h"
#include "base/amounts.h"

/* Values computed by hand from the foot of 0.3048 m and the pound of 0.45359237 kg. */
Test(amounts, a_sentence_of_ours_is_said_in_the_readers_units) {
  static const struct {
    const char *metric, *us;
  } EACH[] = {
      {"Nearer than 3 m to it.", "Nearer than 9 ft 10 in to it."},
      {"Keep 40 m off", "Keep 131 ft off"},
      {"a trench 0.45 m deep", "a trench 1 ft 5-3/4 in deep"},
      {"stone 300 mm wide", "stone 11-3/4 in wide"},
      {"layers of 100 to 150 mm,", "layers of 3-7/8 in to 5-7/8 in,"},
      {"blocks over 25 kg", "blocks over 55 lb"},
      {"5 kPa on it, 20 kN/m3 in it", "104 psf on it, 127 pcf in it"},
      {"a ribbon some 3 mm (1/8 in) thick", "a ribbon some 1/8 in thick"},
      {"[KEY 3 m] and 2 deg, 1:10, 5 people, 3 mains, B2 m",
       "[KEY 3 m] and 2 deg, 1:10, 5 people, 3 mains, B2 m"},
      {"", ""},
  };
  char said[200];
  for (size_t i = 0; i < sizeof EACH / sizeof *EACH; i++) {
    cr_expect_str_eq(lw_amounts_told(LW_UNITS_METRIC, EACH[i].metric, said, sizeof said), EACH[i].metric);
    cr_expect_str_eq(lw_amounts_told(LW_UNITS_US, EACH[i].metric, said, sizeof said), EACH[i].us);
  }
  cr_expect_str_eq(lw_amounts_told(LW_UNITS_US, "Keep 40 m off", said, 10), "Keep 131 ");
}

/* Whatever two lengths are compared, a reader sees that they differ; equal ones read the same. */
Test(amounts, lengths_that_are_compared_read_apart) {
  for (int units = LW_UNITS_METRIC; units <= LW_UNITS_US; units++) {
    for (double gap_m = 1e-4; gap_m < 0.1; gap_m *= 1.5) {
      for (double m = 0.0; m < 5.0; m += 0.0381) {
        lw_apart apart = lw_metres_apart((lw_units)units, m, m + 2.0 * gap_m, 2);
        cr_expect_str_neq(apart.one.text, apart.other.text, "%g and %g more", m, 2.0 * gap_m);
      }
    }
    lw_apart same = lw_metres_apart((lw_units)units, 0.6, 0.6, 2);
    cr_expect_str_eq(same.one.text, same.other.text);
    cr_expect_str_eq(same.one.text, lw_metres((lw_units)units, 0.6, 2).text);
  }
}
