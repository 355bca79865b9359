/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <stdlib.h>

#include "../checks/random_wall.h"
#include "support.h"

/* What is kept from one request to the next changes no answer, whatever was asked before. */

enum { ROUNDS = 20 / RANDOM_SHARE, WALLS = 3 };

/* As each request of it has it; slips are not searched. */
static json_t *wall_of(dice *d, int number) {
  random_wall wall = {.count = 0};
  json_t *set = json_array();
  random_wall_make(d, &wall);
  random_wall_hurry(&wall, number);
  random_wall_add(&wall, "run 1 length=4 m");
  for (int i = 0; i < wall.count; i++) json_array_append_new(set, json_string(wall.text[i]));
  return json_pack("{s:s,s:o}", "sheet", "", "set", set);
}

/* Something asked of it, at times of the wall moved. */
static json_t *request_of(dice *d, json_t *wall) {
  static const char *const ASKS[] = {
      "{\"do\":\"check\"}",
      "{\"do\":\"draw\",\"view\":\"section\"}",
      "{\"do\":\"draw\",\"view\":\"plan\"}",
      "{\"do\":\"order\"}",
      "{\"do\":\"advice\"}",
      "{\"do\":\"precheck\"}",
      "{\"do\":\"working\"}",
      "{\"do\":\"report\",\"as\":\"json\"}",
      "{\"do\":\"report\",\"as\":\"text\"}",
  };
  static const char *const MOVES[] = {"{\"height\":0.4}", "{\"water\":0.1}", "{\"depth\":0.3}"};
  json_t *request = json_loads(ASKS[dice_pick(d, sizeof ASKS / sizeof *ASKS)], 0, NULL);
  json_object_update(request, wall);
  if (dice_pick(d, 3) == 0) json_object_set_new(request, "move", json_loads(MOVES[dice_pick(d, 3)], 0, NULL));
  return request;
}

Test(page_kept, what_is_kept_changes_no_answer) {
  dice d = {20261}, walk = {7};
  lw_page_kept kept = {.search = NULL};
  json_t *wall[WALLS];
  int well = 0;
  for (int i = 0; i < WALLS; i++) wall[i] = wall_of(&d, i + 1);
  for (int n = 0; n < ROUNDS * WALLS; n++) {
    /* Mostly of the same wall as before, so that much is kept. */
    json_t *request = request_of(&walk, wall[(n / ROUNDS + (dice_pick(&walk, 5) == 0 ? 1 : 0)) % WALLS]);
    json_t *fresh = page_test_ask(json_deep_copy(request));
    char *asked = json_dumps(request, 0);
    json_t *again = page_test_ask_kept(&kept, request);
    cr_expect(json_equal(fresh, again), "another answer to %s", asked);
    well += page_test_ok(again) ? 1 : 0;
    free(asked);
    json_decref(fresh);
    json_decref(again);
  }
  cr_expect_gt(well, ROUNDS * WALLS / 2);
  for (int i = 0; i < WALLS; i++) json_decref(wall[i]);
  lw_page_forget(&kept);
  cr_expect(kept.search == NULL && kept.wall[0] == NULL);
}
