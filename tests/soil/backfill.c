/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <lowwall/wall.h>

#include <math.h>
#include <stdio.h>

#include "../sheet/support.h"
#include "soil/site.h"
#include "tables/find.h"

/* Plant soil counts inside a bed up to 0.75 m held up, compost only as the top 0.4 m of it: proposals of this
 * project. Heights in millimetres here, so that the edges are exact. */
enum { HELD_MOST = 750, COMPOST_MOST = 400 };

typedef struct walls {
  int height, below, bottom; /* mm: above the ground in front; soil below top; the first layer's; 0: none */
  bool bed;
  const char *soil, *under;
} walls;

static lw_site site_of(const walls *w, lw_look look) {
  char height[40], below[40], bottom[40], name[80] = "soil 1 name=unknown", under[80];
  const char *items[] = {height,
                         below,
                         w->bed ? "site behind=bed" : "site behind=ground",
                         "wall embedment=100 mm",
                         "block height=50 mm",
                         "block depth=300 mm",
                         name,
                         bottom,
                         under,
                         NULL};
  snprintf(height, sizeof height, "wall height=%d mm", w->height);
  snprintf(below, sizeof below, "soil below top=%d mm", w->below);
  snprintf(bottom, sizeof bottom, "soil 1 bottom=%d mm", w->bottom);
  snprintf(under, sizeof under, "soil 2 name=%s", w->under ? w->under : "");
  if (w->soil) snprintf(name, sizeof name, "soil 1 name=%s", w->soil);
  if (w->bottom == 0) items[7] = NULL;
  lw_faults faults = {.count = 0};
  lw_case c = {0};
  lw_site site;
  for (int i = 0; items[i]; i++)
    cr_assert_eq(lw_sheet_override(items[i], i + 1, &c, &faults), LW_OK, "%s: %s", items[i],
                 faults.fault[0].wanted);
  c.look = look;
  cr_assert_eq(lw_case_complete(sheet_test_tables(), &c, &faults), LW_OK, "%s", faults.fault[0].wanted);
  lw_site_build(&c, sheet_test_tables(), &site);
  return site;
}

static lw_refused expected(const walls *w, const lw_soil_row *row) {
  int held = w->height - w->below,
      deep = w->bottom > 0 && w->bottom - w->below < held ? w->bottom - w->below : held;
  if (row->use == LW_BACKFILL_GOOD || row->use == LW_BACKFILL_FILTER)
    return isnan(row->friction_rad) ? LW_REFUSED_BY_TABLE : LW_REFUSED_NOT;
  if (row->use == LW_BACKFILL_REFUSED || row->use == LW_BACKFILL_WEIGHT_ONLY) return LW_REFUSED_BY_TABLE;
  if (!w->bed) return LW_REFUSED_OUTSIDE_BED;
  if (held > HELD_MOST) return LW_REFUSED_TOO_HIGH;
  return row->use == LW_BACKFILL_BED_TOP && deep > COMPOST_MOST ? LW_REFUSED_DEEP_COMPOST : LW_REFUSED_NOT;
}

static void expect_as_told(const walls *w) {
  const lw_soil_row *row = lw_tables_soil(sheet_test_tables(), w->soil);
  lw_site site = site_of(w, LW_LOOK_CAUTIOUS);
  lw_refused want = expected(w, row);
  cr_expect(site.refused == want && site.backfill_refused == (want != LW_REFUSED_NOT),
            "%s%s, %d mm high, soil %d below top, to %d: refused %d, not %d", w->soil,
            w->bed ? " in a bed" : "", w->height, w->below, w->bottom, (int)site.refused, (int)want);
  if (want != LW_REFUSED_NOT) cr_expect_eq(site.refused_soil, 0);
}

/* Every soil of the table, in a bed and out of it, at each height and about the edges of it. */
Test(backfill, every_soil_is_refused_where_and_only_where_it_is_told) {
  static const int heights[] = {100, 300, 400, 450, 500, 700, 750, 800, 850, 1100}, below[] = {0, 50};
  const lw_tables *t = sheet_test_tables();
  for (int s = 0; s < t->soil_count; s++)
    for (size_t h = 0; h < sizeof heights / sizeof *heights; h++)
      for (size_t b = 0; b < 2; b++)
        for (int bed = 0; bed < 2; bed++)
          expect_as_told(&(walls){heights[h], below[b], 0, bed == 1, t->soil[s].name, NULL});
}

/* Layers of compost over another soil are layers, as deep as compost counts. */
Test(backfill, compost_over_another_soil_is_a_layer) {
  static const int bottoms[] = {100, 250, 400, 401, 449, 451, 600}, below[] = {0, 50};
  for (size_t i = 0; i < sizeof bottoms / sizeof *bottoms; i++)
    for (size_t b = 0; b < 2; b++)
      for (int high = 350; high <= 750; high += 100)
        expect_as_told(&(walls){high, below[b], bottoms[i], true, "compost", "topsoil"});
  lw_site site = site_of(&(walls){700, 0, 400, true, "compost", "clean sand"}, LW_LOOK_CAUTIOUS);
  cr_expect_not(site.backfill_refused);
  cr_expect_eq(site.soil_count, 2);
  cr_expect(site.soil[1].friction_rad > site.soil[0].friction_rad);
}

static double degrees(const walls *w, lw_look look) {
  return site_of(w, look).soil[0].friction_rad * LW_DEG_PER_RAD;
}

/* Nobody names the soil: plant soil in a bed, as weak as clay loam elsewhere; what is named is never taken
 * for less. */
Test(backfill, a_bed_whose_soil_nobody_names_holds_plant_soil) {
  for (int high = 100; high <= 1100; high += 100) {
    walls bed = {high, 50, 0, true, NULL, NULL}, ground = {high, 50, 0, false, NULL, NULL};
    lw_site site = site_of(&bed, LW_LOOK_CAUTIOUS);
    cr_expect_not(site.backfill_refused, "an answer left out calls no engineer");
    cr_expect_float_eq(site.soil[0].unit_weight_kn_per_m3, 20.0, 1e-12);
    cr_expect_float_eq(site.soil[0].light_unit_weight_kn_per_m3, 16.0, 1e-12);
    cr_expect_float_eq(site.soil[0].saturated_unit_weight_kn_per_m3, 21.0, 1e-12);
    cr_expect_float_eq(degrees(&bed, LW_LOOK_CAUTIOUS), 24.0, 1e-9);
    cr_expect_float_eq(degrees(&bed, LW_LOOK_LIKELY), 26.0, 1e-9);
    cr_expect_float_eq(degrees(&ground, LW_LOOK_CAUTIOUS), 24.0, 1e-9);
    static const char *const named[] = {"topsoil", "planting mix", "compost"};
    for (int i = 0; i < 3; i++) {
      walls told = {high, 50, 0, true, named[i], NULL};
      lw_site of = site_of(&told, LW_LOOK_CAUTIOUS);
      cr_expect(of.soil[0].friction_rad >= site.soil[0].friction_rad - 1e-12, "%s", named[i]);
      cr_expect(of.soil[0].unit_weight_kn_per_m3 <= site.soil[0].unit_weight_kn_per_m3, "%s", named[i]);
    }
  }
}

/* As footing plant soil has no strength, whatever stands in its row for a bed. */
Test(backfill, plant_soil_under_a_wall_has_no_strength) {
  static const char *const named[] = {"footing soil name=topsoil", "footing soil name=planting mix",
                                      "footing soil name=compost"};
  for (int i = 0; i < 3; i++) {
    lw_case c =
        CASE("wall height=300 mm", "block height=100 mm", "block depth=300 mm", "site behind=bed", named[i]);
    lw_site site;
    lw_site_build(&c, sheet_test_tables(), &site);
    cr_expect_float_eq(site.footing.friction_rad, 0.0, 1e-12, "%s", named[i]);
    cr_expect_float_eq(site.allowable_bearing_kpa, 0.0, 1e-12, "%s", named[i]);
  }
}
