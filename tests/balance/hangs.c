/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/result.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/random_wall.h"
#include "../checks/support.h"
#include "../sheet/support.h"

/* What of the push hangs on the wall's rear: once, where the push acts, and under every set of factors in the
 * direction that the strengths of that set have. */

/* The parts of the push are those of the thrust, and all that presses adds up to what the contact bears. */
static void expect_once(const lw_free_body *body, const char *name) {
  static const lw_force_kind parts[] = {LW_FORCE_THRUST, LW_FORCE_SURCHARGE_THRUST, LW_FORCE_LOADS_THRUST,
                                        LW_FORCE_LEVEL_THRUST, LW_FORCE_SEISMIC_THRUST};
  double down = 0.0, all = 0.0;
  if (body->status != LW_OK || body->forces.factors.factored) return;
  for (size_t i = 0; i < sizeof parts / sizeof *parts; i++) down += checks_test_vertical(body, parts[i]);
  for (int i = 0; i < body->forces.count; i++) all += body->forces.force[i].vertical_kn_per_m;
  double once = body->thrust.vertical_kn_per_m, slack = 1e-9 * fmax(1.0, fabs(all));
  cr_expect(fabs(down - once) < slack, "%.9g hangs, of the thrust %.9g: %s", down, once, name);
  cr_expect(fabs(all - body->contact.vertical_kn_per_m) < slack, "%.9g, %.9g bears: %s", all,
            body->contact.vertical_kn_per_m, name);
}

Test(hangs, once_at_base_and_pad_of_any_wall) {
  enum { WALLS = 100 / RANDOM_SHARE };
  dice d = {20267};
  for (int i = 0; i < WALLS; i++) {
    random_wall wall = {0};
    char name[4096];
    random_wall_make(&d, &wall);
    random_wall_hurry(&wall, i);
    lw_result *r = random_wall_run(&wall);
    random_wall_name(&wall, name, sizeof name);
    for (int s = 0; s < r->situations.count; s++) {
      expect_once(&r->situations.situation[s].base, name);
      expect_once(&r->situations.situation[s].pad, name);
    }
    free(r);
  }
}

/* Where a set divides the soil's friction it divides that of the back by the same number, and what hangs
 * there follows the divided one. */
static void expect_divided(const lw_result *r, const char *format) {
  const lw_situation *s = checks_test_situation(r, LW_SITUATION_DRAINED);
  const lw_strengths *design = &s->load_case.ground.design;
  const lw_free_body *base = &s->base;
  double soil = tan(design->soil[0].friction_rad) / tan(r->wall.site.soil[0].friction_rad);
  double back = tan(design->wall_friction_rad) / tan(r->wall.wall_friction_rad);
  cr_assert_eq(base->status, LW_OK, "%s", format);
  cr_expect(checks_test_near(soil, back, 1e-9), "%s: soil %.9g, back %.9g", format, soil, back);
  cr_expect(checks_test_near(base->back.plane.wall_friction_rad, design->wall_friction_rad, 1e-12));
  double down = checks_test_vertical(base, LW_FORCE_THRUST),
         level = checks_test_horizontal(base, LW_FORCE_THRUST);
  cr_expect(checks_test_near(down, level * tan(design->wall_friction_rad), 1e-9), "%s: %.9g of %.9g", format,
            down, level);
}

Test(hangs, every_set_divides_it_as_it_divides_the_soil) {
  const lw_tables *tables = sheet_test_tables();
  int divided = 0;
  for (int i = 0; i < tables->factor_count; i++) {
    const char *set = tables->factor[i].factor_set;
    random_wall wall = {0};
    if (i > 0 && strcmp(set, tables->factor[i - 1].factor_set) == 0) continue;
    random_wall_add(&wall, "method format=%s", set);
    random_wall_add(&wall, "wall kind=section");
    random_wall_add(&wall, "wall height=1 m");
    random_wall_add(&wall, "wall embedment=0 m");
    random_wall_add(&wall, "base width=0.9 m");
    random_wall_add(&wall, "top width=0.9 m");
    random_wall_add(&wall, "soil 1 friction angle=31 deg");
    random_wall_add(&wall, "soil 1 unit weight=18 kN/m3");
    random_wall_add(&wall, "footing soil friction angle=31 deg");
    random_wall_add(&wall, "ground slope=0 deg");
    random_wall_add(&wall, "load 1 kind=none");
    random_wall_add(&wall, "people on cap=no");
    random_wall_add(&wall, "method slip=not");
    lw_result *r = random_wall_run(&wall);
    expect_divided(r, set);
    const lw_strengths *design = &checks_test_situation(r, LW_SITUATION_DRAINED)->load_case.ground.design;
    divided += design->wall_friction_rad < r->wall.wall_friction_rad - 1e-9;
    free(r);
  }
  cr_expect_lt(3, divided);
}
