/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <string.h>

#include "base/canned.h"

/* Only what stands in braces with an equals sign between is a measure: figures of every other kind stay. */
Test(canned, a_sentence_is_told_in_the_readers_units) {
  static const struct {
    const char *sentence, *metric, *us, *both;
  } EACH[] = {
      {"Nearer than {3 m = 10 ft} to it.", "Nearer than 3 m to it.", "Nearer than 10 ft to it.",
       "Nearer than 3 m (10 ft) to it."},
      {"{3 m = 10 ft}", "3 m", "10 ft", "3 m (10 ft)"},
      {"layers of {100 to 150 mm = 4 to 6 in}, {1 m = 3 ft} wide", "layers of 100 to 150 mm, 1 m wide",
       "layers of 4 to 6 in, 3 ft wide", "layers of 100 to 150 mm (4 to 6 in), 1 m (3 ft) wide"},
      {"[KEY 3 m], 1:10, 2 m3, 10 m/s, EN 1997-1, 40 m", "[KEY 3 m], 1:10, 2 m3, 10 m/s, EN 1997-1, 40 m",
       "[KEY 3 m], 1:10, 2 m3, 10 m/s, EN 1997-1, 40 m", "[KEY 3 m], 1:10, 2 m3, 10 m/s, EN 1997-1, 40 m"},
      {"a = b {c} {d = } { = e} {= f} {g", "a = b {c} {d = } { = e} {= f} {g",
       "a = b {c} {d = } { = e} {= f} {g", "a = b {c} {d = } { = e} {= f} {g"},
      {"{{1 m = 3 ft}", "{1 m", "{3 ft", "{1 m (3 ft)"},
      {"\xC2\xB0{10 \xC2\xB0 = 50 \xC2\xB0}\xC2\xB0",
       "\xC2\xB0"
       "10 \xC2\xB0\xC2\xB0",
       "\xC2\xB0"
       "50 \xC2\xB0\xC2\xB0",
       "\xC2\xB0"
       "10 \xC2\xB0 (50 \xC2\xB0)\xC2\xB0"},
      {"", "", "", ""},
  };
  char said[200];
  for (size_t i = 0; i < sizeof EACH / sizeof *EACH; i++) {
    lw_text both = {0};
    cr_expect_str_eq(lw_canned_told(LW_UNITS_METRIC, EACH[i].sentence, said, sizeof said), EACH[i].metric);
    cr_expect_str_eq(lw_canned_told(LW_UNITS_US, EACH[i].sentence, said, sizeof said), EACH[i].us);
    cr_expect_str_eq(lw_canned_both(EACH[i].sentence, said, sizeof said), EACH[i].both);
    lw_canned_add_both(EACH[i].sentence, &both);
    cr_expect_str_eq(both.data ? both.data : "", EACH[i].both);
    lw_text_free(&both);
  }
  cr_expect_str_eq(lw_canned_told(LW_UNITS_US, "Keep {40 m = 131 ft} off", said, 10), "Keep 131 ");
  cr_expect_str_eq(lw_canned_both("Keep {40 m = 131 ft} off", said, 14), "Keep 40 m (13");
}
