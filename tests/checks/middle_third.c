/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <stdlib.h>

#include "../sheet/support.h"
#include "random_wall.h"
#include "support.h"

/* The middle third is information: on a rectangle the resultant is in it where all is in compression, and no
 * check asks for it. By hand: 6 x 0.05/0.6 = 0.5 inside, 6 x 0.12/0.6 = 1.2 outside. */
Test(middle_third, is_six_eccentricities_over_the_width) {
  lw_contact c = {.width_m = 0.6, .eccentricity_m = 0.05, .inside = true};
  cr_expect_float_eq(lw_contact_of_third(&c), 0.5, 1e-12);
  c.eccentricity_m = -0.05;
  cr_expect_float_eq(lw_contact_of_third(&c), 0.5, 1e-12);
  c.eccentricity_m = 0.12;
  cr_expect_float_eq(lw_contact_of_third(&c), 1.2, 1e-12);
}

static void expect_third(const lw_contact *c, const char *wall) {
  if (!c->inside || c->area_m2 < c->width_m || fabs(c->kern_m - c->width_m / 6.0) > 1e-12) return;
  double third = lw_contact_of_third(c);
  cr_expect_eq(third <= 1.0 + 1e-9, c->share_in_compression >= 1.0 - 1e-9, "%s: %g, %g", wall, third,
               c->share_in_compression);
  /* Half a base in compression is a resultant at B/3, twice as far out. */
  if (third > 1.0) cr_expect_float_eq(c->share_in_compression, 1.5 - 0.5 * third, 1e-9, "%s", wall);
}

Test(middle_third, of_any_wall_is_where_all_is_in_compression) {
  dice d = {31};
  char name[4000];
  lw_result *r = calloc(1, sizeof *r);
  for (int i = 0; i < 160 / RANDOM_SHARE; i++) {
    random_wall wall = {0};
    random_wall_make(&d, &wall);
    random_wall_hurry(&wall, i);
    lw_case c = random_wall_case(&wall);
    if (lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, r, NULL) != LW_OK) continue;
    random_wall_name(&wall, name, sizeof name);
    for (int s = 0; s < r->situations.count; s++)
      if (r->situations.situation[s].base.status == LW_OK)
        expect_third(&r->situations.situation[s].base.contact, name);
  }
  free(r);
}
