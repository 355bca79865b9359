/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <stdlib.h>

#include "sets_by_definition.h"
#include "../checks/support.h"

/* Nothing pushes a contact only where nothing does at full strength. A search for a factor on every strength
 * may end where the push has gone with it, and what holds as well: then that is the factor that the contact
 * has, and no contact holds for want of a push. */

static const char *const MANUALS[] = {"em-1110-2-2502", "em-1110-2-2100"};
enum { WALLS = 240 / RANDOM_SHARE };

static const lw_check *same_place(const lw_situation *s, const lw_check *check) {
  for (int i = 0; i < s->check_count; i++) {
    const lw_check *c = checks_test_check(s, i);
    if (c->kind == check->kind && c->at == check->at && c->joint == check->joint) return c;
  }
  return NULL;
}

static void hold(const lw_situation *searched, const lw_situation *full, const char *name, int *lifted) {
  for (int i = 0; i < searched->check_count; i++) {
    const lw_check check = *checks_test_check(searched, i);
    if (check.kind != LW_CHECK_SLIDING && check.kind != LW_CHECK_KEY) continue;
    const lw_check *at_full = same_place(full, &check);
    if (check.reason == LW_REASON_NO_DEMAND)
      cr_expect(at_full && at_full->demand.value <= 1e-9, "%s: %s is pushed with %.6g", name,
                lw_situation_slug(searched->name), at_full->demand.value);
    *lifted += check.has.known && check.demand.value <= 1e-9;
  }
}

Test(sets, no_contact_holds_for_want_of_a_push_that_is_there) {
  dice d = {.state = 2503};
  int lifted = 0;
  for (int w = 0; w < WALLS; w++) {
    random_wall wall = {0};
    char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
    random_wall_make(&d, &wall);
    random_wall_add(&wall, "method slip=not");
    /* As the manuals take the ground in front. */
    random_wall_add(&wall, "method passive as=off push");
    lw_result *r = code_run(&wall, MANUALS[w % 2]), *by = code_run(&wall, "lowwall");
    random_wall_name(&wall, name, sizeof name);
    cr_assert_eq(r->situations.count, by->situations.count);
    for (int i = 0; i < r->situations.count; i++)
      hold(&r->situations.situation[i], &by->situations.situation[i], name, &lifted);
    free(r);
    free(by);
  }
  cr_expect(RANDOM_SHARE > 1 || lifted > 0, "no contact lost its push: the walls tell nothing");
}
