/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sound.h"

/* A sheet through everything but its reports; with the search for slips left out, for that takes its time, as
 * do remedies, which run the wall again and again. */
int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count) {
  static lw_case c;
  static lw_faults faults;
  static lw_result result, scratch;
  lw_error error = {0};
  faults.count = 0;
  if (lw_sheet_read((const char *)bytes, count, &c, &faults) != LW_OK) return 0;
  if (c.method.slip.origin == LW_ABSENT) c.method.slip = (lw_choice){LW_SLIP_NOT, LW_GIVEN, 0, 0};
  if (lw_run(&c, fuzz_tables(), LW_DETAIL_EVERYTHING, &result, &error) != LW_OK) {
    FUZZ_EXPECT(error.text[0] != '\0');
    return 0;
  }
  fuzz_expect_sound(&result);
  lw_water_find(&result, &scratch);
  fuzz_expect_sound(&result);
  FUZZ_EXPECT(lw_run(&c, fuzz_tables(), LW_DETAIL_VERDICT, &scratch, &error) == LW_OK);
  FUZZ_EXPECT(scratch.verdict.stands == result.verdict.stands);
  return 0;
}
