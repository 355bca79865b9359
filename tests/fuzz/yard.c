/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "fit/yard.h"

#include "fuzz.h"

/* The list of a yard: read whole or refused, and what is kept can be typed. */
int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count) {
  static lw_yard yard;
  static lw_faults faults;
  lw_text told = {0};
  faults.count = 0;
  bool read = lw_yard_read(fuzz_tables(), (const char *)bytes, count, &yard, &faults) == LW_OK;
  FUZZ_EXPECT(read == (faults.count == 0));
  for (int i = 0; i < yard.count && read; i++) {
    static lw_case c;
    memset(&c, 0, sizeof c);
    for (int k = 0; k < yard.block[i].items.count; k++)
      FUZZ_EXPECT(lw_sheet_override(yard.block[i].items.item[k], k + 1, &c, &faults) == LW_OK);
    FUZZ_EXPECT(yard.block[i].price >= 0.0);
  }
  lw_faults_print(&faults, &told);
  lw_text_free(&told);
  return 0;
}
