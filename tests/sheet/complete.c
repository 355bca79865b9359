/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <string.h>

#define RAD(deg) ((deg)*3.14159265358979323846 / 180.0)

static void is(const char *what, lw_quantity q, double si, lw_origin origin) {
  cr_expect(q.origin == origin, "%s: origin %d, not %d", what, q.origin, origin);
  cr_expect(fabs(q.si - si) < 1e-9, "%s: %.12g, not %.12g", what, q.si, si);
}

Test(sheet, a_wall_of_which_only_the_height_is_known_takes_every_safe_default) {
  lw_case c = CASE("wall height=1.05 m");
  cr_expect(c.complete);
  cr_expect(c.wall.kind.value == LW_WALL_COURSES && c.wall.kind.origin == LW_ASSUMED);
  is("block height", c.courses.block_height, 0.2, LW_ASSUMED);
  is("setback", c.courses.setback, 0.0, LW_ASSUMED);
  is("block unit weight", c.courses.block_unit_weight, 21.0, LW_ASSUMED);
  is("embedment", c.wall.embedment, 0.15, LW_ASSUMED);
  is("course count", c.courses.count, 6.0, LW_ASSUMED);
  is("friction", c.ground.soil[0].friction, RAD(24), LW_ASSUMED);
  is("cohesion", c.ground.soil[0].cohesion, 0.0, LW_ASSUMED);
  is("unit weight", c.ground.soil[0].unit_weight, 20.0, LW_ASSUMED);
  is("light unit weight", c.ground.soil[0].light_unit_weight, 16.0, LW_ASSUMED);
  is("saturated unit weight", c.ground.soil[0].saturated_unit_weight, 21.0, LW_ASSUMED);
  is("footing friction", c.ground.footing.friction, RAD(24), LW_ASSUMED);
  is("allowable bearing", c.ground.allowable_bearing, 50.0, LW_ASSUMED);
  is("wall friction", c.wall.friction, 0.3333, LW_TABLE);
  is("base friction", c.ground.base_friction, 0.3, LW_ASSUMED);
  is("joint friction", c.courses.joint_friction, 0.4, LW_ASSUMED);
  is("ground slope", c.ground.slope, atan(0.25), LW_ASSUMED);
  is("load 1 pressure", c.load[0].pressure, 10.0, LW_ASSUMED);
  cr_expect(strcmp(sheet_test_tables()->load[c.load[0].pressure.table_row].slug, "vehicle") == 0);
  is("level difference", c.site.level_difference, 1.05, LW_ASSUMED);
  is("drain outlets", c.water.drain_outlets, 0.0, LW_ASSUMED);
  is("passive", c.method.passive, 0.0, LW_ASSUMED);
  is("uplift", c.method.uplift, 1.0, LW_ASSUMED);
  is("water unit weight", c.water.unit_weight, 9.81, LW_ASSUMED);
  cr_expect(c.courses.block_depth.origin == LW_ABSENT, "block depth has no safe guess");
  cr_expect(c.shape.base_width.origin == LW_ABSENT && c.shape.toe_length.origin == LW_ABSENT);
  cr_expect(c.courses.cap_height.origin == LW_ABSENT && c.courses.cap_unit_weight.origin == LW_ABSENT);
  cr_expect(c.pad.thickness.origin == LW_ABSENT && c.pad.spread.origin == LW_ABSENT);
  cr_expect(c.ground.soil[1].friction.origin == LW_ABSENT && c.load[1].kind.origin == LW_ABSENT);
  cr_expect(c.water.wall_joints.value == LW_JOINTS_SEALED && c.water.ground_drains.value == LW_NO);
  cr_expect(c.courses.people_on_cap.value == LW_YES && c.site.vehicle_access.value == LW_YES);
  cr_expect(c.site.mapped_land.value == LW_YES && c.site.reactive_soil.value == LW_YES);
  cr_expect(c.site.back.value == LW_BACK_GROUND && c.site.behind.value == LW_BEHIND_GROUND);
  cr_expect(strcmp(c.method.factor_set.text, "lowwall") == 0 && c.method.factor_set.origin == LW_ASSUMED);
}

Test(sheet, a_bed_is_level_and_its_back_a_fence_until_told) {
  lw_case c = CASE("wall height=400 mm", "site behind=bed");
  is("ground slope", c.ground.slope, 0.0, LW_ASSUMED);
  is("level difference", c.site.level_difference, 0.0, LW_GIVEN);
  cr_expect(eq(int, c.site.level_difference.row, LW_WORKED_OUT_ROW));
  cr_expect(c.site.back.value == LW_BACK_FENCE);
}

Test(sheet, the_load_follows_from_who_can_reach_the_wall) {
  is("no vehicle", CASE("wall height=400 mm", "vehicle access=no").load[0].pressure, 2.5, LW_ASSUMED);
  is("vehicle", CASE("wall height=400 mm", "vehicle access=yes").load[0].pressure, 10.0, LW_ASSUMED);
  lw_case none = CASE("wall height=400 mm", "load 1 kind=none");
  cr_expect(none.load[0].pressure.origin == LW_ABSENT && none.load[1].kind.origin == LW_ABSENT);
  lw_case cap = CASE("wall height=400 mm", "load 1 kind=cap", "load 1 force=1 kN/m");
  is("a load on the cap says nothing of the ground", cap.load[1].pressure, 10.0, LW_ASSUMED);
  lw_case given = CASE("wall height=400 mm", "load 1 pressure=4 kPa");
  cr_expect(given.load[0].kind.value == LW_LOAD_UNIFORM && given.load[1].kind.origin == LW_ABSENT);
  lw_case strip =
      CASE("wall height=400 mm", "load 1 pressure=4 kPa", "load 1 near edge=1 m", "load 1 far edge=2 m");
  cr_expect(strip.load[0].kind.value == LW_LOAD_STRIP);
}

Test(sheet, a_fence_is_assumed_only_at_a_near_boundary) {
  is("far", CASE("wall height=1 m", "boundary distance=1.2 m").fence.height, 0.0, LW_ASSUMED);
  is("near", CASE("wall height=1 m", "boundary distance=1 m").fence.height, 1.8, LW_ASSUMED);
  is("unknown", CASE("wall height=1 m").fence.height, 0.0, LW_ASSUMED);
}

/* By the fence that is told of: one that closes the bed, or one on or behind the wall. */
Test(sheet, a_height_without_a_place_is_that_of_the_fence_that_is_told_of) {
  static const char *const backs[] = {"note=none", "site back=fence", "site back=wall", "site back=ground",
                                      "site back=building"};
  static const char *const distances[] = {"mark=W1", "fence distance=0.6 m"};
  for (size_t b = 0; b < sizeof backs / sizeof *backs; b++)
    for (size_t d = 0; d < sizeof distances / sizeof *distances; d++) {
      lw_case c = CASE("wall height=400 mm", "site behind=bed", "fence height=1.5 m", backs[b], distances[d]);
      bool behind = strcmp(backs[b], "site back=fence") == 0 || d == 1;
      cr_expect_eq(c.fence.place.value, behind ? LW_FENCE_BEHIND : LW_FENCE_ON_WALL, "%s %s", backs[b],
                   distances[d]);
      cr_expect_eq(c.fence.place.origin, LW_ASSUMED);
    }
}

Test(sheet, heights_and_courses_follow_from_one_another) {
  lw_case c = CASE("course count=5", "block height=200 mm", "cap height=50 mm", "wall embedment=200 mm");
  is("height", c.wall.height, 0.85, LW_GIVEN);
  c = CASE("wall height=850 mm", "block height=200 mm", "cap height=50 mm", "wall embedment=200 mm");
  is("count", c.courses.count, 5.0, LW_GIVEN);
  c = CASE("wall height=850 mm", "block height=200 mm", "cap height=50 mm", "course count=5");
  is("embedment", c.wall.embedment, 0.2, LW_GIVEN);
  c = CASE("wall height=850 mm", "wall embedment=200 mm", "cap height=50 mm", "course count=5");
  is("block height", c.courses.block_height, 0.2, LW_GIVEN);
  c = CASE("course count=5");
  is("height", c.wall.height, 0.85, LW_ASSUMED);
  is("embedment", c.wall.embedment, 0.15, LW_ASSUMED);
  c = CASE("wall height=900 mm", "block height=200 mm");
  is("count, embedment not given", c.courses.count, 6.0, LW_ASSUMED);
  is("embedment takes the rest, never less than 150 mm", c.wall.embedment, 0.3, LW_ASSUMED);
  c = CASE("wall height=900 mm", "wall embedment=150 mm");
  is("block height, none given", c.courses.block_height, 1.05 / 6.0, LW_ASSUMED);
  c = CASE("wall height=600.9 mm", "wall embedment=200 mm", "block height=200 mm", "course count=4");
  is("within a millimetre", c.wall.height, 0.6009, LW_GIVEN);
}

Test(sheet, a_named_soil_brings_its_row_and_given_values_win) {
  const lw_tables *tables = sheet_test_tables();
  const lw_soil_row *row = lw_tables_soil(tables, "silty sand");
  lw_case c = CASE("wall height=1 m", "soil 1 name=Silty-Sand", "soil 1 friction angle=31 deg");
  is("friction", c.ground.soil[0].friction, RAD(31), LW_GIVEN);
  is("unit weight", c.ground.soil[0].unit_weight, row->unit_weight_kn_per_m3, LW_TABLE);
  is("light", c.ground.soil[0].light_unit_weight, row->light_unit_weight_kn_per_m3, LW_TABLE);
  cr_expect(tables->soil + c.ground.soil[0].unit_weight.table_row == row);
  c = CASE("wall height=1 m", "soil 1 name=silty sand", "soil 1 unit weight=17 kN/m3");
  is("light as given", c.ground.soil[0].light_unit_weight, 17.0, LW_GIVEN);
  c = CASE("wall height=1 m", "soil 1 unit weight=22.5 kN/m3");
  is("no lighter wet than moist", c.ground.soil[0].saturated_unit_weight, 22.5, LW_ASSUMED);
  c = CASE("wall height=1 m", "soil 1 saturated unit weight=18 kN/m3");
  is("moist no heavier than wet", c.ground.soil[0].unit_weight, 18.0, LW_ASSUMED);
  const lw_soil_row *clay = lw_tables_soil(tables, "stiff clay");
  c = CASE("wall height=1 m", "footing soil name=stiff clay");
  is("bearing", c.ground.allowable_bearing, clay->allowable_bearing_kpa, LW_TABLE);
  c = CASE("wall height=1 m", "footing soil name=stiff clay", "allowable bearing=60 kPa");
  is("bearing given", c.ground.allowable_bearing, 60.0, LW_GIVEN);
}

Test(sheet, shares_of_the_footing_act_only_on_given_values) {
  lw_case c = CASE("wall height=1 m", "footing soil friction angle=30 deg", "method base friction=67 %",
                   "footing soil cohesion=9 kPa", "method base cohesion=0.5");
  is("friction", c.ground.base_friction, tan(0.67 * RAD(30)), LW_GIVEN);
  is("adhesion", c.ground.base_adhesion, 4.5, LW_GIVEN);
  c = CASE("wall height=1 m", "footing soil friction angle=30 deg", "method base friction=67 %",
           "base friction=0.5");
  is("base friction given", c.ground.base_friction, 0.5, LW_GIVEN);
  c = CASE("wall height=1 m", "method base friction=67 %");
  is("angle not given", c.ground.base_friction, 0.3, LW_ASSUMED);
}

Test(sheet, the_mass_of_a_block_is_its_unit_weight) {
  lw_case c = CASE("wall height=0.6 m", "wall embedment=0.2 m", "block height=200 mm", "block depth=300 mm",
                   "block length=400 mm", "block mass=51 kg");
  is("unit weight", c.courses.block_unit_weight, 51.0 / 0.024 * 9.80665 / 1000.0, LW_GIVEN);
}

Test(sheet, a_cap_without_depth_or_overhang_takes_the_blocks) {
  lw_case c = CASE("course count=4", "block depth=300 mm", "cap height=50 mm");
  is("depth", c.courses.cap_depth, 0.3, LW_ASSUMED);
  is("overhang", c.courses.cap_overhang, 0.0, LW_ASSUMED);
  c = CASE("course count=4", "block depth=300 mm", "cap height=50 mm", "cap depth=340 mm");
  is("all beyond the block", c.courses.cap_overhang, 0.04, LW_ASSUMED);
  c = CASE("course count=4", "block depth=300 mm", "base course depth=450 mm");
  is("one deeper course", c.courses.base_count, 1.0, LW_ASSUMED);
}

Test(sheet, widths_and_batters_of_a_section_follow_from_one_another) {
  lw_case c = CASE("wall height=1.8 m", "wall embedment=0.2 m", "base width=1 m", "top width=0.4 m");
  cr_expect(c.wall.kind.value == LW_WALL_SECTION);
  is("face batter", c.shape.face_batter, atan(0.3), LW_ASSUMED);
  is("back batter", c.shape.back_batter, 0.0, LW_ASSUMED);
  is("unit weight", c.wall.unit_weight, 17.0, LW_ASSUMED);
  cr_expect(c.courses.block_height.origin == LW_ABSENT && c.courses.joint_friction.origin == LW_ABSENT);
  c = CASE("wall height=1.8 m", "wall embedment=0.2 m", "base width=1 m", "top width=0.4 m",
           "face batter=0 deg");
  is("back batter", c.shape.back_batter, atan(0.3), LW_GIVEN);
  c = CASE("wall height=1.8 m", "wall embedment=0.2 m", "base width=1 m", "face batter=1:10",
           "back batter=1:20");
  is("top width", c.shape.top_width, 0.7, LW_GIVEN);
  c = CASE("wall height=1.8 m", "wall embedment=0.2 m", "top width=0.7 m", "face batter=1:10",
           "back batter=1:20");
  is("base width", c.shape.base_width, 1.0, LW_GIVEN);
  c = CASE("wall height=1.8 m", "wall embedment=0.2 m", "base width=2 m", "toe length=0.3 m",
           "heel length=0.7 m", "slab thickness=0.5 m", "top width=0.4 m", "back batter=0 deg");
  is("the stem's batter", c.shape.face_batter, atan(0.4), LW_GIVEN);
  c = CASE("wall height=1.8 m", "top width=0.4 m");
  cr_expect(c.shape.base_width.origin == LW_ABSENT, "base width has no safe guess");
}

Test(sheet, points_give_height_and_either_sense_will_do) {
  lw_case c = CASE("point 1 x=0 m", "point 1 y=0 m", "point 2 x=1 m", "point 2 y=0 m", "point 3 x=0.5 m",
                   "point 3 y=2 m", "wall embedment=0.25 m");
  is("height", c.wall.height, 1.75, LW_GIVEN);
  cr_expect(c.wall.kind.value == LW_WALL_SECTION && c.shape.toe_length.origin == LW_ABSENT);
  c = CASE("point 3 x=0 m", "point 3 y=0 m", "point 2 x=1 m", "point 2 y=0 m", "point 1 x=0.5 m",
           "point 1 y=2 m", "wall height=1.8 m");
  is("embedment", c.wall.embedment, 0.2, LW_GIVEN);
}

Test(sheet, what_is_not_given_is_never_a_contradiction) {
  lw_case c = CASE("wall height=1 m", "ground slope=40 deg");
  cr_expect(c.ground.soil[0].friction.si < c.ground.slope.si,
            "assumed friction: the check cannot be shown, no fault");
  c = CASE("wall height=1 m", "ground slope=1:1", "soil 1 name=loam");
  cr_expect(c.ground.soil[0].friction.origin == LW_TABLE);
  c = CASE("wall height=1 m", "seismic horizontal=0");
  is("no earthquake", c.earthquake.horizontal, 0.0, LW_GIVEN);
}

Test(sheet, settling_a_settled_case_changes_nothing) {
  lw_case cases[] = {
      CASE("wall height=1.05 m"),
      CASE("course count=5", "cap height=50 mm", "block depth=300 mm", "soil 1 name=loam",
           "pad thickness=0.15 m"),
      CASE("wall height=1.8 m", "base width=1 m", "top width=0.4 m", "site behind=bed"),
      CASE("wall height=1 m", "soil 1 bottom=0.5 m", "soil 2 name=clean sand", "load 1 kind=cap",
           "load 1 force=1 kN/m"),
  };
  for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
    for (int anew = 0; anew < 2; anew++) {
      lw_case again = cases[i];
      lw_faults faults = {0};
      char difference[64];
      again.complete = anew == 0;
      cr_expect(lw_case_complete(sheet_test_tables(), &again, &faults) == LW_OK);
      cr_expect(again.complete);
      cr_expect(sheet_test_same(&cases[i], &again, difference, sizeof difference), "case %zu: %s", i,
                difference);
    }
  }
}

Test(sheet, on_a_fault_the_case_is_unchanged) {
  lw_case c = {0};
  lw_faults faults = {0};
  cr_expect(lw_case_complete(sheet_test_tables(), &c, &faults) == LW_FAULTS);
  cr_expect(faults.fault[0].slug == LW_FAULT_MISSING_ITEM);
  lw_case empty = {0};
  cr_expect(eq(int, memcmp(&c, &empty, sizeof c), 0));
}
