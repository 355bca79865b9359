/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "fuzz.h"

/* A sheet or a schedule: read, completed, written, and read again as the same wall. */

static void reread(const lw_case *c) {
  lw_text once = {0}, twice = {0};
  lw_case again = {0};
  lw_faults faults = {.count = 0};
  lw_sheet_write(c, false, &once);
  FUZZ_EXPECT(once.data != NULL && lw_sheet_read(once.data, once.length, &again, &faults) == LW_OK);
  lw_sheet_write(&again, false, &twice);
  FUZZ_EXPECT(once.length == twice.length && memcmp(once.data, twice.data, once.length) == 0);
  lw_text_free(&once);
  lw_text_free(&twice);
}

static void complete(lw_case *c, lw_faults *faults) {
  if (lw_case_complete(fuzz_tables(), c, faults) != LW_OK) return;
  FUZZ_EXPECT(c->complete);
  (void)lw_case_complete_order(fuzz_tables(), c, faults);
}

static void row(void *context, int number, const lw_case *given, const lw_faults *faults) {
  lw_case c = *given;
  lw_faults own = *faults;
  lw_text told = {0};
  (void)context, (void)number;
  complete(&c, &own);
  lw_faults_print(&own, &told);
  lw_text_free(&told);
}

static void schedule(const uint8_t *bytes, size_t count) {
  lw_faults faults = {.count = 0};
  lw_schedule *s = lw_schedule_open(row, NULL, &faults);
  FUZZ_EXPECT(s != NULL);
  size_t half = count / 2;
  if (lw_schedule_feed(s, (const char *)bytes, half) == LW_OK &&
      lw_schedule_feed(s, (const char *)bytes + half, count - half) == LW_OK)
    (void)lw_schedule_finish(s);
  lw_schedule_close(s);
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count) {
  static lw_case c;
  static lw_faults faults;
  lw_text told = {0};
  faults.count = 0;
  if (lw_sheet_is_schedule((const char *)bytes, count)) schedule(bytes, count);
  bool read = lw_sheet_read((const char *)bytes, count, &c, &faults) == LW_OK;
  FUZZ_EXPECT(read == (faults.count == 0));
  if (read) reread(&c);
  complete(&c, &faults);
  lw_faults_print(&faults, &told);
  lw_text_free(&told);
  return 0;
}
