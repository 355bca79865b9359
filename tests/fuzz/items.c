/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sound.h"

/* A case by its items, not by its letters: some bytes say which item and what it is. What a sheet may hold is
 * run, what it may not hold is refused. */

enum { MOST_ITEMS = 40 };

static const lw_kind kinds[] = {LW_KIND_ANGLE, LW_KIND_SHARE, LW_KIND_NUMBER};

static void put(fuzz_bytes *from, lw_case *c) {
  const lw_item *item = lw_item_at(fuzz_below(from, (unsigned)lw_item_count()));
  int number = item->repeats > 0 ? 1 + (int)fuzz_below(from, (unsigned)item->repeats) : 0;
  if (item->type == LW_ITEM_CHOICE) {
    *lw_item_choice(item, number, c) = (lw_choice){(int)fuzz_byte(from) % 12 - 1, LW_GIVEN, 1, 1};
  } else if (item->type == LW_ITEM_QUANTITY) {
    bool either = item->kind == LW_KIND_ANGLE_OR_SHARE;
    double si = fuzz_double(from, item->low, item->high);
    if (item->kind == LW_KIND_COUNT && si > item->low && si < item->high) si = (double)(int)si;
    *lw_item_quantity(item, number, c) = (lw_quantity){
        si, LW_GIVEN, either ? kinds[fuzz_byte(from) % 3] : item->kind, 1, 1, -1, LW_UNITS_METRIC};
  } else {
    lw_words *words = lw_item_words(item, number, c);
    for (size_t i = 0; i + 1 < sizeof words->text && fuzz_byte(from) % 8 != 0; i++)
      words->text[i] = (char)fuzz_byte(from);
    words->origin = LW_GIVEN;
  }
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count) {
  static lw_case c;
  static lw_result result, scratch;
  fuzz_bytes from = {bytes, count};
  lw_error error = {0};
  c = (lw_case){0};
  for (int i = 0; i < MOST_ITEMS && from.left > 0; i++) put(&from, &c);
  if (c.method.slip.origin == LW_ABSENT) c.method.slip = (lw_choice){LW_SLIP_NOT, LW_GIVEN, 0, 0};
  lw_status status = lw_run(&c, fuzz_tables(), LW_DETAIL_EVERYTHING, &result, &error);
  FUZZ_EXPECT(status == LW_OK || (status == LW_FAULTS && error.text[0] != '\0'));
  if (status != LW_OK) return 0;
  fuzz_expect_sound(&result);
  lw_water_find(&result, &scratch);
  return 0;
}
