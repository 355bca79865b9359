/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "fuzz.h"

#include <math.h>

/* A number, and a number with its unit as a person writes it, for items of every kind. */

static const char *const items[] = {"wall height",        "soil 1 friction angle", "wall friction",
                                    "ground slope",       "load 1 pressure",       "soil 1 unit weight",
                                    "course count",       "method uplift",         "block mass",
                                    "joint key strength", "base friction",         "load 1 force"};

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count) {
  char argument[4096];
  double value = NAN;
  if (count > sizeof argument / 2) return 0;
  if (lw_number_read((const char *)bytes, count, &value)) FUZZ_EXPECT(isfinite(value));
  for (size_t i = 0; i < sizeof items / sizeof *items; i++) {
    lw_case c = {0};
    lw_faults faults = {.count = 0};
    lw_text told = {0};
    lw_print(argument, sizeof argument, "%s=%.*s", items[i], (int)count, (const char *)bytes);
    lw_status status = lw_sheet_override(argument, 1, &c, &faults);
    FUZZ_EXPECT((status == LW_OK) == (faults.count == 0));
    lw_faults_print(&faults, &told);
    lw_text_free(&told);
  }
  return 0;
}
