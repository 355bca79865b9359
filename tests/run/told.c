/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/random_wall.h"
#include "../verdict/help.h"

/* A run to the working tells every step: each check on a contact that has a number ends with what it has. */

enum { WALLS = 24 / RANDOM_SHARE };

typedef struct heard {
  bool of_ground; /* what is told stands under no contact */
  int has, steps;
  double last[4096];
} heard;

static void head(void *context, const char *title) {
  heard *h = context;
  h->of_ground = strncmp(title, "slip", 4) == 0 || strncmp(title, "bed", 3) == 0;
}

static void hear(void *context, const lw_step *step) {
  heard *h = context;
  h->steps++;
  if (!h->of_ground && strcmp(step->symbol, "has") == 0 && h->has < 4096) h->last[h->has++] = step->value;
}

static void expect_every_check(const lw_result *r, const heard *h, const char *name) {
  int next = 0;
  for (int i = 0; i < r->situations.count; i++) {
    const lw_situation *s = &r->situations.situation[i];
    for (int k = 0; k < s->check_count; k++) {
      lw_check check = lw_situation_check(s, k);
      /* Where the resultant is outside nothing is in compression, and there is no step to it. */
      bool of_pressure = check.kind == LW_CHECK_COMPRESSION || check.kind == LW_CHECK_BEARING;
      if (of_pressure && check.reason == LW_REASON_OUTSIDE_BASE) continue;
      if (check.at == LW_AT_GROUND || !check.has.known) continue;
      bool told = next < h->has && fabs(h->last[next] - check.has.value) <= 1e-9 * fabs(check.has.value);
      cr_expect(told, "%s: check %d of situation %d has %.12g", name, k, i, check.has.value);
      next++;
    }
  }
}

Test(run, to_the_working_tells_what_every_check_has) {
  lw_result *r = calloc(1, sizeof *r);
  heard *h = calloc(1, sizeof *h);
  const lw_working working = {.context = h, .heading = head, .step = hear};
  dice d = {19};
  cr_assert(r && h);
  for (int i = 0; i < WALLS; i++) {
    random_wall wall;
    char name[RANDOM_ITEMS * (RANDOM_ITEM_BYTES + 3)];
    random_wall_make(&d, &wall);
    random_wall_hurry(&wall, i);
    random_wall_name(&wall, name, sizeof name);
    lw_case c = random_wall_case(&wall);
    *h = (heard){.has = 0};
    r->working = &working;
    cr_assert_eq(lw_run(&c, verdict_tables(), LW_DETAIL_WORKING, r, NULL), LW_OK, "%s", name);
    expect_every_check(r, h, name);
    cr_expect_gt(h->steps, h->has);
  }
  free(h);
  free(r);
}
