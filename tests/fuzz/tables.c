/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sound.h"

#include "tables/shape.h"

/* Tables that were taken must do for a wall. */
static void check_a_wall(const lw_tables *tables) {
  static const char sheet[] = "item,value\nwall height,600 mm\nblock depth,450 mm\nmethod slip,not\n";
  static lw_result result;
  lw_case c;
  lw_faults faults = {.count = 0};
  FUZZ_EXPECT(lw_sheet_read(sheet, sizeof sheet - 1, &c, &faults) == LW_OK);
  if (lw_run(&c, tables, LW_DETAIL_EVERYTHING, &result, NULL) == LW_OK) fuzz_expect_sound(&result);
}

/* A table of one's own: the first byte says which, the rest is its file. */
int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count) {
  static lw_tables tables;
  lw_error error = {0};
  size_t shapes = 0;
  if (count == 0) return 0;
  while (lw_shape_at(shapes) != NULL) shapes++;
  tables = *fuzz_tables();
  const lw_shape *shape = lw_shape_at(bytes[0] % shapes);
  lw_status status = lw_shape_read(shape, (const char *)bytes + 1, count - 1, &tables, &error);
  if (status == LW_OK) status = lw_tables_link(&tables, &error);
  if (status == LW_OK) status = lw_tables_check(&tables, &error);
  FUZZ_EXPECT(status == LW_OK || error.text[0] != '\0');
  if (status == LW_OK) check_a_wall(&tables);
  return 0;
}
